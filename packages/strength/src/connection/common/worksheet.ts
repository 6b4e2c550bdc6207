import type { Formula } from "@hoopstay/core";

/** Where steps are worked. A `Chapter` is one, and keeps them; `unprinted` only computes. */
export interface Worksheet {
  work<Values extends readonly number[]>(
    formula: Formula<Values>,
    inputs: Values,
    as?: { readonly symbol?: string; readonly note?: string },
  ): number;
}

export const unprinted: Worksheet = {
  work: (formula, inputs) => formula.evaluate(...inputs),
};
