import { constant, formula, judged } from "@hoopstay/core";

const proofLoaded = constant(
  "test-factor-proof-loaded",
  "gamma",
  "safety factor on the characteristic pull, every anchor in use proof-loaded",
  1.5,
  "ratio",
  judged("three or more tests to failure on this ground, and each anchor in use tried"),
);

const notProofLoaded = constant(
  "test-factor",
  "gamma",
  "safety factor on the characteristic pull, not every anchor in use proof-loaded",
  2,
  "ratio",
  judged("an anchor in use that was never pulled may stand in a soft spot; safe side"),
);

/** Safety factor on the characteristic pull from tests. */
export const testSafetyFactor = (everyAnchorProofLoaded: boolean) =>
  everyAnchorProofLoaded ? proofLoaded : notProofLoaded;

export const smallNumberFactor = constant(
  "small-number-factor",
  "gamma_R",
  "safety factor on the resistance from few or stopped tests",
  2,
  "ratio",
  judged("correlation factors of table A.9 were made for piles; safe side"),
);

export const allowableFromCharacteristic = formula({
  id: "allowable-from-characteristic",
  symbol: "T_X",
  name: "allowable pull from the characteristic pull",
  measure: "force",
  arguments: [
    ["X_k", "characteristic pull", "force"],
    ["gamma", "safety factor", "ratio"],
  ],
  expression: "X_k / gamma",
  citation: judged("characteristic value over the factor on tests"),
  evaluate: (characteristic, factor) => characteristic / factor,
});

export const allowableFromSmallNumber = formula({
  id: "allowable-from-small-number",
  symbol: "T_R",
  name: "allowable pull from mean and lowest",
  measure: "force",
  arguments: [
    ["R", "resistance from mean and lowest pull", "force"],
    ["gamma_R", "safety factor", "ratio"],
  ],
  expression: "R / gamma_R",
  citation: judged("resistance over the factor on few tests"),
  evaluate: (resistance, factor) => resistance / factor,
});

const both = [
  ["T_X", "from the characteristic pull", "force"],
  ["T_R", "from mean and lowest", "force"],
] as const;

export const largerOfBoth = formula({
  id: "allowable-larger",
  symbol: "T_allow",
  name: "allowable pull: three or four tests, the larger",
  measure: "force",
  arguments: both,
  expression: "max(T_X, T_R)",
  citation: judged("so that a third or fourth pull like the others never lowers the answer"),
  evaluate: (fromCharacteristic, fromMean) => Math.max(fromCharacteristic, fromMean),
});

export const lowerOfBoth = formula({
  id: "allowable-lower",
  symbol: "T_allow",
  name: "allowable pull: five or more tests, some stopped, the lower",
  measure: "force",
  arguments: both,
  expression: "min(T_X, T_R)",
  citation: judged("so that stopping a test early never raises the answer; safe side"),
  evaluate: (fromCharacteristic, fromMean) => Math.min(fromCharacteristic, fromMean),
});
