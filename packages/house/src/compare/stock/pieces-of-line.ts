import type { Piece } from "../cutting/cut-problem.ts";

/** Rounding of a length does not cost a piece, m. */
export const hair = 1e-9;

/** How many pieces a length needs at least. */
export const fewestPieces = (length: number, stock: number): number =>
  Math.max(1, Math.ceil(length / stock - hair));

/** Straight tube that may be joined anywhere: whole sticks, and what is left. */
export function piecesOfLine(what: string, length: number, count: number, stock: number): Piece[] {
  const whole = fewestPieces(length, stock) - 1;
  const rest = length - whole * stock;
  return [
    ...(whole > 0 ? [{ what, length: stock, count: whole * count }] : []),
    { what, length: Math.min(rest, stock), count },
  ];
}
