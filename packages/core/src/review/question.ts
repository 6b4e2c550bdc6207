import type { Dimension } from "../quantity/dimension.ts";

/** What a file is asked for under one key, for a screen that asks for it. */
export type Question = {
  readonly key: string;
  readonly optional: boolean;
  /** What it is, in words; empty where the key says it. */
  readonly about: string;
} & Kind;

type Kind =
  | {
      readonly kind: "quantity";
      readonly dimension: Dimension;
      readonly sign: "positive" | "not-negative" | "any";
      readonly example: string;
    }
  | { readonly kind: "choice"; readonly options: readonly string[] }
  | { readonly kind: "several"; readonly options: readonly string[] }
  | { readonly kind: "count"; readonly least: number; readonly most: number }
  | { readonly kind: "yes" }
  | { readonly kind: "words"; readonly examples: readonly string[] }
  | { readonly kind: "group"; readonly parts: readonly Question[] }
  | { readonly kind: "list"; readonly item: Question }
  /** Kept as it stands in the file. */
  | { readonly kind: "free" };
