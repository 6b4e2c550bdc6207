import type { HoldReview, Review, StormLadder } from "@hoopstay/core";
import { chainOf, holdReview, makeReview, stormLadder } from "@hoopstay/house";
import type { Loaded } from "./load.ts";

/** What is worked out once for each house and place. */
interface Studied {
  review?: Review;
  hold?: HoldReview;
  chain?: ReturnType<typeof chainOf>;
}

const studied = new WeakMap<Loaded, Studied>();

function of(loaded: Loaded): Studied {
  const known = studied.get(loaded) ?? {};
  studied.set(loaded, known);
  return known;
}

/** The review of lift, tip and slide, as the screen shows it. */
export function reviewOf(loaded: Loaded): Review {
  const known = of(loaded);
  known.review ??= makeReview(loaded.evaluation, loaded.meta, { full: false });
  return known.review;
}

/** What holds the house here, with the fewest anchors that would. */
export function holdOf(loaded: Loaded): HoldReview {
  const known = of(loaded);
  known.hold ??= holdReview(loaded.evaluation, { search: true });
  return known.hold;
}

/** Every link of the load path, weakest first. */
export function linksOf(loaded: Loaded): ReturnType<typeof chainOf> {
  const known = of(loaded);
  known.chain ??= chainOf(loaded.evaluation);
  return known.chain;
}

export const ladderOf = (loaded: Loaded, forecast: number | null): StormLadder =>
  stormLadder(loaded.evaluation, holdOf(loaded), forecast);
