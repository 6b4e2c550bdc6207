export * from "./base.ts";
export { BasePlan } from "./base-plan.ts";
export { type PlanPoint, planAt, type StationSide } from "./plan-at.ts";
export * from "./plan-formulas.ts";
export { findPeaks, noPeaks, type RailPeaks } from "./plan-peaks.ts";
export * from "./racking/index.ts";
export { combinePlanResponses, type PlanResponse, type RailResponse } from "./response.ts";
