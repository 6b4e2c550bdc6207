import { bendingStrength } from "../../member/bending.ts";
import { compressionStrength } from "../../member/compression.ts";
import { memberSection } from "../../member/member-section.ts";
import type { MemberStrength } from "../../member/strength.ts";
import { tensionStrength } from "../../member/tension.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import type { LimitState } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import type { PlateBolt, PlateWeld } from "./plate-end.ts";
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
  readonly weld: PlateWeld | null;
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
  { weld, bolt }: PlateEnd,
  sheet: Worksheet,
): readonly LimitState[] {
  const { count, freeLength, steel, thickness, width } = splice;
  const together: Turn = (one) => sheet.work(platesTogether, [count, one]);
  const section = memberSection({ kind: "flat", width, thickness });
  const states = [
    turned(covered(bendingStrength(section, "x", steel, freeLength, sheet)), together),
  ];
  if (weld) {
    const welded: Turn = (r) => together(sheet.work(edgeWeldMoment, [r, weld.lineLength, width]));
    states.push(...weld.strength.limitStates.map((state) => turned(state, welded)));
  }
  if (bolt) {
    const rupture = limitState(
      sheet,
      ["plate-rupture", "rupture of the splice plate in bending at its holes"],
      "moment",
      sheet.work(plateRuptureMoment, [steel.tensileStrength, width, thickness, bolt.hole]),
      connectionFactors.rupture,
    );
    const { perEnd, spacing } = bolt;
    const row: Turn = (force) =>
      spacing === null ? 0 : together(sheet.work(boltRowMoment, [force, perEnd, spacing]));
    states.push(turned(rupture, together));
    states.push(...bolt.strength.limitStates.map((state) => turned(state, row)));
  }
  return states;
}

/** Plates of two opposite faces that pull and push; a lone plate bends across its thickness. */
export function platesAsCouple(
  splice: SplicePlates,
  { weld, bolt }: PlateEnd,
  sheet: Worksheet,
): readonly LimitState[] {
  const { count, faces, freeLength, rail, steel, thickness, width } = splice;
  const section = memberSection({ kind: "flat", width, thickness });
  if (count === 1) return [covered(bendingStrength(section, "y", steel, freeLength, sheet))];
  const across = faces === "sides" ? rail.width : rail.depth;
  const arm = sheet.work(coupleArm, [across, thickness]);
  const couple: Turn = (force) => sheet.work(coupleMoment, [count, force, arm]);
  const net = bolt && {
    area: sheet.work(plateNetArea, [width, thickness, bolt.hole]),
    shearLag: 1,
  };
  const lengths = { bucklingX: freeLength, bucklingY: freeLength };
  const states = [
    turned(tensionStrength(section, steel, net, sheet), couple),
    turned(covered(compressionStrength(section, steel, lengths, sheet)), couple),
  ];
  if (weld) {
    const welded: Turn = (r) => couple(sheet.work(edgeWeldForce, [r, weld.lineLength]));
    states.push(...weld.strength.limitStates.map((state) => turned(state, welded)));
  }
  if (bolt) {
    const row: Turn = (force) => couple(sheet.work(boltRowForce, [force, bolt.perEnd]));
    states.push(...bolt.strength.limitStates.map((state) => turned(state, row)));
  }
  return states;
}

/** Flat bars are always covered in bending and compression. */
function covered(strength: MemberStrength): LimitState {
  if (strength.covered) return strength;
  throw new Error(`a flat bar is not covered: ${strength.reason}`);
}
