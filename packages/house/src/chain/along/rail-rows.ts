import { formula, judged } from "@hoopstay/core";
import type { LoadSet } from "../../review/evaluate.ts";
import { mainForm } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import { type FootSide, footSides } from "../hoop/foot-forces.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import { railStrengths } from "../links/rail.ts";
import type { RailAction } from "../rail/rail-actions.ts";
import { grouped } from "../row-rater.ts";
import { factoredPressure, found, momentOverStrength } from "../superposed.ts";
import { AlongSheet } from "./along-work.ts";
import type { PushedHoop } from "./pushed-hoops.ts";

const railWithFoot = formula({
  id: "rail-with-foot",
  symbol: "u",
  name: "share of the rail's strength beside a foot: its own bending and the foot's couple",
  measure: "ratio",
  arguments: [
    ["m_x", "moment up and down over its strength", "ratio"],
    ["m_y", "moment in plan over its strength", "ratio"],
    ["m_f", "couple of the foot over the strength up and down", "ratio"],
  ],
  expression: "m_x + m_y + m_f",
  citation: judged(
    "the whole couple on one side of the foot, beside the rail's greatest; safe side",
  ),
  evaluate: (x, y, foot) => x + y + foot,
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
function besideFeet({ rails, hoopPlaces }: ChainContext, side: FootSide, hoops: number): number[] {
  const last = hoopPlaces.length - 1;
  const pushed = hoopPlaces.filter((_, hoop) => hoops > 1 || hoop === 0 || hoop === last);
  const places = rails.places[side];
  return pushed.map((y) => {
    let nearest = 0;
    places.forEach((place, at) => {
      if (Math.abs(place - y) < Math.abs((places[nearest] as number) - y)) nearest = at;
    });
    return nearest;
  });
}

function rowOf(
  context: ChainContext,
  { answer, sets, demand, sharing }: PushedHoop,
  set: LoadSet,
  side: FootSide,
): LinkRow | null {
  const { evaluation, rails } = context;
  const { momentX, momentY } = railStrengths(evaluation.house);
  if (!momentX.covered || !momentY.covered) return null;
  const { windCase } = answer;
  const feet = besideFeet(context, side, sharing.hoops);
  const bent = ({ vertical, plan }: RailAction, at: number, method: "ASD" | "LRFD"): number =>
    (vertical[at] as number) / momentX[method] + (plan[at] as number) / momentY[method];
  const worstFoot = (action: RailAction, method: "ASD" | "LRFD"): number => {
    let worst = feet[0] as number;
    for (const at of feet) if (bent(action, at, method) > bent(action, worst, method)) worst = at;
    return worst;
  };
  return ratioRow(
    {
      link: "ridge-line",
      part: "rail beside a stub, pushed along the house",
      place: `${side} rail, where it is bent most beside a stub`,
      run: sharing.words,
      windCase: { ...windCase, sets: new Map([[set, sets.get(set) as number]]) },
      touches: true,
      work: (sheet, q, combination) => {
        railStrengths(evaluation.house, sheet);
        const { method, wind } = combination;
        const action = rails.at(windCase, set, side, q, combination);
        const at = action ? worstFoot(action, method) : 0;
        const by = "rail on its anchors and the ground, and with all hoops in plan";
        const over = (symbol: string, name: string, moment: number, strength: number): number => {
          const one = sheet.work(found(`M_${symbol}`, name, moment, "moment", by), []);
          return sheet.work(momentOverStrength, [one, strength], { symbol: `m_${symbol}` });
        };
        const [vertical, plan] = [action?.vertical[at] ?? 0, action?.plan[at] ?? 0];
        const up = over("x", "moment up and down", vertical, momentX[method]);
        const across = over("y", "moment in plan", plan, momentY[method]);
        const factored = sheet.work(factoredPressure, [wind, q]);
        const { endArea } = evaluation.shell;
        const along = new AlongSheet(sheet, factored, demand, sharing.hoops, endArea);
        const inputs = [along.tipping, momentX[method]] as const;
        const foot = sheet.work(momentOverStrength, inputs, { symbol: "m_f" });
        sheet.work(railWithFoot, [up, across, foot]);
      },
    },
    (q, combination) => {
      const { method, wind } = combination;
      const action = rails.at(windCase, set, side, q, combination);
      const foot = (wind * q * demand.tipping) / momentX[method];
      return foot + (action ? bent(action, worstFoot(action, method), method) : 0);
    },
  );
}
