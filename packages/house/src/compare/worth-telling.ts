/** Differences below these parts of the value are not told in words; the table has every value. */
export const worthTelling = { amount: 0.005, gust: 0.02 } as const;

export const mean = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  (low + high) / 2;

/** Whether two values differ by as much as is told. */
export function differs(one: number, other: number, what: keyof typeof worthTelling): boolean {
  if (!Number.isFinite(one - other)) return one !== other;
  return Math.abs(one - other) > worthTelling[what] * Math.max(Math.abs(one), Math.abs(other));
}
