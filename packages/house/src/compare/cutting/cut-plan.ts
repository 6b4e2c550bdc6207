import { cutProblem, type Piece } from "./cut-problem.ts";
import { fewestPatterns } from "./cut-search.ts";

/** One stick bought: pieces in the order they are cut, m, and what is left over with the saw cuts. */
interface PlannedStick {
  readonly pieces: readonly { readonly what: string; readonly length: number }[];
  readonly waste: number;
}

/** Which stick each piece is cut from. */
export interface CutPlan {
  readonly sticks: readonly PlannedStick[];
  /** No plan for these pieces has fewer sticks than this. */
  readonly least: number;
}

/**
 * Cuts pieces from sticks of one length so that as few as can be are bought. Every cut takes the
 * width of the saw, but for the one at the very end of a stick.
 *
 * @param pieces none longer than a stick
 * @param stock length of a stick, m
 * @param sawCut width of a cut, m
 * @throws RangeError where a piece is longer than a stick
 */
export function cutPlan(pieces: readonly Piece[], stock: number, sawCut: number): CutPlan {
  const { problem, lengthOf } = cutProblem(pieces, stock, sawCut);
  const waiting = problem.cuts.map(({ length }) =>
    pieces
      .filter((piece) => lengthOf(piece) === length)
      .flatMap(({ what, length: each, count }) =>
        Array.from({ length: count }, () => ({ what, length: each })),
      ),
  );
  const { patterns, least } = fewestPatterns(problem);
  const sticks = patterns.map((pattern): PlannedStick => {
    const cut = pattern.flatMap((count, place) => waiting[place]?.splice(0, count) ?? []);
    const used = cut.reduce((sum, { length }) => sum + length, 0);
    return { pieces: cut, waste: Math.max(0, stock - used) };
  });
  return { sticks, least };
}
