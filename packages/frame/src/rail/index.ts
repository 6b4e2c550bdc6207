export * from "./along-rail.ts";
export type { BentRail } from "./bent-rail.ts";
export * from "./extremes.ts";
export * from "./ground-springs.ts";
export * from "./rail.ts";
export * from "./rail-balance.ts";
export {
  anchorSpringLaws,
  anchorTension,
  givingAnchorTension,
  momentAboutRailEnd,
  type WorkedFormula,
} from "./rail-formulas.ts";
export * from "./rail-reactions.ts";
export { RailSolver } from "./rail-solver.ts";
