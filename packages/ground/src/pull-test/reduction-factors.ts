import { constant, formula, judged } from "@hoopstay/core";
import type { AnchorForm, AnchorsInUse, PullTest } from "./pull-test.ts";

/** Repeat pulls without growing movement that stand for the gusts of a storm. */
export const repeatsEnough = 3;

const single = constant(
  "single-pull-factor",
  "eta_c",
  "factor on a single pull, wind being cyclic",
  0.8,
  "ratio",
  judged("strength generally falls with load cycles (NBS BSS 107, without a number); safe side"),
);

const dryPlate = constant(
  "dry-plate-factor",
  "eta_w",
  "factor on a dry test of a plate where the ground may get wet",
  0.7,
  "ratio",
  judged("wet sand weighs less and wet clay is softer; safe side for moist, firm ground"),
);

const dryOther = constant(
  "dry-stake-factor",
  "eta_w",
  "factor on a dry test of a stake or deadman where the ground may get wet",
  0.5,
  "ratio",
  judged(
    "saturated ground held stakes about half as well as dry (staking study, in trade press); US Army manuals halve deadmen in wet fine soil; safe side",
  ),
);

export const dryTestFactor: Readonly<Record<AnchorForm, typeof dryPlate>> = {
  plate: dryPlate,
  stake: dryOther,
  deadman: dryOther,
};

export const singlePullFactor = single;

export const countedPull = formula({
  id: "counted-pull",
  symbol: "T",
  name: "pull of one test as it counts",
  measure: "force",
  arguments: [
    ["eta_c", "factor for cyclic load", "ratio"],
    ["eta_w", "factor for wetter ground", "ratio"],
    ["P", "pull measured", "force"],
  ],
  expression: "eta_c * eta_w * P",
  citation: judged("both factors multiply, test by test, and act on tests only; safe side"),
  evaluate: (cyclic, wetter, pull) => cyclic * wetter * pull,
});

/** Factors for cyclic load and for wetter ground on one test. */
export function reductionsOf(test: PullTest, use: AnchorsInUse): readonly [number, number] {
  const cyclic = test.repeats >= repeatsEnough ? 1 : single.value;
  const wetter = test.ground !== "wet" && use.groundMayGetWet;
  return [cyclic, wetter ? dryTestFactor[use.form].value : 1];
}
