export * from "./formula/formula.ts";
export * from "./formula/step.ts";
export * from "./quantity/index.ts";
export * from "./refusal/codes.ts";
export * from "./refusal/refusal.ts";
export * from "./source/citation.ts";
export * from "./source/registry.ts";
