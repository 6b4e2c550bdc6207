export { type CheckOptions, check, type Outcome } from "./commands/check.ts";
