import { bendingStrength } from "../../member/bending.ts";
import { compressionStrength } from "../../member/compression.ts";
import { memberSection } from "../../member/member-section.ts";
import type { MemberStrength } from "../../member/strength.ts";
import { tensionStrength } from "../../member/tension.ts";
import { refuse } from "../common/require.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import type { ConnectionStrength, LimitState } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import type { PlateBolt } from "./plate-end.ts";
import {
  boltRowForce,
  boltRowMoment,
  coupleArm,
  coupleMoment,
  edgeWeldForce,
  edgeWeldMoment,
  plateNetArea,
  plateRuptureMoment,
  platesTogether,
} from "./splice-formulas.ts";
import type { SplicePlates } from "./splice-plates.ts";

/** What holds one plate end: its weld per length, its bolts one by one; null where not entered. */
export interface PlateEnd {
  readonly line: ConnectionStrength | null;
  readonly bolt: PlateBolt | null;
}

type Turn = (value: number) => number;

/** A limit state of a part, turned into one of the whole joint in N m. */
const turned = (state: LimitState, turn: Turn): LimitState => ({
  ...state,
  measure: "moment",
  nominal: turn(state.nominal),
  ASD: turn(state.ASD),
  LRFD: turn(state.LRFD),
});

/** Plates that bend on edge. */
export function platesOnEdge(
  splice: SplicePlates,
  { line, bolt }: PlateEnd,
  sheet: Worksheet,
): readonly LimitState[] {
  const { bolts, count, freeLength, steel, thickness, weld, width } = splice;
  const together: Turn = (one) => sheet.work(platesTogether, [count, one]);
  const section = memberSection({ kind: "flat", width, thickness });
  const states = [
    turned(covered(bendingStrength(section, "x", steel, freeLength, sheet)), together),
  ];
  if (line && weld) {
    const welded: Turn = (r) => together(sheet.work(edgeWeldMoment, [r, weld.lineLength, width]));
    states.push(...line.limitStates.map((state) => turned(state, welded)));
  }
  if (bolt && bolts) {
    const rupture = limitState(
      sheet,
      ["plate-rupture", "rupture of the splice plate in bending at its holes"],
      "moment",
      sheet.work(plateRuptureMoment, [steel.tensileStrength, width, thickness, bolt.hole]),
      connectionFactors.rupture,
    );
    const { spacing } = bolt;
    const row: Turn = (force) =>
      spacing === null ? 0 : together(sheet.work(boltRowMoment, [force, bolts.perEnd, spacing]));
    states.push(turned(rupture, together));
    states.push(...bolt.strength.limitStates.map((state) => turned(state, row)));
  }
  return states;
}

/** Plates of two opposite faces that pull and push; a lone plate bends across its thickness. */
export function platesAsCouple(
  splice: SplicePlates,
  { line, bolt }: PlateEnd,
  sheet: Worksheet,
): readonly LimitState[] {
  const { bolts, count, faces, freeLength, rail, steel, thickness, weld, width } = splice;
  const section = memberSection({ kind: "flat", width, thickness });
  if (count === 1) return [covered(bendingStrength(section, "y", steel, freeLength, sheet))];
  const across = faces === "sides" ? rail.width : rail.depth;
  const arm = sheet.work(coupleArm, [across, thickness]);
  const couple: Turn = (force) => sheet.work(coupleMoment, [count, force, arm]);
  const net = bolt && { area: netAreaOf(splice, bolt.hole, sheet), shearLag: 1 };
  const lengths = { bucklingX: freeLength, bucklingY: freeLength };
  const states = [
    turned(tensionStrength(section, steel, net, sheet), couple),
    turned(covered(compressionStrength(section, steel, lengths, sheet)), couple),
  ];
  if (line && weld) {
    const welded: Turn = (r) => couple(sheet.work(edgeWeldForce, [r, weld.lineLength]));
    states.push(...line.limitStates.map((state) => turned(state, welded)));
  }
  if (bolt && bolts) {
    const row: Turn = (force) => couple(sheet.work(boltRowForce, [force, bolts.perEnd]));
    states.push(...bolt.strength.limitStates.map((state) => turned(state, row)));
  }
  return states;
}

function netAreaOf({ width, thickness }: SplicePlates, hole: number, sheet: Worksheet): number {
  const net = sheet.work(plateNetArea, [width, thickness, hole]);
  if (net > 0) return net;
  return refuse("out-of-range", "a hole that leaves a part of the plate", hole, "Check the bolt.");
}

/** Flat bars are always covered in bending and compression. */
function covered(strength: MemberStrength): LimitState {
  if (strength.covered) return strength;
  throw new Error(`a flat bar is not covered: ${strength.reason}`);
}
