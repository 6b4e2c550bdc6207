import { type ChainReview, type DrawnLine, windFrom } from "@hoopstay/core";
import { type RailSide, railSides } from "../../rail-pull/case-on-rails.ts";
import type { LoadSet } from "../../review/evaluate.ts";
import { type ChainCase, mainForm } from "../chain-case.ts";
import { designCombinations, type LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import type { RailAction } from "../rail/rail-actions.ts";

interface Worst {
  readonly action: RailAction;
  readonly side: RailSide;
  readonly windCase: ChainCase;
  readonly set: LoadSet;
  readonly combination: LinkCombination;
}

/** The case that bends a rail most up and down at the design wind, and the one most in plan. */
function worstRail(context: ChainContext, of: "vertical" | "plan"): Worst | null {
  const { evaluation, cases, rails } = context;
  let [worst, most]: [Worst | null, number] = [null, -1];
  for (const combination of designCombinations(evaluation.site.combination)) {
    for (const windCase of cases) {
      if (!mainForm(windCase)) continue;
      for (const set of windCase.sets.keys()) {
        for (const side of railSides) {
          const action = rails.at(windCase, set, side, evaluation.pressure, combination);
          if (!action) continue;
          const size = action[of].reduce((greatest, one) => Math.max(greatest, one), 0);
          if (size > most) [worst, most] = [{ action, side, windCase, set, combination }, size];
        }
      }
    }
  }
  return worst;
}

/** Moments and torque along the rail that is asked most, factored, each the greatest in size. */
export function drawnRail(context: ChainContext): ChainReview["rail"] {
  const { evaluation, hoopPlaces, rails } = context;
  const lines: DrawnLine[] = [];
  for (const [of, words] of [
    ["vertical", "Most bending up and down"],
    ["plan", "Most bending in plan"],
    ["torque", "Most twist"],
  ] as const) {
    const worst = worstRail(context, of === "torque" ? "plan" : of);
    if (!worst) continue;
    const { action, side, windCase, set, combination } = worst;
    const state = evaluation.states.find((one) => one.set === set)?.state.words ?? "";
    const points = rails.places[side]
      .map((at, index) => ({ at, value: action[of][index] as number }))
      .toSorted((a, b) => a.at - b.at);
    lines.push({
      title: `${words}, ${side} rail, ${state}, wind ${windFrom(windCase.direction)}, ${combination.words}`,
      measure: "moment",
      points,
    });
  }
  const { house } = evaluation;
  return {
    lines,
    hoops: [...hoopPlaces],
    anchors: [...new Set(house.anchors.map(({ y }) => y))],
    crossMembers: [...(house.links.crossMembers?.places ?? [])],
  };
}
