export * from "./anchor/anchor.ts";
export type * from "./anchor/capacity.ts";
export * from "./anchor/deadman.ts";
export * from "./anchor/design-values.ts";
export { displacementRows } from "./anchor/displacement-sources.ts";
export { frostFinding } from "./anchor/frost-line.ts";
export { helixUplift } from "./anchor/helices.ts";
export { type LateralCapacity, lateralCapacity } from "./anchor/lateral.ts";
export * from "./anchor/lateral-clay.ts";
export * from "./anchor/lateral-sand.ts";
export { breakoutFactor, meyerhofAdams, meyerhofAdamsFactor } from "./anchor/meyerhof-adams.ts";
export { picketCapacity, picketRows, picketWetFactors } from "./anchor/picket-sets.ts";
export * from "./anchor/plate-formulas.ts";
export { plateUplift } from "./anchor/plate-uplift.ts";
export { safetyFactors } from "./anchor/safety-factor.ts";
export { type Placing, theoryCapacity } from "./anchor/theory-capacity.ts";
export { illinoisSpacing, spacingRows } from "./anchor/tie-spacing.ts";
export { vesic, vesicFactor } from "./anchor/vesic.ts";
export * from "./ballast/block-formulas.ts";
export * from "./ballast/block-on-tether.ts";
export * from "./ballast/catalogue.ts";
export * from "./ballast/held-at-rail.ts";
export * from "./ballast/pieces-needed.ts";
export * from "./ballast/submerged.ts";
export * from "./ballast/water-container.ts";
export * from "./ballast/weight-densities.ts";
export * from "./friction/holding-friction.ts";
export * from "./hardware/capacity-along-tether.ts";
export * from "./hardware/link.ts";
export type { Allowance, Route } from "./pull-test/allowable-pull.ts";
export * from "./pull-test/characteristic-value.ts";
export * from "./pull-test/correlation-factors.ts";
export type { CountedTest, LeftOutTest, WhyLeftOut } from "./pull-test/counted-tests.ts";
export { sidewaysLimit, upwardLimit } from "./pull-test/movement-limit.ts";
export * from "./pull-test/proof-load.ts";
export * from "./pull-test/pull-test.ts";
export * from "./pull-test/rate-by-tests.ts";
export * from "./pull-test/reduction-factors.ts";
export * from "./pull-test/sample-statistics.ts";
export * from "./pull-test/stiffness.ts";
export * from "./pull-test/student-t.ts";
export * from "./pull-test/test-safety-factor.ts";
export { type Clue, classOfClues, type ReadClue } from "./soil/class-of-clues.ts";
export { classValues, POUND_PER_CUBIC_FOOT } from "./soil/class-values.ts";
export { type Feel, feelRows } from "./soil/feel.ts";
export {
  buoyantUnitWeight,
  type GroundAtWork,
  groundAtWork,
  wetShearStrength,
  wetStrengthFactor,
} from "./soil/ground-at-work.ts";
export * from "./soil/soil.ts";
export { classRows, type SoilClass, soilClasses } from "./soil/soil-class.ts";
export * from "./tow/dragging-friction.ts";
export * from "./tow/tow-job.ts";
export * from "./tow/tow-pull.ts";
export * from "./tow/tow-review.ts";
export * from "./tow/traction-ratio.ts";
