import { describe, expect, test } from "vitest";
import { cutPlan } from "../../packages/house/src/compare/cutting/cut-plan.ts";
import { cutProblem, type Piece } from "../../packages/house/src/compare/cutting/cut-problem.ts";
import { longestFirst } from "../../packages/house/src/compare/cutting/longest-first.ts";
import { readPublished } from "../published/read-published.ts";

const files = (["chvatal-1983", "johnson-1974", "paper-machine-rolls"] as const).flatMap((source) =>
  readPublished(source, "fewest sticks"),
);

const piecesOf = (given: Readonly<Record<string, unknown>>): Piece[] =>
  Object.entries(given.pieces as Record<string, number>).map(([length, count]) => ({
    what: length,
    length: Number(length),
    count,
  }));

describe.each(files)("$place", ({ cases }) => {
  for (const { title, given, values } of cases) {
    const stock = given.stock as number;
    const pieces = piecesOf(given);
    const published = (quantity: string) => values.find((one) => one.quantity === quantity)?.value;

    test(`${title}: the plan has the fewest sticks`, () => {
      const { sticks, least } = cutPlan(pieces, stock, 0);
      expect(sticks).toHaveLength(published("sticks") as number);
      expect(least).toBeLessThanOrEqual(published("sticks") as number);
    });

    const byHand = published("longestFirst");
    if (byHand === undefined) continue;
    test(`${title}: the longest first takes more`, () => {
      expect(longestFirst(cutProblem(pieces, stock, 0).problem)).toHaveLength(byHand);
    });
  }
});
