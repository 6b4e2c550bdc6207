import type { House } from "../model/house-model.ts";
import type { TakeOff } from "../take-off/take-off.ts";

/** Weight of all tube, bar and plate by the take-off, N, also where the house was weighed. */
export function steelWeight(
  { parts }: House,
  { items }: TakeOff,
): { readonly low: number; readonly high: number } {
  let [low, high] = [0, 0];
  parts.forEach(({ kind }, place) => {
    const item = items[place];
    if (kind !== "bar" || !item) return;
    low += item.low;
    high += item.high;
  });
  return { low, high };
}
