import type { BaseLine } from "./base-line.ts";
import type { Combination } from "./combination.ts";
import {
  type Holding,
  type HoldingTerms,
  holdingTerms,
  type LineTerms,
  lineTerms,
} from "./holding.ts";
import type { SlidingTerms } from "./slide.ts";

/** Everything about one combination that no case changes. */
export interface CheckTerms {
  readonly combination: Combination;
  readonly pressure: number;
  readonly holdings: readonly {
    readonly terms: HoldingTerms;
    readonly lines: readonly { readonly line: BaseLine; readonly terms: LineTerms }[];
    readonly sliding: SlidingTerms;
  }[];
}

/**
 * @param holdings what holds the house, low and high weight
 * @param lines base lines; right and left rail come first
 * @param pressure design K_d q_h, Pa
 */
export function checkTerms(
  holdings: readonly Holding[],
  lines: readonly BaseLine[],
  combination: Combination,
  pressure: number,
): CheckTerms {
  return {
    combination,
    pressure,
    holdings: holdings.map((holding) => {
      const terms = holdingTerms(holding, combination);
      const about = lines.map((line) => ({ line, terms: lineTerms(terms, line) }));
      const [right, left] = about.map((one) => one.terms) as [LineTerms, LineTerms];
      return { terms, lines: about, sliding: { terms, right, left } };
    }),
  };
}
