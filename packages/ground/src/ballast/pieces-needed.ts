import { Refusal } from "@hoopstay/core";

/** A kind of piece that stands in one kind of place. */
export interface PieceInStock {
  readonly id: string;
  /** What one piece holds down at the rail where it is to stand, weight factor in it, N. */
  readonly holds: number;
  /** How many there are; without it, as many as it takes. */
  readonly available?: number;
}

export interface PieceCount {
  readonly id: string;
  readonly count: number;
}

export interface PiecesNeeded {
  readonly counts: readonly PieceCount[];
  /** What they hold together, and what is still short, N. */
  readonly held: number;
  readonly short: number;
}

/**
 * How many pieces make up a shortfall at one rail. Kinds are used up in the order given, so the same
 * shortfall can be asked for blocks alone, barrels alone, or what there is first and then the rest.
 * Spread them along the rail as the shortfall is spread, and make them fast (`ballastMustBeTied`).
 *
 * @param shortfall factored hold that is missing at one rail, N (compare `heldByFixedBallast`,
 *   `heldByTie`)
 * @throws Refusal `out-of-range` for a shortfall below zero or a number of pieces that cannot be;
 *   `not-positive` for a piece that holds nothing there
 */
export function piecesNeeded(shortfall: number, stock: readonly PieceInStock[]): PiecesNeeded {
  if (!(shortfall >= 0 && Number.isFinite(shortfall))) {
    refuse("out-of-range", "a shortfall of zero or more", "Where nothing is short, add nothing.");
  }
  const counts: PieceCount[] = [];
  let held = 0;
  for (const { id, holds, available = Number.POSITIVE_INFINITY } of stock) {
    if (!(holds > 0 && Number.isFinite(holds))) {
      refuse(
        "not-positive",
        `a hold of ${id} above zero`,
        "A piece that stands loose holds nothing.",
      );
    }
    if (
      !(available >= 0 && (Number.isInteger(available) || available === Number.POSITIVE_INFINITY))
    ) {
      refuse("out-of-range", `a whole number of ${id}`, "Count them.");
    }
    const count = Math.min(wholePieces(shortfall - held, holds), available);
    counts.push({ id, count });
    held += count * holds;
  }
  return { counts, held, short: Math.max(0, shortfall - held) };
}

function wholePieces(missing: number, holds: number): number {
  const count = Math.max(0, Math.ceil(missing / holds));
  // The quotient may have been rounded down to a whole number.
  return count * holds < missing ? count + 1 : count;
}

function refuse(code: "out-of-range" | "not-positive", expected: string, mend: string): never {
  throw new Refusal([{ code, expected, mend }]);
}
