/** Lengths are whole nanometres, so that sums of them are exact; 1/64 in is a whole number of them. */
const perMetre = 1e9;
const whole = (length: number): number => Math.round(length * perMetre);

/** Pieces that the house needs: what they are for, their length in m, how many. */
export interface Piece {
  readonly what: string;
  readonly length: number;
  readonly count: number;
}

/** One length to be cut, and how often. */
interface Cut {
  readonly length: number;
  readonly count: number;
}

/** How often each length is cut from one stick, by place in the problem's list. */
export type Pattern = readonly number[];

/**
 * What is to be cut from sticks of one size, in whole nanometres. Every length carries the width of
 * the saw, and so does the stick: the cut at its very end is none. Lengths fall; no two are equal.
 */
export interface CutProblem {
  readonly size: number;
  readonly cuts: readonly Cut[];
}

/**
 * @param stock length of a stick, m
 * @param sawCut width of a cut, m
 * @throws RangeError where a piece is longer than a stick
 */
export function cutProblem(
  pieces: readonly Piece[],
  stock: number,
  sawCut: number,
): { problem: CutProblem; lengthOf: (piece: Piece) => number } {
  const kerf = whole(sawCut);
  const size = whole(stock) + kerf;
  const lengthOf = ({ length }: Piece): number => whole(length) + kerf;
  const counts = new Map<number, number>();
  for (const piece of pieces) {
    const length = lengthOf(piece);
    if (length > size) throw new RangeError(`${piece.what}: longer than the stick it is cut from`);
    counts.set(length, (counts.get(length) ?? 0) + piece.count);
  }
  const cuts = [...counts].map(([length, count]) => ({ length, count }));
  cuts.sort((one, other) => other.length - one.length);
  return { problem: { size, cuts }, lengthOf };
}
