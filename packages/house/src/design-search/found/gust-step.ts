import { constant, judged } from "@hoopstay/core";

/** Gusts are told apart in whole steps only. */
export const gustStep = constant(
  "gust-step",
  "v_s",
  "step of gust in which designs are told apart",
  0.44704,
  "speed",
  judged("1 mph, rounded down as gusts are shown: wind and strength are not known more finely"),
);

const slack = 1e-9;

/** A gust in whole steps, rounded down. */
export const gustSteps = (gust: number): number => Math.floor(gust / gustStep.value + slack);
