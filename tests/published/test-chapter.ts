import type { EvidenceRow } from "@hoopstay/core";
import { type ChapterId, chapterRows } from "@hoopstay/evidence";
import { describe, expect, test } from "vitest";
import { fixtureTexts } from "./fixture-texts.ts";

/**
 * One test for every row of a chapter of the verification sheet: the computed number against the
 * printed one, in the printed unit. A known disagreement that has gone away fails too.
 */
export function testChapter(id: ChapterId): void {
  const rows = chapterRows(fixtureTexts, id);
  for (const file of new Set(rows.map((row) => row.file))) {
    describe(file, () => {
      for (const row of rows.filter((one) => one.file === file)) {
        const { title, quantity, published, unit, verdict } = row;
        const known = verdict === "known" ? " (disagrees)" : "";
        test(`${title}, ${quantity} ${published} ${unit}${known}`, () => expectRow(row));
      }
    });
  }
}

function expectRow({ quantity, published, ours, off, allowed, verdict, reason }: EvidenceRow) {
  const words = `${quantity}: computed ${ours}, printed ${published}, off ${off}, allowed ${allowed}`;
  expect(verdict, `${words}: ${reason}`).toBe(reason === null ? "agrees" : "known");
  expect(off, words).toBeLessThanOrEqual(allowed);
  if (typeof ours === "number") {
    expect(Math.abs(ours - Number(published)), words).toBeLessThanOrEqual(allowed);
  }
}
