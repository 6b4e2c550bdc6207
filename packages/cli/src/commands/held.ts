import type { HoldReview, System } from "@hoopstay/core";
import { type Evaluation, evaluate, holdReview, type ReviewMeta } from "@hoopstay/house";
import { loadInputs } from "../read/load-inputs.ts";

declare const __VERSION__: string;

/** Options of every command about holding the house. */
export interface HeldOptions {
  readonly json?: true;
  readonly units: System;
}

/** Two files read and evaluated. */
export interface Evaluated {
  readonly evaluation: Evaluation;
  readonly meta: ReviewMeta;
  readonly names: readonly [house: string, site: string];
}

/** The same, and what holds the house. */
export interface Held extends Evaluated {
  readonly hold: HoldReview;
}

export function evaluatedOf(houseFile: string, siteFile: string): Evaluated {
  const { house, site, rows, digest, date } = loadInputs(houseFile, siteFile);
  const meta: ReviewMeta = { version: __VERSION__, digest, date, inputs: rows };
  return { evaluation: evaluate(house, site), meta, names: [house.name, site.name] };
}

/** Reads both files and works out what holds the house; `search` looks for the fewest anchors too. */
export function heldOf(houseFile: string, siteFile: string, search: boolean): Held {
  const evaluated = evaluatedOf(houseFile, siteFile);
  return { ...evaluated, hold: holdReview(evaluated.evaluation, { search }) };
}

/** A record as JSON in SI, with what it was made from; a value without limit is null. */
export function jsonOf(record: object, { meta, names }: Pick<Held, "meta" | "names">): string {
  const { version, digest, date } = meta;
  const [house, site] = names;
  const whole = { program: "hoopstay", version, digest, date, house, site, ...record };
  return `${JSON.stringify(whole)}\n`;
}
