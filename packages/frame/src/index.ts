export * from "./rail/index.ts";
