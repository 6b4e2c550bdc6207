import { type ChainReview, type DrawnLine, windFrom } from "@hoopstay/core";
import { type RailSide, railSides } from "../../rail-pull/case-on-rails.ts";
import type { LoadSet } from "../../review/evaluate.ts";
import { type ChainCase, mainForm } from "../chain-case.ts";
import { designCombinations, type LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { greatestOf, nearness } from "../greatest.ts";
import type { RailAction } from "../rail/rail-action.ts";
import type { RailAt, RailInCase } from "../rail/rail-actions.ts";

interface RailUnder {
  readonly rail: RailInCase;
  readonly side: RailSide;
  readonly windCase: ChainCase;
  readonly set: LoadSet;
  readonly combination: LinkCombination;
}

/** Both rails in every case that counts on them, combination by combination. */
function railsUnder({ evaluation, cases, rails }: ChainContext): RailUnder[] {
  return designCombinations(evaluation.site.combination).flatMap((combination) =>
    cases.filter(mainForm).flatMap((windCase) =>
      [...windCase.sets.keys()].flatMap((set) =>
        railSides.map((side) => {
          const rail = rails.in(windCase, set, side);
          return { rail, side, windCase, set, combination };
        }),
      ),
    ),
  );
}

/** The case that bends a rail most at the design wind, one way; null where no rail is held. */
function worstRail(
  all: readonly RailUnder[],
  pressure: number,
  of: "vertical" | "plan",
): (RailUnder & { readonly action: RailAction }) | null {
  const size = (at: RailAt, combination: LinkCombination): number =>
    at(pressure, combination)?.[of].reduce((greatest, one) => Math.max(greatest, one), 0) ?? -1;
  const worst = greatestOf(
    all,
    ({ rail, combination }) => (1 + nearness) * size(rail.nearly, combination),
    ({ rail, combination }) => size(rail.exactly, combination),
  );
  const action = worst?.rail.exactly(pressure, worst.combination);
  return worst && action ? { ...worst, action } : null;
}

/** Moments and torque along the rail that is asked most, factored, each the greatest in size. */
export function drawnRail(context: ChainContext): ChainReview["rail"] {
  const { evaluation, hoopPlaces, rails } = context;
  const lines: DrawnLine[] = [];
  const all = railsUnder(context);
  const { pressure } = evaluation;
  const vertical = worstRail(all, pressure, "vertical");
  const plan = worstRail(all, pressure, "plan");
  for (const [of, words, worst] of [
    ["vertical", "Most bending up and down", vertical],
    ["plan", "Most bending in plan", plan],
    ["torque", "Most twist", plan],
  ] as const) {
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
