import { properties, type SectionProperties, type Tube } from "@hoopstay/section";
import { refuse, requireLength } from "../connection/common/require.ts";

/** Section of a round tube, m; the wall is the design wall. */
export interface RoundSection extends SectionProperties {
  readonly kind: "round";
  readonly outside: number;
}

/** Section of a square or rectangular tube, m; the depth stands along y. */
export interface RectangularSection extends SectionProperties {
  readonly kind: "rectangular";
  readonly depth: number;
  readonly width: number;
}

/** Section of a flat bar on edge, m: axis x works the width. */
export interface FlatSection extends SectionProperties {
  readonly kind: "flat";
  readonly width: number;
  readonly thickness: number;
}

export interface BarSection extends SectionProperties {
  readonly kind: "bar";
  readonly diameter: number;
}

export interface AngleSection extends SectionProperties {
  readonly kind: "angle";
}

/** What a member check takes of a section, SI. */
export type MemberSection =
  | RoundSection
  | RectangularSection
  | FlatSection
  | BarSection
  | AngleSection;

/** Axis about which a section bends; x works the depth. */
export type Axis = "x" | "y";

/**
 * Section of a tube or bar as the checks of members take it, by the rules of its convention.
 *
 * @param tube section, m
 * @throws Refusal as `properties`
 * @example memberSection({ kind: "bar", diameter: 0.02 }).kind // "bar"
 */
export function memberSection(tube: Tube): MemberSection {
  const all = properties(tube);
  switch (tube.kind) {
    case "round":
      return { ...all, kind: "round", outside: tube.outside };
    case "rectangular":
      return { ...all, kind: "rectangular", depth: tube.depth, width: tube.width };
    case "flat":
      return { ...all, kind: "flat", width: tube.width, thickness: tube.thickness };
    case "bar":
      return { ...all, kind: "bar", diameter: tube.diameter };
    case "angle":
      return { ...all, kind: "angle" };
  }
}

/** Lengths of a member, m. */
export interface MemberLengths {
  /** Effective lengths L_c of buckling about x and about y. */
  readonly bucklingX: number;
  readonly bucklingY: number;
  /** L_b, between points that keep the section from turning out sideways. */
  readonly lateral: number;
  /** L_v, from the greatest shear force to none. */
  readonly shear: number;
  /** Between places that are held against twisting. */
  readonly torsion: number;
}

/** Refuses a length that members of a frame do not have: 0.1 mm to 100 m. */
export function requireSpan(length: number, what: string): void {
  if (!(length > 0)) requireLength(length, what);
  if (length >= 1e-4 && length <= 100) return;
  refuse("out-of-range", `${what} between 0.1 mm and 100 m`, length, "Check its unit.");
}
