export * from "./hoop/index.ts";
export * from "./plan/index.ts";
export * from "./rail/index.ts";
