import { cutPlan, cutProblem, longestFirst, type Piece } from "@hoopstay/house";
import { type Computations, columns, type Given } from "../published/given.ts";

const piecesOf = (given: Given): Piece[] =>
  Object.entries(given.plain("pieces") as Record<string, number>).map(([length, count]) => ({
    what: length,
    length: Number(length),
    count,
  }));

const stockOf = (given: Given): number => given.plain("stock") as number;

/** How the fewest sticks of a cut list are found, beside what cutting the longest first takes. */
export const cuttingComputations: Computations = {
  "fewest sticks": columns({
    sticks: (given) => {
      const { sticks, least } = cutPlan(piecesOf(given), stockOf(given), 0);
      if (least > sticks.length) throw new Error("fewer sticks than the least that is possible");
      return sticks.length;
    },
    longestFirst: (given) =>
      longestFirst(cutProblem(piecesOf(given), stockOf(given), 0).problem).length,
  }),
};
