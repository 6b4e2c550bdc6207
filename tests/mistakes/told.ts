import { createHash } from "node:crypto";
import { type Complaint, Refusal, showWords } from "@hoopstay/core";
import { readInputs } from "@hoopstay/file";
import {
  type Evaluation,
  evaluate,
  type HoldId,
  holdReview,
  makeReview,
  type Result,
  resultOf,
} from "@hoopstay/house";
import { soundHouse, soundSite } from "../cli/program.ts";

/** Parts of the two sound files to be replaced by others, as a person would type them. */
export interface Typed {
  readonly house?: readonly (readonly [part: string, by: string])[];
  readonly site?: readonly (readonly [part: string, by: string])[];
}

function typed(text: string, changes: Typed["house"] = []): string {
  return changes.reduce((changed, [part, by]) => {
    if (!changed.includes(part)) throw new Error(`no "${part}" in the sound file`);
    return changed.replace(part, () => by);
  }, text);
}

export const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

function read({ house, site }: Typed) {
  const texts: Record<string, string> = {
    house: typed(soundHouse, house),
    site: typed(soundSite, site),
  };
  return readInputs("house", "site", (name) => texts[name] ?? "", sha256);
}

/** What is refused of a changed file: code and key. */
export function refusedOf(changes: Typed): [string, string][] {
  try {
    read(changes);
    return [];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return error.complaints.map(({ code, key }: Complaint) => [code, key ?? ""]);
  }
}

export interface Told {
  readonly evaluation: Evaluation;
  readonly result: Result;
  /** The sentences an owner reads, and what the report says is assumed and not checked. */
  readonly sentences: readonly string[];
  readonly assumed: readonly string[];
  readonly digest: string;
}

/** What the program tells about the sound files with changes. */
export function told(changes: Typed = {}): Told {
  const { house, site, rows, digest, date, files } = read(changes);
  const evaluation = evaluate(house, site);
  const meta = { version: "0", digest, date, files, inputs: rows };
  const review = makeReview(evaluation, meta, { full: false });
  return {
    evaluation,
    result: resultOf(evaluation, meta, review.holds),
    sentences: [
      showWords(review.headline, "us"),
      ...review.answers.map((words) => showWords(words, "us")),
      showWords(review.insideLine, "us"),
      ...review.cautions,
      ...review.notChecked,
    ],
    assumed: review.inputs
      .filter(({ assumed }) => assumed)
      .map(({ key, used }) => `${key}: ${typeof used === "string" ? used : used.value}`),
    digest,
  };
}

export const heldBy = ({ evaluation }: Told) => holdReview(evaluation, { search: false });

/** All that is told of one check of one state. */
export function checkOf(
  { result }: Told,
  state: string,
  check: string,
  hold: HoldId = "bare",
  combination: "ASD" | "LRFD" = "ASD",
) {
  const found = result.states
    .find(({ id }) => id === state)
    ?.governing.find((one) => one.hold === hold && one.combination === combination)
    ?.checks.find((one) => one.check === check);
  if (!found) throw new Error(`no ${check} of ${state}`);
  return found;
}

/** All cases of one state with what holds in them, by its load set. */
export function casesOf({ result }: Told, state: string) {
  const letter = result.states.find(({ id }) => id === state)?.load_set;
  return result.load_sets.find(({ id }) => id === letter)?.cases ?? [];
}

export const lowWeight = ({ result }: Told, hold: HoldId = "bare") => {
  const found = result.weights.find((one) => one.hold === hold && one.name === "low");
  if (!found) throw new Error("no weight");
  return found;
};

export const foot = 0.3048;
export const pound = 4.4482216152605;
export const mph = 0.44704;
