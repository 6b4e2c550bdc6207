import {
  type ConnectionNote,
  type ConnectionStrength,
  type NotCovered,
  note,
  strengthOf,
} from "../common/strength.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import { platesAsCouple, platesOnEdge } from "./edge-and-couple.ts";
import { plateBolt, plateWeld } from "./plate-end.ts";
import { requireSplice, type SplicePlates } from "./splice-plates.ts";

/** Moments that a splice can take, N m, each alone. */
export interface SpliceStrength {
  readonly covered: true;
  /** Bending in the vertical plane. */
  readonly vertical: ConnectionStrength;
  /** Bending in plan. */
  readonly plan: ConnectionStrength;
}

/**
 * Moments that flat plates across a joint of a rail can take about both axes. About the axis across
 * their width the plates bend on edge (F11); about the other, those of one face pull and those of the
 * opposite face push. Welds or bolts count where they are entered; without them `notChecked` says so.
 *
 * Left out: the rail's own section at the joint, contact of butted rail ends, shear across the joint,
 * block shear.
 *
 * @param splice m, Pa
 * @returns `covered: false` for an odd number of plates above one, and outside the bolt rules
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree`
 */
export function spliceStrength(
  splice: SplicePlates,
  sheet: Worksheet = unprinted,
): SpliceStrength | NotCovered {
  requireSplice(splice);
  const { bolts, count, faces, weld } = splice;
  if (count > 1 && count % 2 === 1) {
    const reason = "an odd number of splice plates: they do not pair on two opposite faces";
    return { covered: false, id: "splice-odd", reason, mend: "Give the plates of one joint." };
  }
  const bolt = bolts && plateBolt(splice, bolts, sheet);
  if (bolt && !bolt.covered) return bolt;
  const welded = weld && plateWeld(splice, weld, sheet);
  const held = [welded, bolt].filter((one) => one !== null).map((one) => one.strength);
  const notes = {
    assumed: held.flatMap((one) => one.assumed),
    findings: held.flatMap((one) => one.findings),
    notChecked: held.length === 0 ? [noAttachment] : held.flatMap((one) => one.notChecked),
  };
  const edgewise = strengthOf(platesOnEdge(splice, { weld: welded, bolt }, sheet), notes);
  const alone = count === 1 ? [loneAttachment] : [];
  const couple = strengthOf(platesAsCouple(splice, { weld: welded, bolt }, sheet), {
    ...notes,
    notChecked: [...notes.notChecked, ...alone],
  });
  return faces === "sides"
    ? { covered: true, vertical: edgewise, plan: couple }
    : { covered: true, vertical: couple, plan: edgewise };
}

const noAttachment: ConnectionNote = note(
  "splice-attachment",
  "welds or bolts of the splice plates: none entered, only the plates themselves are checked",
);

const loneAttachment: ConnectionNote = note(
  "splice-lone-plate",
  "welds or bolts of a lone splice plate that bends across its thickness",
);
