import { type EvidenceTotals, formulasWords, gradesWords, totalsWords } from "@hoopstay/core";
import { text } from "../html/escape.ts";
import totals from "./evidence-totals.json";

/** What the program itself was checked against; the totals are those of the verification sheet. */
export const verified = (of: EvidenceTotals = totals): string =>
  `<p>What the program was checked against: ${text(totalsWords(of))}. By how the source is known: ${text(
    gradesWords(of),
  )}. ${text(formulasWords(of))}. All of it, value by value: <code>hoopstay evidence</code>.</p>`;
