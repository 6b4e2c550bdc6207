import type { Words } from "@hoopstay/core";
import { sineOf } from "../../rail-pull/anchor-pulls.ts";
import { railSides } from "../../rail-pull/case-on-rails.ts";
import { combinationOf } from "../../rail-pull/dead-on-rails.ts";
import { tetherTension } from "../../rail-pull/tether.ts";
import type { LoadSet } from "../../review/evaluate.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { sideHold } from "../hoop/side-hold.ts";
import { type LinkMaker, type LinkRow, plainRow } from "../link.ts";
import { atMost, notHeld, type RailAt } from "../rail/rail-actions.ts";
import { forceOverStrength, found } from "../superposed.ts";

/** Pull of each anchor that its rail needs of it, against what it may pull; load case 1. */
export const anchorsLink: LinkMaker = (context) => {
  const { cases, rails } = context;
  const { vertical } = rails;
  const rows: LinkRow[] = [];
  const seen = new Map<LoadSet, Set<number>>();
  for (const windCase of cases) {
    if (!mainForm(windCase)) continue;
    for (const [set, index] of windCase.sets) {
      const known = seen.get(set) ?? new Set<number>();
      seen.set(set, known);
      if (known.has(index)) continue;
      known.add(index);
      for (const side of railSides) {
        const rail = rails.in(windCase, set, side);
        vertical.anchors[side].forEach((anchor, at) => {
          const pull = (by: RailAt) => (q: number, combination: LinkCombination) => {
            const action = by(q, combination);
            return action
              ? tetherTension.evaluate(action.pulls[at] as number, sineOf(anchor))
              : notHeld;
          };
          const most = atMost(pull(rail.nearly));
          const times = (method: "ASD" | "LRFD") => combinationOf(method).anchor * anchor.allowable;
          rows.push(
            plainRow(
              {
                link: "anchors",
                part: "pull along the tether: ground, tether, eye, the lowest",
                place: anchor.name,
                run: "rail on its anchors and the ground",
                windCase: { ...windCase, sets: new Map([[set, index]]) },
                touches: true,
                atMost: (q, combination) => most(q, combination) / times(combination.method),
                measure: "force",
                work: (sheet, q, combination) => {
                  const { method, words } = combination;
                  const action = rail.exactly(q, combination);
                  if (!action) return;
                  const by = "rail on its anchors and the ground, the worse of all ways";
                  const greatest = action.pulls[at] as number;
                  const upright = found("T_v", "upright pull", greatest, "force", by);
                  const needs = sheet.work(upright, [], { note: words });
                  const tension = sheet.work(tetherTension, [needs, sineOf(anchor)]);
                  sheet.work(forceOverStrength, [tension, times(method)]);
                },
              },
              pull(rail.exactly),
              { ASD: times("ASD"), LRFD: times("LRFD") },
            ),
          );
        });
      }
    }
  }
  return { rows, notChecked: [], findings: [...unanchored(context), ...slackTethers(context)] };
};

/** A tether cannot push: said where the rails in plan ask it of one. */
function slackTethers({ cases, runs, evaluation }: ChainContext): Words[] {
  const slack = runs.railed.some((run) =>
    cases.some((windCase) => {
      const all = sideHold(evaluation.house, windCase.direction).anchors;
      const { sideHold: on } = run.plan(windCase).base;
      return all !== null && (on === "evenly" || on.length < all.length);
    }),
  );
  return slack
    ? [
        [
          "Tethers that wind across the house would slacken hold nothing sideways there; where fewer than two places are left, the ground is taken to hold both rails evenly.",
        ],
      ]
    : [];
}

function unanchored({ rails }: ChainContext): Words[] {
  return railSides
    .filter((side) => rails.vertical.anchors[side].length === 0)
    .map(
      (side): Words => [
        `No anchor that counts holds the ${side} rail: it is held by weight alone, see lift off.`,
      ],
    );
}
