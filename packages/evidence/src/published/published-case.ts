import type { Grade, SourceId } from "@hoopstay/core";

/** A number as the source prints it, with what is allowed around it, both in its printed unit. */
export interface PublishedValue {
  readonly quantity: string;
  readonly printed: string;
  readonly unit: string;
  readonly value: number;
  readonly allowed: number;
  /** Where the allowance comes from, in words. */
  readonly tolerance: string;
  /** Why the printed number is held to be wrong or rounded, and how far off it may be. */
  readonly disagreement?: { readonly reason: string; readonly allowed: number };
}

/** One case of a published file: what is given, and what the source prints for it. */
export interface PublishedCase {
  readonly name: string;
  /** Citation and case, the title of its tests. */
  readonly title: string;
  readonly place: string;
  readonly grade: Grade;
  readonly given: Readonly<Record<string, unknown>>;
  readonly values: readonly PublishedValue[];
  /** Code of the refusal expected instead of values. */
  readonly refused?: string;
}

/** A file of published values. */
export interface PublishedFile {
  readonly file: string;
  readonly source: SourceId;
  readonly edition: string;
  readonly place: string;
  readonly grade: Grade;
  /** What is computed; a subject picks its files by it. */
  readonly quantity: string;
  /** Unit of each given or expected number; a ratio is `1`. */
  readonly units: Readonly<Record<string, string>>;
  readonly cases: readonly PublishedCase[];
}
