import { type Complaint, Refusal, type Review } from "@hoopstay/core";
import { parseText, without, withValue } from "@hoopstay/file";
import { byDirection } from "@hoopstay/house";
import { fileNames } from "./file-names.ts";
import { type Loaded, load } from "./load.ts";
import type { Answer, Change, FileName, Reading, ShownReview, Texts } from "./messages.ts";
import { reviewOf } from "./study.ts";

/** The texts with the changes made in them; every other byte stays. */
export function changed(texts: Texts, changes: readonly Change[]): Texts {
  const now = { ...texts };
  for (const { file, path, value } of changes) {
    now[file] = value === undefined ? without(now[file], path) : withValue(now[file], path, value);
  }
  return now;
}

/** Both files as they stand, and lift, tip and slide where nothing is wrong with them. */
export function readingOf(turn: number, texts: Texts): Reading {
  const values = { house: plainOf("house", texts), site: plainOf("site", texts) };
  try {
    return { turn, texts, values, complaints: [], answer: answerOf(load(texts)) };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const complaints: readonly Complaint[] = error.complaints;
    return { turn, texts, values, complaints, answer: null };
  }
}

/**
 * Whether a text can be opened as a file at all.
 *
 * @throws Refusal where it is no well-formed text of keys and values
 */
export function look(file: FileName, text: string): void {
  const { value } = parseText(text, fileNames[file]);
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return;
  throw new Refusal([
    {
      code: "wrong-kind",
      given: "no keys with values",
      expected: `a ${fileNames[file]}: keys with values, as in the examples`,
      mend: "Is this the right file?",
    },
  ]);
}

function plainOf(file: FileName, texts: Texts): unknown {
  try {
    return parseText(texts[file], fileNames[file]).value;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return undefined;
  }
}

function answerOf(loaded: Loaded): Answer {
  const { evaluation } = loaded;
  const { states, site, holds } = evaluation;
  const now = states.find(({ state }) => state.id === site.now) ?? states[0];
  const hold = holds.at(-1);
  return {
    review: shownOf(reviewOf(loaded)),
    sides: now && hold ? byDirection(evaluation, now, hold.id) : [],
  };
}

const shownOf = (review: Review): ShownReview => ({
  holds: review.holds,
  combination: review.combination,
  headline: review.headline,
  answers: review.answers,
  governing: review.governing,
  inputs: review.inputs,
  cautions: review.cautions,
  notChecked: review.notChecked,
  drawings: review.drawings,
  states: review.states.map(({ checks, ...shown }) => shown),
});
