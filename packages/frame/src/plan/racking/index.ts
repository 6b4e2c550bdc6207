export * from "./plan-frame.ts";
export { rackBase } from "./rack-base.ts";
export * from "./racked-base.ts";
export * from "./racking-formulas.ts";
export { solvePlanFrame } from "./solve-plan-frame.ts";
