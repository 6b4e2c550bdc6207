import { derived, formula } from "@hoopstay/core";
import type { LimitState } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";

const severalTogether = formula({
  id: "several-together",
  symbol: "R",
  name: "strength of several alike that share equally",
  measure: "force",
  arguments: [
    ["n", "how many", "ratio"],
    ["R_1", "strength of one", "force"],
  ],
  expression: "n * R_1",
  citation: derived("equal shares"),
  evaluate: (count, one) => count * one,
});

/** A limit state of several bolts of a row. */
export function alikeTogether(state: LimitState, count: number, sheet: Worksheet): LimitState {
  if (count === 1) return state;
  const { name, nominal, ASD, LRFD } = state;
  const several = (one: number) => sheet.work(severalTogether, [count, one], { note: name });
  return { ...state, nominal: several(nominal), ASD: several(ASD), LRFD: several(LRFD) };
}
