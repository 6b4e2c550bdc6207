import type { HoldReview, System } from "@hoopstay/core";
import { type Evaluation, evaluate, holdReview, type ReviewMeta } from "@hoopstay/house";
import { loadInputs } from "../read/load-inputs.ts";

declare const __VERSION__: string;

/** Options of every command about holding the house. */
export interface HeldOptions {
  readonly json?: true;
  readonly units: System;
}

/** Two files in, what holds the house out. */
export interface Held {
  readonly evaluation: Evaluation;
  readonly hold: HoldReview;
  readonly meta: ReviewMeta;
  readonly names: readonly [house: string, site: string];
}

/** Reads both files and works out what holds the house; `search` looks for the fewest anchors too. */
export function heldOf(houseFile: string, siteFile: string, search: boolean): Held {
  const { house, site, rows, digest, date } = loadInputs(houseFile, siteFile);
  const evaluation = evaluate(house, site);
  const hold = holdReview(evaluation, { search });
  const meta: ReviewMeta = { version: __VERSION__, digest, date, inputs: rows };
  return { evaluation, hold, meta, names: [house.name, site.name] };
}

/** A record as JSON in SI, with what it was made from; a value without limit is null. */
export function jsonOf(record: object, { meta, names }: Held): string {
  const { version, digest, date } = meta;
  const [house, site] = names;
  const whole = { program: "hoopstay", version, digest, date, house, site, ...record };
  return `${JSON.stringify(whole)}\n`;
}
