import type { Steel } from "../../material/steel.ts";
import type { Bolt } from "../bolt/bolt-strength.ts";
import { exceeds } from "../common/exceeds.ts";
import { refuse, requireCount, requireLength } from "../common/require.ts";
import { requireWall, type Wall } from "../common/wall.ts";

/** Fillets along both long edges of each plate end. m, Pa. */
export interface SpliceWeld {
  readonly leg: number;
  /** F_EXX; null where unknown: E70. */
  readonly electrode: number | null;
  /** One line, on one side of the joint. */
  readonly lineLength: number;
}

/** A row of bolts on the middle line of each plate end, right through the rail. m. */
export interface SpliceBolts {
  readonly bolt: Omit<Bolt, "grip" | "planes">;
  readonly perEnd: number;
  readonly spacing: number | null;
  readonly holeDiameter: number | null;
  /** Middle of the nearest hole to the end of plate and rail; null where unknown. */
  readonly endDistance: number | null;
  readonly washers: boolean;
}

/** Flat plates across a joint of a rail. m, Pa. */
export interface SplicePlates {
  readonly width: number;
  readonly thickness: number;
  readonly steel: Steel;
  /** Plates at this joint: one, or an even number shared by two opposite faces. */
  readonly count: number;
  readonly faces: "sides" | "top and bottom";
  readonly rail: Wall & { readonly width: number; readonly depth: number };
  /** Plate between its last weld or bolt on either side of the joint, m. */
  readonly freeLength: number;
  readonly weld: SpliceWeld | null;
  readonly bolts: SpliceBolts | null;
}

/** Refuses plates that cannot exist or do not go onto their rail. */
export function requireSplice(splice: SplicePlates): void {
  const { width, thickness, steel, count, faces, rail, freeLength } = splice;
  requireLength(width, "a width of the plates");
  requireLength(thickness, "a thickness of the plates");
  requireWall({ ...steel, wall: thickness }, "the plates");
  requireWall(rail, "the rail");
  requireLength(rail.width, "a width of the rail");
  requireLength(rail.depth, "a depth of the rail");
  requireLength(freeLength, "a free length of the plates");
  requireCount(count, "a count of plates at the joint");
  if (thickness > width) {
    refuse("out-of-range", "plates not thicker than wide", thickness, "Exchange the two.");
  }
  const face = faces === "sides" ? rail.depth : rail.width;
  if (exceeds(width, face)) {
    const mend = "Measure the plates across, or name the other faces.";
    refuse("sizes-disagree", "plates not wider than the face they lie on", width, mend);
  }
}
