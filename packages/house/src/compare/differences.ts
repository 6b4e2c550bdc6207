import type { VariantReview, Words } from "@hoopstay/core";
import { amounts } from "./amount-words.ts";
import { firstWords, lighterWords, stateWords, wholeWords } from "./gust-words.ts";

function anchorWords(today: VariantReview, variant: VariantReview): Words[] {
  return variant.anchors.flatMap(({ kind, perRail }): Words[] => {
    const before = today.anchors.find((one) => one.kind === kind)?.perRail ?? null;
    if (before === perRail) return [];
    const count = (fewest: number | null): string => (fewest === null ? "none" : String(fewest));
    const now = perRail === null ? "no number holds it" : `${perRail} on each rail hold it`;
    return [[`${kind}: ${now}; today ${count(before)}.`]];
  });
}

/** How a variant differs from today's house, in plain words; the name first. */
export function differences(today: VariantReview, variant: VariantReview): Words[] {
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
  if (told.length === 0 && rest.length === 0)
    return [[`${variant.name}: no difference in what is compared here.`]];
  const lead: Words = [
    `${variant.name}: `,
    ...(told[0] ?? ["the same steel, sticks and pull"]),
    ".",
  ];
  return [lead, ...rest.map((words): Words => [`${variant.name}: `, ...words])];
}
