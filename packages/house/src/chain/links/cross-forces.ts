import { type Chapter, derived, formula } from "@hoopstay/core";
import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import type { RailedRun } from "../hoop/hoops-on-rails.ts";
import { Superposed } from "../superposed.ts";

/** Thrust, greater end moment and shear of one cross member, factored, first order. */
export interface CrossForces {
  axial: number;
  moment: number;
  shear: number;
}

const endShear = formula({
  id: "cross-member-shear",
  symbol: "V",
  name: "shear of a cross member by the moments at its ends",
  measure: "force",
  arguments: [
    ["M_l", "moment at its left end", "moment"],
    ["M_r", "moment at its right end, in the same sense", "moment"],
    ["b", "length", "length"],
  ],
  expression: "abs(M_l + M_r) / b",
  citation: derived("balance of a bar with moments at both ends"),
  evaluate: (left, right, length) => Math.abs(left + right) / length,
});

/** What ties the rails: thrust or pull of the hoops' feet, and the rails' torque as end moments. */
export function crossForces(
  { dead, evaluation }: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
): (q: number, combination: LinkCombination, into: CrossForces) => CrossForces {
  const still = run.planDead();
  const blown = run.planWind(windCase);
  return (q, combination, into) => {
    const d = factoredDead(dead, windCase, combination);
    const w = combination.wind * q;
    const sum = (of: Float64Array, by: Float64Array, at: number): number =>
      d * (of[at] as number) + w * (by[at] as number);
    into.axial = sum(still.crossAxial, blown.crossAxial, member);
    const left = sum(still.crossEndMoment, blown.crossEndMoment, 2 * member);
    const right = sum(still.crossEndMoment, blown.crossEndMoment, 2 * member + 1);
    into.moment = Math.max(Math.abs(left), Math.abs(right));
    into.shear = endShear.evaluate(left, right, evaluation.house.lines.span);
    return into;
  };
}

/** Thrust, the greater end moment and shear of a cross member, each out of weight and wind. */
export function workCross(
  sheet: Chapter,
  context: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
  q: number,
  combination: LinkCombination,
): CrossForces {
  const weight = factoredDead(context.dead, windCase, { ...combination, dead: 1 });
  const sum = new Superposed(sheet, weight, q, combination);
  const still = run.planDead();
  const blown = run.planWind(windCase);
  const pair = (of: "crossAxial" | "crossEndMoment", at: number) =>
    [still[of][at] as number, blown[of][at] as number] as const;
  const axial = sum.force("N", "along the cross member", ...pair("crossAxial", member));
  const ends = [0, 1].map((end) =>
    sum.moment(
      "M",
      `at its ${end === 0 ? "left" : "right"} end`,
      ...pair("crossEndMoment", 2 * member + end),
    ),
  );
  const [left = 0, right = 0] = ends;
  const shear = sheet.work(endShear, [left, right, context.evaluation.house.lines.span]);
  return { axial, moment: Math.max(Math.abs(left), Math.abs(right)), shear };
}
