import type { ChainReview, LinkId } from "./chain-review.ts";

/**
 * The weakest link that counts, undefined where none was checked. Ties may go before it: what they
 * hold is rated without them.
 */
export function firstToGo({ links, states }: ChainReview): LinkId | undefined {
  const firsts = new Set(states.map(({ first }) => first.link));
  return links.find(({ id }) => firsts.has(id))?.id;
}
