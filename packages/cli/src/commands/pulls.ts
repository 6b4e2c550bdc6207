import { showPulls } from "../show/pulls.ts";
import type { Outcome } from "./check.ts";
import { type HeldOptions, heldOf, jsonOf } from "./held.ts";

/** The pull log: what each test counts, what is allowed, and what to pull next. */
export function pulls(houseFile: string, siteFile: string, options: HeldOptions): Outcome {
  const held = heldOf(houseFile, siteFile, false);
  const { pulls: log } = held.hold;
  const text = options.json ? jsonOf(log, held) : showPulls(log, held.names, options.units);
  return { text, code: 0 };
}
