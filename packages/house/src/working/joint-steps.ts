import { type Chapter, derived, formula, inMeasure, taken } from "@hoopstay/core";
import type { Certificate, HoldingTerms } from "@hoopstay/stability";
import { factoredWeight } from "./holding-steps.ts";
import { mustAgree } from "./must-agree.ts";
import { slopeSteps } from "./slope-steps.ts";

const windShare = formula({
  id: "joint-wind",
  symbol: "W",
  name: "wind in balance",
  measure: "force",
  arguments: [
    ["f", "share of the design wind", "ratio"],
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["F", "wind of the load case", "force"],
  ],
  expression: "f * gamma_W * F",
  citation: derived("wind goes with the pressure"),
  evaluate: (share, factor, wind) => share * factor * wind,
});

const tetherPart = formula({
  id: "tether-part",
  symbol: "T",
  name: "part of a tether's pull and of its shaft's",
  measure: "force",
  arguments: [
    ["T", "pull along the tether", "force"],
    ["t", "tether this way, of 1 along it", "ratio"],
    ["H", "shaft sideways", "force"],
  ],
  expression: "T * t + H",
  citation: derived("component of a pull"),
  evaluate: (pull, part, aside) => pull * part + aside,
});

const momentAt = formula({
  id: "moment-at",
  symbol: "M",
  name: "moment about the middle of the house",
  measure: "moment",
  arguments: [
    ["a", "one arm", "length"],
    ["F_a", "force on it", "force"],
    ["b", "other arm", "length"],
    ["F_b", "force on that", "force"],
  ],
  expression: "a * F_a - b * F_b",
  citation: derived("force times arm"),
  evaluate: (a, forceA, b, forceB) => a * forceA - b * forceB,
});

const axes = ["Fx", "Fy", "Fz", "Mx", "My", "Mz"] as const;

interface At {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
}

function moments(
  chapter: Chapter,
  symbol: string,
  [fx, fy, fz]: readonly [number, number, number],
  { x, y, z = 0 }: At,
): void {
  const parts = [
    ["Mx", y, fz, z, fy],
    ["My", z, fx, x, fz],
    ["Mz", x, fy, y, fx],
  ] as const;
  for (const [axis, ...inputs] of parts) {
    const [a, one, b, other] = inputs;
    if (a * one === 0 && b * other === 0) continue;
    chapter.work(momentAt, [a, one, b, other], { symbol: `${symbol}_${axis}` });
  }
}

/** Where each number of the balance comes from: wind, weight on its slope, tethers, ground. */
export function jointSteps(
  chapter: Chapter,
  { factor, weight, wind, tethers, pushes }: Certificate,
  terms: HoldingTerms,
  whole: readonly number[],
): void {
  wind.forEach((value, place) => {
    if (value === 0) return;
    const measure = place < 3 ? ("force" as const) : ("moment" as const);
    const inputs = [factor, terms.combination.wind, whole[place] as number] as const;
    const as = { symbol: `W_${axes[place]}` };
    const worked = chapter.work(inMeasure(windShare, measure), [...inputs], as);
    mustAgree("wind in balance", worked, value, Math.max(...wind.map(Math.abs)));
  });
  const { weight: own, slope } = terms.holding;
  chapter.work(factoredWeight, [terms.combination.dead, own.W, slope?.angle ?? 0]);
  const { slopeX, slopeY, down } = weight;
  const [fx, fy] = whole as [number, number];
  if (slope?.downhill && (fx !== 0 || fy !== 0)) {
    const [x, y] = slopeSteps(chapter, terms, fx, fy, 0);
    mustAgree("slope in balance", Math.hypot(x - slopeX, y - slopeY), 0, down);
  }
  moments(chapter, "D", [slopeX, slopeY, -down], weight);
  tethers.forEach(({ tension, most, toward, sideX, sideY, ...at }, index) => {
    // What is left of a pull that a solver sets to nought differs from one machine to the next.
    if (tension <= 1e-9 * most) return;
    const name = `T_${index + 1}`;
    const place = derived("least pulls in balance");
    const pull = taken("found by a solver", name, name, "pull", tension, "force", place);
    chapter.work(pull, []);
    const part = (axis: number, aside: number): number => {
      const inputs = [tension, toward[axis] as number, aside] as const;
      if (tetherPart.evaluate(...inputs) === 0) return 0;
      return chapter.work(tetherPart, [...inputs], { symbol: `${name}_${axes[axis]}` });
    };
    moments(chapter, name, [part(0, sideX), part(1, sideY), part(2, 0)], at);
  });
  pushes.forEach(({ push, frictionX, frictionY, ...at }, index) => {
    moments(chapter, `N_${index + 1}`, [frictionX, frictionY, push], at);
  });
}
