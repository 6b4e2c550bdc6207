import { type CompareReview, type Complaint, Refusal, type VariantReview } from "@hoopstay/core";
import { chainReview } from "../chain/chain-review.ts";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { evaluate } from "../review/evaluate.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import { differences } from "./differences.ts";
import type { VariantHouse } from "./read-variant.ts";
import { priceList } from "./stock/price-list.ts";
import { variantReview } from "./variant-review.ts";

/**
 * Today's house beside its variants at one site: every number of each, and what differs in words.
 *
 * @throws Refusal with what is outside scope of any of them, each complaint at its variant
 */
export function compareReview(
  today: { readonly house: House; readonly input: HouseInput },
  variants: readonly VariantHouse[],
  site: Site,
): CompareReview {
  const prices = priceList(today.input);
  const complaints: Complaint[] = [];
  const reviewOf = ({ name, changes, input, house }: VariantHouse): VariantReview[] => {
    try {
      const evaluation = evaluate(house, site);
      const compared = { name, changes, input, evaluation, chain: chainReview(evaluation) };
      return [variantReview(compared, today.house, prices)];
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      complaints.push(
        ...error.complaints.map((one) => ({ ...one, key: one.key ? `${name}: ${one.key}` : name })),
      );
      return [];
    }
  };
  const [own] = reviewOf({ ...today, name: "today", changes: [] });
  const others = variants.flatMap(reviewOf);
  if (!own || complaints.length > 0) throw new Refusal(complaints);
  return {
    today: own,
    variants: others,
    sentences: others.flatMap((variant, place) => differences(own, variant, String(place + 1))),
  };
}
