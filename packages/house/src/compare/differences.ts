import type { VariantReview, Words } from "@hoopstay/core";
import { amounts } from "./amount-words.ts";
import { firstWords, lighterWords, stateWords, wholeWords } from "./gust-words.ts";

function anchorWords(today: VariantReview, variant: VariantReview): Words[] {
  return variant.anchors.flatMap(({ kind, perRail }): Words[] => {
    const before = today.anchors.find((one) => one.kind === kind)?.perRail ?? null;
    if (before === perRail) return [];
    const count = (fewest: number | null): string => (fewest === null ? "none" : String(fewest));
    const now = perRail === null ? "no number holds it" : `${perRail} on each rail hold it`;
    return [[`${kind}: ${now} in every state; today ${count(before)}.`]];
  });
}

/** Whether every number that stands side by side is the same, to its last figure. */
function sameNumbers(one: VariantReview, other: VariantReview): boolean {
  const numbers = ({
    weight,
    steel,
    cuts,
    cost,
    pull,
    anchors,
    first,
    states,
    holds,
  }: VariantReview) =>
    JSON.stringify({ weight, steel, cuts, cost, pull, anchors, first, states, holds });
  return numbers(one) === numbers(other);
}

/**
 * How a variant differs from today's house, in plain words.
 *
 * @param label stands first in every sentence
 */
export function differences(today: VariantReview, variant: VariantReview, label: string): Words[] {
  const parts = amounts(today, variant);
  const told: Words[] = [];
  if (parts.length > 0) told.push(parts.flatMap((part, at) => [at === 0 ? "" : ", ", ...part]));
  const rest = [
    lighterWords(today, variant) ?? firstWords(today, variant),
    wholeWords(today, variant),
    stateWords(today, variant),
    ...anchorWords(today, variant),
    today.holds === variant.holds
      ? null
      : [
          variant.holds
            ? "It holds here; today's does not."
            : "It does not hold here; today's does.",
        ],
  ].filter((words) => words !== null);
  if (told.length === 0 && rest.length === 0) {
    const none = sameNumbers(today, variant)
      ? "no difference in what is compared here."
      : "differences too small to tell in words: see the table.";
    return [[`${label}: ${none}`]];
  }
  const lead: Words = [
    `${label}: `,
    ...(told[0] ?? ["about the same steel and pull, as many sticks"]),
    ".",
  ];
  return [lead, ...rest.map((words): Words => [`${label}: `, ...words])];
}
