import { Chapter } from "@hoopstay/core";
import {
  factorScatterKnown,
  factorScatterUnknown,
  leastScatter,
  lognormalCharacteristic,
  logScatterUsed,
  normalCharacteristic,
} from "./characteristic-value.ts";
import { correlationSteps, smallNumberResistance } from "./correlation-factors.ts";
import type { AnchorsInUse } from "./pull-test.ts";
import { logDeviation, logMean, lowestPull, meanPull, variation } from "./sample-statistics.ts";
import { quantileStep } from "./student-t.ts";
import {
  allowableFromCharacteristic,
  allowableFromSmallNumber,
  largerOfBoth,
  lowerOfBoth,
  smallNumberFactor,
  testSafetyFactor,
} from "./test-safety-factor.ts";

/** A pull as it counts, N, and whether it was the anchor's strength or only a lower bound. */
export interface CountedPull {
  readonly pull: number;
  readonly failed: boolean;
}

export type Route = "characteristic" | "mean and lowest";

/** What pulls allow, N, and the numbers on the way. */
export interface Allowance {
  /** Which of the two gave the allowable pull. */
  readonly route: Route;
  /** The resistance of that route before its safety factor, N. */
  readonly characteristic: number;
  readonly safetyFactor: number;
  readonly allowable: number;
  /** Both resistances where there are three tests and more, N. */
  readonly lognormal?: number;
  readonly normal?: number;
  readonly meanAndLowest: number;
}

type Scatter = Pick<AnchorsInUse, "everyAnchorProofLoaded" | "knownScatter">;

/** Fewest tests from which scatter says anything, and fewest at which it alone decides. */
const scatterFrom = 3;
const scatterAloneFrom = 5;

/**
 * Allowable pull of one anchor from counted pulls. One or two tests: mean and lowest. Three or four:
 * the larger of that and the characteristic pull, each over its factor; mean and lowest alone if one
 * was stopped. Five and more: the characteristic pull; if one was stopped the lower of both, each
 * stopped pull taken as a strength.
 *
 * The characteristic pull falls when one high pull grows, since the scatter grows with it. From four
 * tests to five the answer may fall though the fifth is like the others: mean and lowest no longer
 * count. Both are kept, on the safe side.
 *
 * @param pulls one or more, N, reductions made
 * @param scatter what is known of scatter, and whether every anchor is proof-loaded
 * @param chapter takes the steps
 */
export function allowanceOf(
  pulls: readonly CountedPull[],
  scatter: Scatter,
  chapter: Chapter = new Chapter("pull-tests", "Pull tests"),
): Allowance {
  const count = pulls.length;
  const values = pulls.map(({ pull }) => pull);
  const mean = chapter.work(meanPull(count), values);
  const lowest = chapter.work(lowestPull(count), values);
  const [onMean, onLowest] = correlationSteps(count, chapter);
  const resistance = chapter.work(smallNumberResistance, [mean, onMean, lowest, onLowest]);
  const divisor = chapter.work(smallNumberFactor, []);
  const fromMean = chapter.work(allowableFromSmallNumber, [resistance, divisor]);
  const byMean = {
    route: "mean and lowest",
    characteristic: resistance,
    safetyFactor: divisor,
    allowable: fromMean,
    meanAndLowest: resistance,
  } as const;
  if (count < scatterFrom) return byMean;

  const { lognormal, normal } = characteristicOf(values, mean, scatter, chapter);
  const factor = chapter.work(testSafetyFactor(scatter.everyAnchorProofLoaded), []);
  const fromScatter = chapter.work(allowableFromCharacteristic, [lognormal, factor]);
  const printed = { lognormal, normal, meanAndLowest: resistance };
  const byScatter = {
    route: "characteristic",
    characteristic: lognormal,
    safetyFactor: factor,
    allowable: fromScatter,
    ...printed,
  } as const;

  const stopped = pulls.some(({ failed }) => !failed);
  const few = count < scatterAloneFrom;
  if (few && stopped) return { ...byMean, ...printed };
  if (!few && !stopped) return byScatter;
  const allowable = chapter.work(few ? largerOfBoth : lowerOfBoth, [fromScatter, fromMean]);
  return allowable === fromScatter ? byScatter : { ...byMean, ...printed };
}

function characteristicOf(
  values: readonly number[],
  mean: number,
  { knownScatter }: Scatter,
  chapter: Chapter,
): { readonly lognormal: number; readonly normal: number } {
  const count = values.length;
  const meanOfLogs = chapter.work(logMean(count), values);
  const tested = chapter.work(logDeviation(count), [...values, meanOfLogs]);
  const least = Math.max(chapter.work(leastScatter, [], { symbol: "V" }), knownScatter ?? 0);
  const used = chapter.work(logScatterUsed, [tested, least]);
  const factor =
    knownScatter === undefined
      ? chapter.work(factorScatterUnknown, [quantileStep(count - 1, chapter), count])
      : chapter.work(factorScatterKnown, [count]);
  const lognormal = chapter.work(lognormalCharacteristic, [meanOfLogs, factor, used]);
  const spread = chapter.work(variation(count), [...values, mean]);
  const normal = chapter.work(normalCharacteristic, [mean, factor, spread, least]);
  return { lognormal, normal };
}
