import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { HoopDead } from "./hoop-dead.ts";
import type { HoopAction, HoopRun } from "./hoop-run.ts";
import type { HoopRuns } from "./hoop-runs.ts";

/** One hoop in one run under one case: what weight and what wind make of it. */
export interface HoopAnswer {
  readonly run: HoopRun;
  readonly windCase: ChainCase;
  /** Number of the hoop, back to front, from zero. */
  readonly hoop: number;
  readonly dead: HoopAction;
  readonly wind: HoopAction;
}

/** Hoops that differ in a run and case: an end hoop and an inner one where all inner ones are alike. */
function hoopsToCheck({ stretches }: ChainCase, count: number, together: boolean): number[] {
  if (!together && stretches.length === 1) return count > 2 ? [0, 1] : [0];
  return Array.from({ length: count }, (_, hoop) => hoop);
}

export function hoopAnswers(
  { runs }: HoopRuns,
  cases: readonly ChainCase[],
  count: number,
): HoopAnswer[] {
  return runs.flatMap((run) =>
    cases.flatMap((windCase) =>
      hoopsToCheck(windCase, count, run.railed).map(
        (hoop): HoopAnswer => ({
          run,
          windCase,
          hoop,
          dead: run.dead(hoop),
          wind: run.wind(windCase, hoop),
        }),
      ),
    ),
  );
}

/** Weight that acts with a case in a combination, factored, N per metre of hoop. */
export function factoredDead(
  dead: HoopDead,
  { filmOn }: ChainCase,
  { dead: factor, weight }: LinkCombination,
): number {
  if (weight === "high") return factor * dead.high;
  return factor * (filmOn ? dead.low : dead.lowWithoutFilm);
}

/** The hoops that an answer stands for: both end hoops, or all inner ones, where they are alike. */
export function standsFor(
  { hoop, windCase }: HoopAnswer,
  count: number,
  railed: boolean,
): readonly number[] {
  if (railed || windCase.stretches.length > 1) return [hoop];
  if (hoop === 0) return [0, count - 1];
  return Array.from({ length: count - 2 }, (_, inner) => inner + 1);
}

/** Which hoop it is, in words: all inner ones where they are alike. */
export function hoopWords({ hoop, windCase }: HoopAnswer, count: number, railed: boolean): string {
  const alike = !railed && windCase.stretches.length === 1;
  if (alike) return hoop === 0 ? "the end hoops" : "every inner hoop";
  return `hoop ${hoop + 1} of ${count}, from the back`;
}
