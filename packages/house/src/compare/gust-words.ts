import { measured, speedLimit, type VariantReview, type Words } from "@hoopstay/core";
import { differs, mean, worthTelling } from "./worth-telling.ts";

/** The lowest gust at which the house as a whole begins to move, and how. */
const lowestWhole = ({ states }: VariantReview): VariantReview["states"][number] =>
  states.reduce((a, b) => (b.whole.gust < a.whole.gust ? b : a));

/** How a gust differs from today's; both are rounded down where they stand alone. */
function besideToday(now: number, before: number): Words {
  const difference = Math.abs(now - before);
  if (!Number.isFinite(difference)) return ["today ", speedLimit(before)];
  return [measured(difference, "speed", 2), ` ${now > before ? "more" : "less"} than today`];
}

/** What gives way first, beside today's. */
export function firstWords(today: VariantReview, variant: VariantReview): Words | null {
  const [before, now] = [today.first, variant.first];
  const same = before.words === now.words && before.check.part === now.check.part;
  if (!differs(before.check.workingGust, now.check.workingGust, "gust")) {
    if (same) return null;
    return [
      `Another link is first to go, at about the same gust: ${now.words} (${now.check.part}).`,
    ];
  }
  return [
    `Of its links, first to go: ${now.words} (${now.check.part}), ${now.state}, at `,
    speedLimit(now.check.workingGust),
    ", ",
    ...besideToday(now.check.workingGust, before.check.workingGust),
    same ? "." : `, when it is ${before.words} (${before.check.part}).`,
  ];
}

/** How the house as a whole stands, beside today's. */
export function wholeWords(today: VariantReview, variant: VariantReview): Words | null {
  const [before, now] = [lowestWhole(today), lowestWhole(variant)];
  if (!differs(before.whole.gust, now.whole.gust, "gust")) return null;
  return [
    "As a whole it stands ",
    speedLimit(now.whole.gust),
    ` (${now.words}), `,
    ...besideToday(now.whole.gust, before.whole.gust),
    `; beyond it, it would ${now.whole.words}.`,
  ];
}

type State = VariantReview["states"][number];

const goodFor = ({ whole, link }: State): number => Math.min(whole.gust, link.gust);

/** In how many states it is good for more and for less than today's, where they are not one alone. */
export function stateWords(today: VariantReview, variant: VariantReview): Words | null {
  const changes = variant.states.flatMap((state) => {
    const before = today.states.find(({ id }) => id === state.id);
    if (!before || !differs(goodFor(before), goodFor(state), "gust")) return [];
    return [{ words: state.words, by: goodFor(state) - goodFor(before) }];
  });
  if (changes.length === 0 || variant.states.length < 2) return null;
  const part = (sense: 1 | -1): Words[] => {
    const some = changes.filter(({ by }) => sense * by > 0);
    const [most] = some.toSorted((a, b) => sense * (b.by - a.by));
    if (!most) return [];
    const much: Words = Number.isFinite(most.by)
      ? [", at most by ", measured(Math.abs(most.by), "speed", 2)]
      : [", at most without limit"];
    return [[`${sense > 0 ? "more" : "less"} in ${some.length}`, ...much, ` (${most.words})`]];
  };
  const parts = [...part(1), ...part(-1)];
  return [
    `Of ${variant.states.length} states it is good for `,
    ...parts.flatMap((words, at) => [at === 0 ? "" : ", for ", ...words]),
    ".",
  ];
}

/** A lighter house that stands as well as today's while a link of it gives way sooner. */
export function lighterWords(today: VariantReview, variant: VariantReview): Words | null {
  const lighter = mean(variant.steel) < mean(today.steel);
  const [whole, link] = [lowestWhole(variant), variant.first];
  const weaker = link.check.workingGust < today.first.check.workingGust * (1 - worthTelling.gust);
  if (!lighter || !weaker || !(link.check.workingGust < whole.whole.gust)) return null;
  return [
    `Lighter, and it still does not ${whole.whole.words}, up to `,
    speedLimit(whole.whole.gust),
    `; but a link goes before that: ${link.words} (${link.check.part}), ${link.state}, at `,
    speedLimit(link.check.workingGust),
    "; today's first link stands ",
    speedLimit(today.first.check.workingGust),
    ".",
  ];
}
