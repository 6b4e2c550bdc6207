import { cite } from "@hoopstay/core";
import { KSI } from "../common/customary.ts";
import { exceeds } from "../common/exceeds.ts";
import { refuse, requireLength } from "../common/require.ts";
import { type ConnectionNote, type NotCovered, note } from "../common/strength.ts";
import { requireWall, type Wall } from "../common/wall.ts";
import { equivalentSquare, widthRatio } from "./face-geometry-formulas.ts";

/** A round stub welded upright on the middle of a rectangular rail's face. m, Pa. */
export interface StubOnFace {
  readonly rail: Wall & {
    /** Of the face with the stub. */
    readonly width: number;
    readonly depth: number;
    /** ASTM A500 grade C, which K3 accepts though F_y/F_u is 0.806. */
    readonly gradeC: boolean;
  };
  readonly stubOutside: number;
  /** Near side of the stub to the open end of the rail; null where the end is capped or far. */
  readonly openEnd: number | null;
}

/** Limits of the formulas for a branch on a flat face. */
export const faceValidity = {
  citation: cite("aisc-360-22", "tables K3.1A and K3.2A; depth over width from memory", "read"),
  slenderness: 35,
  leastWidthRatio: 0.25,
  yieldStrength: 52 * KSI,
  yieldOverTensile: 0.8,
  depthOverWidth: [0.5, 2],
} as const;

/** D/B above which the side walls are loaded directly (commentary K3). */
export const wideStub = 0.85;

/** Refuses a stub on a rail that cannot exist. */
export function requireStubOnFace({ rail, stubOutside, openEnd }: StubOnFace): void {
  requireWall(rail, "the rail");
  requireLength(rail.width, "a width of the rail");
  requireLength(rail.depth, "a depth of the rail");
  requireLength(stubOutside, "an outside diameter of the stub");
  if (Math.min(rail.width, rail.depth) < 4 * rail.wall) {
    refuse("out-of-range", "a rail of at least four walls", rail.wall, "Check the rail's wall.");
  }
  if (openEnd === null || (openEnd >= 0 && openEnd < Number.POSITIVE_INFINITY)) return;
  const mend = "Measure from the near side of the stub to the end of the rail.";
  refuse("out-of-range", "a distance to the rail's end of zero or more", openEnd, mend);
}

/** Why the rules do not cover a stub on a face; null where they do. */
export function notCoveredFace({ rail, stubOutside }: StubOnFace): NotCovered | null {
  const { width, depth, wall, yieldStrength, tensileStrength } = rail;
  const { slenderness, leastWidthRatio, yieldOverTensile, depthOverWidth } = faceValidity;
  const not = (id: string, reason: string, mend: string) =>
    ({ covered: false, id, reason, mend }) as const;
  if (exceeds(stubOutside, width)) {
    return not("face-stub-wide", "the stub is wider than the rail", "Use a wider rail or a plate.");
  }
  if (exceeds(width, slenderness * wall) || exceeds(depth, slenderness * wall)) {
    const reason = "a side of the rail is more than 35 walls wide: outside the face formulas";
    return not("face-slender", reason, "Use a thicker rail, or a plate under the stub.");
  }
  const beta = widthRatio.evaluate(equivalentSquare.evaluate(stubOutside), width);
  if (exceeds(leastWidthRatio, beta)) {
    const reason = "the stub is too slim for the face: under a quarter of its width";
    return not("face-stub-slim", reason, "Use a wider stub, or a plate under it.");
  }
  const ratio = depth / width;
  if (exceeds(depthOverWidth[0], ratio) || exceeds(ratio, depthOverWidth[1])) {
    const reason = "the rail is more than twice as deep as wide, or less than half as deep";
    return not("face-aspect", reason, "Have the joint designed.");
  }
  if (exceeds(yieldStrength, faceValidity.yieldStrength)) {
    const mend = "Enter no more than 52 ksi as the rail's yield strength for this joint.";
    return not("face-yield", "the rail's yield strength is above the 52 ksi of the rules", mend);
  }
  if (!rail.gradeC && exceeds(yieldStrength, yieldOverTensile * tensileStrength)) {
    const reason = "the rail's yield strength is above 0.8 of its tensile strength";
    const mend = "Enter no more than 0.8 of the tensile strength as yield strength for this joint.";
    return not("face-ductility", reason, mend);
  }
  return null;
}

export function faceFindings({ rail, stubOutside, openEnd }: StubOnFace, endLength: number) {
  const findings: ConnectionNote[] = [];
  const flat = rail.width - 4 * rail.wall;
  if (exceeds(stubOutside, flat)) {
    const words =
      "stub wider than the flat of the rail's face: it cannot be welded round on the flat";
    findings.push(note("face-flat", words, flat, "length"));
  }
  if (openEnd !== null && exceeds(endLength, openEnd)) {
    const words = "stub near the rail's open end: half the strength; a cap plate would restore it";
    findings.push(note("face-open-end", words, endLength, "length"));
  }
  return findings;
}
