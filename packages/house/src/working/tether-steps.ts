import { type Chapter, derived, formula, sumOf } from "@hoopstay/core";
import type { HoldingTerms, TetherParts } from "@hoopstay/stability";

const slideDirection = formula({
  id: "slide-direction",
  symbol: "u",
  name: "part of the slide's direction",
  measure: "ratio",
  arguments: [
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["F", "wind force this way", "force"],
    ["S", "slope this way", "force"],
    ["E", "horizontal resultant", "force"],
  ],
  expression: "(gamma_W * F + S) / E",
  citation: derived("direction of a vector"),
  evaluate: (factor, wind, slope, resultant) => (factor * wind + slope) / resultant,
});

const tetherAlong = formula({
  id: "tether-along",
  symbol: "p",
  name: "level part of an allowable pull, along the slide",
  measure: "force",
  arguments: [
    ["gamma_T", "factor of the combination on pulls", "ratio"],
    ["T", "allowable pull", "force"],
    ["t_x", "tether to the right, of 1 along it", "ratio"],
    ["u_x", "slide to the right", "ratio"],
    ["t_y", "tether to the front, of 1 along it", "ratio"],
    ["u_y", "slide to the front", "ratio"],
  ],
  expression: "gamma_T * T * abs(t_x * u_x + t_y * u_y)",
  citation: derived("component of a pull"),
  evaluate: (factor, pull, tx, ux, ty, uy) => factor * pull * Math.abs(tx * ux + ty * uy),
});

const groups = {
  against: ["P_a", "tethers against the slide"],
  left: ["P_l", "left tethers that lead along the slide"],
  right: ["P_r", "right tethers that lead along the slide"],
  middle: ["P_m", "middle tethers that lead along the slide"],
} as const;

/** The level pull of every tether along a slide, and their sums. */
export function tetherSteps(
  chapter: Chapter,
  { holding, combination }: HoldingTerms,
  push: { readonly demand: number; readonly x: readonly number[]; readonly y: readonly number[] },
): TetherParts {
  const direction = (symbol: string, [wind, slope]: readonly number[]) =>
    chapter.work(slideDirection, [combination.wind, wind as number, slope as number, push.demand], {
      symbol,
    });
  const [ux, uy] = [direction("u_x", push.x), direction("u_y", push.y)];
  const terms = { against: [], left: [], right: [], middle: [] } as Record<
    keyof TetherParts,
    { readonly symbol: string; readonly value: number }[]
  >;
  holding.anchors.forEach(({ x, pull, toward }, index) => {
    const [tx, ty] = toward;
    const along = tx * ux + ty * uy;
    if (pull === 0 || along === 0) return;
    const group = along < 0 ? "against" : x < 0 ? "left" : x > 0 ? "right" : "middle";
    const symbol = `p_${index + 1}`;
    const inputs = [combination.anchor, pull, tx, ux, ty, uy] as const;
    const value = chapter.work(tetherAlong, inputs, { symbol, note: groups[group][1] });
    terms[group].push({ symbol, value });
  });
  const sum = (group: keyof TetherParts): number => {
    if (terms[group].length === 0) return 0;
    const [symbol, name] = groups[group];
    const list = terms[group].map((one) => ({ ...one, name: "", measure: "force" as const }));
    const added = sumOf(`tethers-${group}`, symbol, name, "force", list, derived("sum"));
    return chapter.work(
      added,
      terms[group].map(({ value }) => value),
    );
  };
  return {
    against: sum("against"),
    left: sum("left"),
    right: sum("right"),
    middle: sum("middle"),
  };
}
