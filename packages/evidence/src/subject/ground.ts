import { Chapter } from "@hoopstay/core";
import {
  breakoutFactor,
  classOfClues,
  classRows,
  clayFactor,
  clayLateral,
  clayShaftPull,
  clayStart,
  clayUplift,
  deadmanCapacity,
  deadmanHoldingPower,
  deadmanSoilFactors,
  type GroundAtWork,
  type GroundKind,
  holdingFriction,
  illinoisSpacing,
  meyerhofAdamsFactor,
  type PicketHoldfast,
  passiveCoefficient,
  picketCapacity,
  type SoilClass,
  sandLateral,
  sandReactionRate,
  sandUplift,
  sidewaysLimit,
  slantedPull,
  spacingRows,
  upwardLimit,
  vesicFactor,
  wetShearStrength,
  wetStrengthFactor,
} from "@hoopstay/ground";
import type { Computations, Compute, Given } from "../published/given.ts";
import { worthOf } from "../published/units.ts";

const scratch = () => new Chapter("published", "published");

/** A breakout factor whose K_u tan phi is printed as one number. */
const givenFactor = (given: Given): number => {
  const at = [given.number("m"), given.number("ratio"), given.number("KuTan")] as const;
  return breakoutFactor.evaluate(...at, Math.PI / 4);
};

const meyerhof = (given: Given, ratio: number): number =>
  meyerhofAdamsFactor(1, ratio, given.number("phi"), scratch());

const coefficientsOf = (given: Given): Readonly<Record<string, number | undefined>> => {
  const chapter = scratch();
  meyerhofAdamsFactor(1, 100, given.number("phi"), chapter);
  const value = (symbol: string) => chapter.steps.find((step) => step.symbol === symbol)?.value;
  return { Ku: value("K_u"), m: value("m"), critical: value("lambda_cr") };
};

const circle = (breadth: number) => (Math.PI / 4) * breadth ** 2;

const meyerhofUplift: Compute = (given, column) => {
  const [breadth, depth] = [given.number("B"), given.number("H")];
  const factor = meyerhofAdamsFactor(breadth, depth, given.number("phi"), scratch());
  if (column === "Fq") return factor;
  return sandUplift.evaluate(factor, given.number("gamma"), circle(breadth), depth);
};

const clay: Compute = (given, column) => {
  const [breadth, depth] = [given.number("B"), given.number("H")];
  const factor = clayFactor.evaluate(depth, breadth);
  if (column === "Fc") return factor;
  const ground = [given.number("cu"), factor, given.number("gamma"), depth] as const;
  return clayUplift.evaluate(circle(breadth), ...ground);
};

const stakeInClay: Compute = (given, column) => {
  const [d, e] = [given.number("d"), given.number("e")];
  const shaft = [given.number("cu"), d, e, clayStart.evaluate(d, 0)] as const;
  const hold = clayLateral.evaluate(...shaft, given.number("L"), 0, 0);
  if (column !== "M") return hold;
  // The moment for which the shaft alone would allow the pull at which the ground fails.
  let [low, high] = [0, hold * 10];
  for (let turn = 0; turn < 100; turn += 1) {
    const middle = (low + high) / 2;
    if (clayShaftPull.evaluate(middle, ...shaft, 0, 0, 1) < hold) low = middle;
    else high = middle;
  }
  return high;
};

const stakeInSand: Compute = (given) => {
  const passive = passiveCoefficient.evaluate(given.number("phi"));
  const rate = sandReactionRate.evaluate(passive, given.number("gamma"), given.number("d"));
  return sandLateral.evaluate(rate, given.number("e"), given.number("L"), 0, 0);
};

/** Clay that counts as loam in the military tables, dry or wet. */
const loam = (wet: boolean): GroundAtWork => ({
  likeness: "clay",
  shearStrength: 50_000,
  sidewaysStrength: 50_000,
  unitWeight: 17_000,
  wet,
});

const slope = (given: Given): number => Math.atan(1 / given.number("run"));

const timber = (given: Given): number | undefined => {
  const size = {
    face: given.number("face"),
    length: given.number("length"),
    depth: given.number("depth"),
  };
  const ground = loam(given.text("soil") === "wet");
  const body = { kind: "deadman", body: "timber", ...size } as const;
  return deadmanCapacity(body, slope(given), ground, scratch()) ?? undefined;
};

const pickets = (given: Given, wet: boolean): number => {
  const set = given.text("set") as PicketHoldfast["set"];
  return picketCapacity({ kind: "picket set", set }, loam(wet), scratch());
};

const places: Readonly<Record<SoilClass, number>> = {
  "1": 1,
  "2": 2,
  "3": 3,
  "4A": 4.1,
  "4B": 4.2,
  "5": 5,
};

const placeOf = (given: Given): number | undefined => {
  const clue = given.has("blows")
    ? ({ kind: "blow count", blows: given.number("blows") } as const)
    : ({ kind: "probe torque", torque: given.number("torque") } as const);
  const { soilClass } = classOfClues([clue]);
  return soilClass === null ? undefined : places[soilClass];
};

const straps: Compute = (given, column) => {
  const [pull, rise] = [given.number("T"), given.number("angle")];
  // An upright shaft: the tether stands at the rest of a right angle to it.
  const fromShaft = Math.PI / 2 - rise;
  const perUnit =
    column === "H"
      ? slantedPull.evaluate(Number.POSITIVE_INFINITY, 1, fromShaft)
      : slantedPull.evaluate(1, Number.POSITIVE_INFINITY, fromShaft);
  return pull / perUnit;
};

/** How capacities of anchors, soil classes and rules of the ground are computed, SI. */
export const groundComputations: Computations = {
  "breakout factor of given coefficients": (given, column) => {
    const factor = givenFactor(given);
    if (column === "Fq") return factor;
    return (factor - 1) / (2 * given.number("ratio") * given.number("KuTan"));
  },
  "uplift by given coefficients": (given) => {
    const side = given.number("B");
    const depth = side * given.number("ratio");
    return sandUplift.evaluate(givenFactor(given), given.number("gamma"), side ** 2, depth);
  },
  "coefficients of sand": (given, column) => coefficientsOf(given)[column],
  "deep breakout factor": (given, column) => {
    if (column === "Fq") return meyerhof(given, 100);
    const { m = Number.NaN, critical = Number.NaN } = coefficientsOf(given);
    return 1 + m * critical;
  },
  "breakout factor by Meyerhof and Adams": (given) => meyerhof(given, given.number("ratio")),
  "uplift by Meyerhof and Adams": meyerhofUplift,
  "breakout factor by Vesic": (given) =>
    vesicFactor(1, given.number("ratio"), given.number("phi"), scratch()),
  "uplift in clay": clay,
  "sideways hold in clay": stakeInClay,
  "sideways hold in sand": stakeInSand,
  "deadman holding power": (given) =>
    deadmanHoldingPower(given.number("depth"), slope(given), scratch()),
  "deadman soil factor": (given) =>
    deadmanSoilFactors[given.text("soil") as keyof typeof deadmanSoilFactors],
  "deadman capacity": timber,
  "picket set": (given) => pickets(given, false),
  "picket set in wet ground": () =>
    picketCapacity({ kind: "picket set", set: "1" }, loam(true), scratch()) /
    picketCapacity({ kind: "picket set", set: "1" }, loam(false), scratch()),
  "wet strength factor": () => wetShearStrength.evaluate(wetStrengthFactor.value, 1),
  "soil class": (given, column) =>
    classRows.find((row) => row.soilClass === given.text("soilClass"))?.[
      column as "bearing" | "blows" | "torque"
    ] ?? undefined,
  "class of a reading": placeOf,
  "strap resolution": straps,
  "holding friction": (given) =>
    holdingFriction(given.text("ground") as GroundKind, given.text("wet") === "true").friction,
  "tie spacing": (given, column) => {
    if (column === "fromEnd") return illinoisSpacing.fromEnd;
    const row = spacingRows.find(({ rule }) => rule === given.text("rule"));
    return row && row.spacing * worthOf("ft");
  },
  "displacement limit": (_, column) =>
    ({ up: upwardLimit.value, sideways: sidewaysLimit.value })[column],
};
