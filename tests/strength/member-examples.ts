import type { RectangularTube, RoundTube } from "@hoopstay/section";
import {
  type MemberLengths,
  type MemberSection,
  type MemberStrength,
  memberSection,
  type RectangularSection,
  type RoundSection,
  type Steel,
  type Strength,
} from "@hoopstay/strength";
import { worthOf } from "./member-units.ts";

export const inch = worthOf("in");
export const ksi = worthOf("ksi");

/** AISC's steel of a yield strength, Pa. */
export const steelOfYield = (
  yieldStrength: number,
  tensileStrength = 1.25 * yieldStrength,
): Steel => ({
  yieldStrength,
  tensileStrength,
  modulus: 29_000 * ksi,
  shearModulus: 11_200 * ksi,
  citation: { source: "judgement", place: "test", grade: "judgement" },
  words: "steel of a test",
  listed: true,
});

export const grade50 = steelOfYield(50 * ksi, 62 * ksi);

/** Round tube computed from its full wall, m. */
export function round(outside: number, wall: number): RoundSection {
  const tube: RoundTube = {
    kind: "round",
    outside,
    wall,
    convention: "ASTM A1065",
    galvanized: false,
  };
  return ofKind(memberSection(tube), "round");
}

/** Rectangular tube computed from its full wall, m. */
export function box(depth: number, width: number, wall: number): RectangularSection {
  const tube: RectangularTube = {
    kind: "rectangular",
    depth,
    width,
    wall,
    convention: "ASTM A1065",
    galvanized: false,
  };
  return ofKind(memberSection(tube), "rectangular");
}

/** Narrows a section to the kind asked for. */
export function ofKind<Kind extends MemberSection["kind"]>(
  section: MemberSection,
  kind: Kind,
): Extract<MemberSection, { kind: Kind }> {
  if (section.kind !== kind) throw new Error(`a ${section.kind} where a ${kind} is needed`);
  return section as Extract<MemberSection, { kind: Kind }>;
}

/** The same length in every way, m. */
export const everyLength = (length: number): MemberLengths => ({
  bucklingX: length,
  bucklingY: length,
  lateral: length,
  shear: length,
  torsion: length,
});

/** A strength that must be covered. */
export function covered(strength: MemberStrength): Strength {
  if (!strength.covered) throw new Error(`not covered: ${strength.reason}`);
  return strength;
}
