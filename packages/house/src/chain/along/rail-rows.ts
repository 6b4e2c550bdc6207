import { formula, judged } from "@hoopstay/core";
import type { LoadSet } from "../../review/evaluate.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { grouped } from "../grouped.ts";
import { type FootSide, footSides } from "../hoop/foot-forces.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import { nearestPlace } from "../rail/nearest-place.ts";
import type { RailAction } from "../rail/rail-action.ts";
import { atMost, notHeld, type RailAt } from "../rail/rail-actions.ts";
import { railShares, railStrengthOf, railStrengths, workRailShares } from "../rail/rail-shares.ts";
import { factoredPressure, momentOverStrength } from "../superposed.ts";
import { AlongSheet } from "./along-work.ts";
import type { PushedHoop } from "./pushed-hoops.ts";

const railWithFoot = formula({
  id: "rail-with-foot",
  symbol: "u",
  name: "share of the rail's strength beside a foot: its own forces and both couples of the foot",
  measure: "ratio",
  arguments: [
    ["m_x", "moment up and down over its strength", "ratio"],
    ["m_y", "moment in plan over its strength", "ratio"],
    ["m_f", "couple of the foot along the rail over the strength up and down", "ratio"],
    ["m_t", "torque of the foot about its upright over the strength in plan", "ratio"],
    ["v", "shear over its strength", "ratio"],
    ["t", "torsion over its strength", "ratio"],
  ],
  expression: "max(v, m_x + m_f + m_y + m_t + (v + t)^2)",
  citation: judged(
    "AISC 360-22 equation H3-6, for little torsion too; each whole couple on one side of the foot, beside the rail's greatest; safe side",
  ),
  evaluate: (x, y, foot, about, v, t) => Math.max(v, x + foot + y + about + (v + t) ** 2),
});

/** The rail beside the feet of hoops that are pushed along the house, the worst foot of each rail. */
export function alongRailRows(context: ChainContext, pushed: readonly PushedHoop[]): LinkRow[] {
  const main = pushed.filter(({ answer }) => mainForm(answer.windCase));
  const cases = grouped(main, ({ answer }) => answer.windCase);
  return [...cases.values()].flatMap((inCase) =>
    [...new Set(inCase.flatMap(({ sets }) => [...sets.keys()]))].flatMap((set) => {
      const here = inCase.filter(({ sets }) => sets.has(set));
      const worst = here.reduce((a, b) => (b.demand.tipping > a.demand.tipping ? b : a));
      return footSides.flatMap((side) => rowOf(context, worst, set, side) ?? []);
    }),
  );
}

/** Of a rail's places those of the hoops that feel the push: all, or the end hoops. */
function besideFeet({ rails, hoopPlaces }: ChainContext, side: FootSide, all: boolean): number[] {
  const last = hoopPlaces.length - 1;
  const pushed = hoopPlaces.filter((_, hoop) => all || hoop === 0 || hoop === last);
  const places = rails.places[side];
  return pushed.map((y) => nearestPlace(places, y));
}

function rowOf(
  context: ChainContext,
  { answer, sets, demand, sharing }: PushedHoop,
  set: LoadSet,
  side: FootSide,
): LinkRow | null {
  const { evaluation, rails } = context;
  const can = railStrengthOf(railStrengths(evaluation.house));
  if (typeof can === "string") return null;
  const { windCase } = answer;
  const feet = besideFeet(context, side, sharing.hoops > 1 || demand.line > 0);
  const worstFoot = (action: RailAction, w: number, method: "ASD" | "LRFD") => {
    const foot = (w * demand.tipping) / can.momentX[method];
    const turn = (w * demand.torque) / can.momentY[method];
    let [ratio, place] = [-1, 0];
    for (const at of feet) {
      const { x, y, v, t } = railShares(action, can, method, at);
      const own = railWithFoot.evaluate(x, y, foot, turn, v, t);
      if (own > ratio) [ratio, place] = [own, at];
    }
    return { ratio, place };
  };
  const rail = rails.in(windCase, set, side);
  const ratio = (at: RailAt) => (q: number, combination: LinkCombination) => {
    const action = at(q, combination);
    return action ? worstFoot(action, combination.wind * q, combination.method).ratio : notHeld;
  };
  return ratioRow(
    {
      link: "ridge-line",
      part: "rail beside a stub, pushed along the house",
      place: `${side} rail, where it is bent most beside a stub`,
      run: sharing.words,
      windCase: { ...windCase, sets: new Map([[set, sets.get(set) as number]]) },
      touches: true,
      atMost: atMost(ratio(rail.nearly)),
      work: (sheet, q, combination) => {
        const action = rail.exactly(q, combination);
        if (!action) return;
        const { method, wind } = combination;
        const { place } = worstFoot(action, wind * q, method);
        railStrengths(evaluation.house, sheet);
        const { x, y, v, t } = workRailShares(sheet, action, can, method, place, "beside a foot");
        const over = (symbol: string, moment: number, strength: number): number =>
          sheet.work(momentOverStrength, [moment, strength], { symbol });
        const factored = sheet.work(factoredPressure, [wind, q]);
        const { endArea } = evaluation.shell;
        const along = new AlongSheet(sheet, factored, demand, sharing.hoops, endArea);
        const foot = over("m_f", along.tipping, can.momentX[method]);
        const turn = over("m_t", along.torque, can.momentY[method]);
        sheet.work(railWithFoot, [x, y, foot, turn, v, t]);
      },
    },
    ratio(rail.exactly),
  );
}
