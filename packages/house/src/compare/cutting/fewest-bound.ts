import type { CutProblem } from "./cut-problem.ts";

/** Fractions of a stick are looked at down to a twelfth of it. */
const finest = 12;

/**
 * What a piece counts at least, as a part of a stick, when every piece is rounded down to steps of
 * 1/k after stretching by (k + 1)/k: no stick holds pieces that count more than one.
 */
function stepped(length: number, size: number, k: number): number {
  const stretched = (k + 1) * length;
  return stretched % size === 0 ? length / size : Math.floor(stretched / size) / k;
}

/**
 * Sticks that are needed at least. Pieces longer than a stick less `small` count a whole one, shorter
 * than `small` nothing; the rest counts as it is, or stepped. The greatest of these bounds.
 *
 * Source: Fekete and Schepers, dual feasible functions u^(k) and U^(epsilon) for bin packing.
 *
 * @param left pieces still to be cut, by place in `cuts`
 */
export function fewestSticks(
  { size, cuts }: CutProblem,
  left: ArrayLike<number>,
  steps = finest,
): number {
  let most = 0;
  const smalls = [0];
  for (let place = 0; place < cuts.length; place += 1) {
    const { length } = cuts[place] as CutProblem["cuts"][number];
    if ((left[place] as number) > 0 && 2 * length <= size) smalls.push(length);
  }
  for (const small of smalls) {
    for (let k = 0; k <= steps; k += 1) {
      let whole = 0;
      let parts = 0;
      for (let place = 0; place < cuts.length; place += 1) {
        const { length } = cuts[place] as CutProblem["cuts"][number];
        const count = left[place] as number;
        if (count === 0 || length < small) continue;
        if (length > size - small) whole += count;
        else parts += count * (k === 0 ? length / size : stepped(length, size, k));
      }
      most = Math.max(most, whole + Math.ceil(parts - 1e-9));
    }
  }
  return most;
}
