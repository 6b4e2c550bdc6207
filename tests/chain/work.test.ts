import { Chapter, linkIds } from "@hoopstay/core";
import { type LinkRow, linkCombinations } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { evaluation, everyOf, rows } from "./example-chain.ts";
import { endBraces, fitted, fittedWith } from "./fitted-house.ts";
import { linkOf } from "./made-links.ts";

/** Rows that print by the same lines of a program. */
const kindOf = ({ link, part, run, windCase }: LinkRow): string =>
  [link, part, run, windCase.direction].join(", ");

/** Rows of every kind: of the largest kinds some, evenly chosen. */
function rowsToPrint(all: readonly LinkRow[]): LinkRow[] {
  const kinds = new Map<string, LinkRow[]>();
  for (const row of all) {
    const kind = kindOf(row);
    const known = kinds.get(kind);
    if (known) known.push(row);
    else kinds.set(kind, [row]);
  }
  return [...kinds.values()].flatMap((kind) => everyOf(kind, 3));
}

const ratings = [
  ...(["cover", "boards", "ridge-line", "end-wall"] as const).map((link) => linkOf(fitted, link)),
  linkOf(fittedWith({ endBraces }), "ridge-line"),
].flatMap((made) => made.rows);

describe("the last step printed of a row is its ratio to 1e-12", () => {
  for (const link of linkIds) {
    const some = rowsToPrint([...rows, ...ratings].filter((row) => row.link === link));
    test(`${link}, ${some.length} rows`, () => {
      expect(some.length).toBeGreaterThan(0);
      for (const row of some) {
        for (const combination of linkCombinations) {
          for (const part of [1, 0.3]) {
            const q = part * evaluation.pressure;
            const { demand, resistance } = row.asked(q, combination);
            const expected = demand > 0 ? demand / resistance : 0;
            const sheet = new Chapter("row", row.part);
            row.work(sheet, q, combination);
            const printed = sheet.steps.at(-1)?.value ?? Number.NaN;
            const where = `${kindOf(row)}, ${row.place}, ${combination.words}, ${q} Pa`;
            if (expected === Number.POSITIVE_INFINITY) expect(printed, where).toBeGreaterThan(1);
            else {
              const gap = Math.abs(printed - expected);
              expect(gap, where).toBeLessThanOrEqual(1e-12 * Math.max(1, expected));
            }
          }
        }
      }
    });
  }
});
