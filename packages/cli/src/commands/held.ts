import type { HoldReview, Review, System } from "@hoopstay/core";
import { type Inputs, metaOf } from "@hoopstay/file";
import {
  type Evaluation,
  evaluate,
  holdChapters,
  holdReview,
  makeReview,
  type ReviewMeta,
  stormLadder,
} from "@hoopstay/house";
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
  return evaluatedFrom(loadInputs(houseFile, siteFile), __VERSION__);
}

/** Both files as read, evaluated; what is made of them bears this version. */
export function evaluatedFrom(inputs: Inputs, version: string): Evaluated {
  const { house, site } = inputs;
  const meta = metaOf(inputs, version);
  return { evaluation: evaluate(house, site), meta, names: [house.name, site.name] };
}

/** Reads both files and works out what holds the house; `search` looks for the fewest anchors too. */
export function heldOf(houseFile: string, siteFile: string, search: boolean): Held {
  const evaluated = evaluatedOf(houseFile, siteFile);
  return { ...evaluated, hold: holdReview(evaluated.evaluation, { search }) };
}

interface MadeOf {
  readonly meta: Pick<ReviewMeta, "version" | "digest" | "date">;
  readonly names: readonly [house: string, site: string];
}

/** A record as JSON in SI, with what it was made from; a value without limit is null. */
export function jsonOf(record: object, { meta, names }: MadeOf): string {
  const { version, digest, date } = meta;
  const [house, site] = names;
  const whole = { program: "hoopstay", version, digest, date, house, site, ...record };
  return `${JSON.stringify(whole)}\n`;
}

/** The whole record of a report that tells what holds the house. */
export function heldReview({ evaluation, meta }: Evaluated, hold: HoldReview): Review {
  const ladder = stormLadder(evaluation, hold, null);
  const holding = { hold, ladder, chapters: holdChapters(evaluation) };
  return makeReview(evaluation, meta, { full: true, holding });
}
