/** What differs by less than this part is alike: left and right, by their last bits. */
const part = 1e-8;

/**
 * Which of two comes first, greater before smaller; those that rounding alone tells apart stay in their
 * order, so that the same one comes first on every machine.
 */
export function greaterFirst(a: number, b: number): number {
  if (a === b) return 0;
  const apart = Math.abs(a - b);
  // What is beyond all bounds is like nothing else.
  const near =
    apart < Number.POSITIVE_INFINITY && apart <= part * Math.max(Math.abs(a), Math.abs(b));
  return near ? 0 : a > b ? -1 : 1;
}
