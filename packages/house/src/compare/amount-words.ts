import { type Cost, measured, type VariantReview, type Words } from "@hoopstay/core";
import { differs, mean } from "./worth-telling.ts";

/** An amount of money, whole, with commas between thousands. */
const money = (amount: number): string =>
  Math.round(amount)
    .toString()
    .replace(/(?<=\d)(?=(?:\d{3})+$)/g, ",");

const sticksOf = ({ cuts }: VariantReview): number =>
  cuts.reduce((sum, { sticks }) => sum + sticks.length, 0);

/** What it costs more or less, where the same things are priced in both. */
function costWords(before: Cost | null, now: Cost | null): Words[] {
  if (!before && !now) return [];
  if (!before || !now) return [["cost not compared, for lack of prices"]];
  const without = (one: Cost, other: Cost): string[] =>
    one.unpriced.filter((what) => !other.unpriced.includes(what));
  const missing = [...without(now, before), ...without(before, now)];
  if (missing.length > 0)
    return [[`cost not compared, for lack of a price: ${missing.join(", ")}`]];
  if (!differs(before.total, now.total, "amount")) return [];
  const less = now.total < before.total;
  const amount = money(Math.abs(now.total - before.total));
  return [[`${now.currency} ${amount} ${less ? "less" : "more"} for what is priced`]];
}

/** Steel at the middle of its tolerance, sticks, cost and the greatest pull, more or less of each. */
export function amounts(today: VariantReview, variant: VariantReview): Words[] {
  const parts: Words[] = [];
  const steel = mean(variant.steel) - mean(today.steel);
  if (differs(mean(variant.steel), mean(today.steel), "amount")) {
    parts.push([measured(Math.abs(steel), "force"), steel < 0 ? " less steel" : " more steel"]);
  }
  const sticks = sticksOf(variant) - sticksOf(today);
  if (sticks !== 0) {
    const count = Math.abs(sticks);
    parts.push([`${count} ${count === 1 ? "stick" : "sticks"} ${sticks < 0 ? "fewer" : "more"}`]);
  }
  parts.push(...costWords(today.cost, variant.cost));
  const pull = variant.pull.high - today.pull.high;
  if (differs(variant.pull.high, today.pull.high, "amount")) {
    parts.push([
      measured(Math.abs(pull), "force"),
      pull < 0 ? " less pull to keep it moving" : " more pull to keep it moving",
    ]);
  }
  return parts;
}
