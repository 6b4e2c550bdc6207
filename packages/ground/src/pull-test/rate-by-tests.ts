import { Chapter, Refusal, type Step } from "@hoopstay/core";
import { type Allowance, allowanceOf, type CountedPull } from "./allowable-pull.ts";
import { type CountedTest, type LeftOutTest, sortTests } from "./counted-tests.ts";
import type { AnchorsInUse, PullTest } from "./pull-test.ts";
import {
  countedPull,
  dryTestFactor,
  repeatsEnough,
  singlePullFactor,
} from "./reduction-factors.ts";

/** What tests allow for the anchors in use; nothing where none of them counts. */
export type TestRating =
  | { readonly rated: false; readonly leftOut: readonly LeftOutTest[] }
  | ({
      readonly rated: true;
      readonly counted: readonly CountedTest[];
      readonly leftOut: readonly LeftOutTest[];
      readonly trail: readonly Step[];
      readonly oneMore: OneMore;
    } & Allowance);

/** Allowable pull if one more test, to failure, came out like this, N. Information. */
export interface OneMore {
  readonly atMean: number;
  readonly atLowest: number;
}

/**
 * Allowable pull along the tether of one anchor, ASD, from pull tests on this ground.
 *
 * Left out: tests in frozen ground, of another kind of anchor and at another place (each is listed);
 * the direction of the pull, which must be that of the tether; neighbours; hardware.
 *
 * Source: design notes section 7; EN 1990 annex D.7; EN 1997-1 table A.9. Factors are judgement.
 *
 * @param tests pulls in N, movements in m
 * @param use the anchors the tests are to speak for
 * @throws Refusal `not-positive`, `out-of-range` for a test or a scatter that cannot be
 */
export function rateByTests(tests: readonly PullTest[], use: AnchorsInUse): TestRating {
  refuseScatter(use.knownScatter);
  const { counted, leftOut } = sortTests(tests, use);
  if (counted.length === 0) return { rated: false, leftOut };
  const chapter = new Chapter("pull-tests", "Pull tests");
  if (counted.some(({ cyclic }) => cyclic < 1)) chapter.work(singlePullFactor, []);
  if (counted.some(({ wetter }) => wetter < 1)) chapter.work(dryTestFactor[use.form], []);
  const pulls = counted.map(({ test, cyclic, wetter, failed }, index): CountedPull => {
    const { place, date, repeats, ground } = test;
    const often = `${repeats} repeats of the ${repeatsEnough} that keep eta_c at 1`;
    const as = {
      symbol: `T_${index + 1}`,
      note: `${place}, ${date}; ${often}; ground ${ground}`,
    };
    return { pull: chapter.work(countedPull, [cyclic, wetter, test.pull], as), failed };
  });
  const allowance = allowanceOf(pulls, use, chapter);
  const oneMore = whatOneMoreBuys(pulls, use);
  return { rated: true, ...allowance, counted, leftOut, trail: chapter.steps, oneMore };
}

function whatOneMoreBuys(pulls: readonly CountedPull[], use: AnchorsInUse): OneMore {
  const values = pulls.map(({ pull }) => pull);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const allowableWith = (pull: number): number =>
    allowanceOf([...pulls, { pull, failed: true }], use).allowable;
  return { atMean: allowableWith(mean), atLowest: allowableWith(Math.min(...values)) };
}

function refuseScatter(scatter: number | undefined): void {
  if (scatter === undefined || (scatter > 0 && scatter <= 1)) return;
  const expected = "a known coefficient of variation above 0 and up to 1";
  const mend = "Leave it out unless many earlier tests of this anchor in this soil gave it.";
  throw new Refusal([{ code: "out-of-range", given: String(scatter), expected, mend }]);
}
