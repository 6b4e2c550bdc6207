import type { EvidenceRow } from "@hoopstay/core";
import { railAt } from "@hoopstay/frame";
import type { NumberSet } from "../row.ts";
import { heldRail } from "./held-rail.ts";
import { loadsOf, type RailCase, railOf, supportsOf } from "./rail-case.ts";
import { staticsRow } from "./statics-row.ts";

const file = {
  file: "rail_cases.json",
  place: "rails by Macaulay's closed form, by other code",
};

/** The rows of a case: every result that the file holds. */
export function railRows(one: RailCase): EvidenceRow[] {
  const { results } = one;
  const supports = supportsOf(one);
  const { supports: held, bent, extremes } = heldRail(railOf(one), loadsOf(one), supports);
  const reactions = held.map(({ reaction }) => reaction);
  const anchors = one.anchors?.length ?? supports.length;
  const momentAt = (x: number): number => railAt(bent, x).moment;
  const deflectionAt = (x: number): number => railAt(bent, x).deflection;
  const places = supports.map(({ x }) => x);
  const rows: EvidenceRow[] = [];
  const add = (
    quantity: string,
    ours: readonly number[],
    theirs: readonly number[] | undefined,
    least = 0,
  ): void => {
    if (theirs === undefined) return;
    const sets: NumberSet[] = [{ ours, theirs, least }];
    rows.push(
      staticsRow(file, {
        case: one.id,
        inputs: one.description,
        quantity,
        sets,
        allowed: 1e-9,
        why: "ten digits printed",
      }),
    );
  };
  const tensions = reactions.slice(0, anchors).map((reaction) => 0 - reaction);
  add("tensions of the anchors", tensions, results.anchor_tension);
  add("reactions", reactions, results.R);
  add("pushes of the ground", reactions.slice(anchors), results.ground_push);
  add(
    "supports at work (1) or idle (0)",
    held.map(({ part }) => Number(part !== "idle")),
    results.active?.map(Number),
  );
  const extreme = [results.M_max.M, results.M_min.M];
  const { momentMost, momentLeast, shear, deflection } = extremes;
  add("greatest and least moment", [momentMost.moment, momentLeast.moment], extreme);
  add(
    "moment there",
    [results.M_max, results.M_min].map(({ x }) => momentAt(x)),
    extreme,
  );
  add(
    "greatest shear",
    [Math.abs(shear.shear)],
    results.V_absmax === undefined ? undefined : [results.V_absmax],
  );
  add(
    "moments at supports",
    places.map(momentAt),
    results.M_at_supports,
    Math.abs(results.M_max.M),
  );
  add(
    "deflections at loads",
    one.loads.map(([x]) => deflectionAt(x)),
    results.v_at_loads,
  );
  const { v_at_anchors, v_at_ground, v_absmax } = results;
  const settled = v_at_anchors && v_at_ground && [...v_at_anchors, ...v_at_ground];
  add(
    "deflections of supports",
    held.map((support) => support.deflection),
    settled,
  );
  add("deflections at supports", places.map(deflectionAt), settled);
  add("greatest deflection", [deflection.deflection], v_absmax && [v_absmax.v]);
  add("deflection there", v_absmax ? [deflectionAt(v_absmax.x)] : [], v_absmax && [v_absmax.v]);
  return rows;
}
