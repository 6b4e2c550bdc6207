import { readQuantity } from "@hoopstay/core";
import { type Engine, startEngine } from "../engine/engines.ts";
import type { Change, Reading, ShownIn, Texts, Told } from "../engine/messages.ts";
import { note } from "./history.ts";
import { keepNow } from "./keep-now.ts";
import { whenNothingIsPressed } from "./pointer.ts";
import { settle } from "./requests.ts";
import {
  answer,
  chain,
  fault,
  forecast,
  holding,
  ladder,
  linksAtMost,
  questions,
  reading,
  system,
  texts,
  turn,
} from "./state.ts";

const fail = (message: string): void => {
  fault.value = message;
};

const started = (start: () => Engine): (() => Engine) => {
  let engine: Engine | undefined;
  return () => {
    engine ??= start();
    return engine;
  };
};

/** Follows every keystroke. */
export const quick = started(() => startEngine(hear, fail));
/** Does what takes longer; begun when it is first needed, so that the first answer has the device. */
export const slow = started(() => startEngine(hear, fail));

/** Changes made while the quick engine was still at the last ones. */
let waiting: Change[] = [];
let reads = false;
let studies = false;
let later: ReturnType<typeof setTimeout> | undefined;

/** After this many ms without a change, what takes longer is begun. */
const pause = 250;

/** A turn that no state of the work ever has. */
const beforeAll = -1;

/** The gust of the forecast, m/s; null where none that can be read was typed. */
export function forecastGust(): number | null {
  const gust = readQuantity(forecast.value, "speed");
  return gust.ok && gust.value > 0 ? gust.value : null;
}

export const shownIn = (): ShownIn => ({ forecast: forecastGust(), system: system.value });

/** Other texts in place of those at work, or none. */
export function put(now: Texts | null): void {
  waiting = [];
  turn.value += 1;
  texts.value = now;
  if (!now) return;
  reads = true;
  quick().ask({ kind: "read", turn: turn.value, texts: now });
}

/** Lets the engine read what is likely to be opened, so that its answer is there at a touch. */
export function prepare(likely: Texts): void {
  quick().ask({ kind: "read", turn: beforeAll, texts: likely });
}

/** One value of a file changed, as typed. */
export function change(one: Change): void {
  waiting.push(one);
  sendChanges();
}

function sendChanges(): void {
  const now = texts.value;
  if (reads || waiting.length === 0 || !now) return;
  const changes = waiting;
  waiting = [];
  reads = true;
  turn.value += 1;
  note(now, changes.length === 1 && changes[0] ? `${changes[0].file} ${changes[0].path}` : "");
  quick().ask({ kind: "change", turn: turn.value, texts: now, changes });
}

/** Begins what takes longer, unless it is at work already or there is nothing to work on. */
export function study(): void {
  if (studies || !reading.value?.answer || !texts.value) return;
  studies = true;
  slow().ask({ kind: "study", turn: turn.value, texts: texts.value, ...shownIn() });
}

/** Typing has the device to itself: what takes longer waits for a pause, also when it comes late. */
function studyLater(): void {
  clearTimeout(later);
  later = setTimeout(study, pause);
}

function takeReading(told: Reading): void {
  reads = false;
  if (told.turn !== turn.value) return;
  reading.value = told;
  texts.value = told.texts;
  if (told.answer) answer.value = told.answer;
  // What is told is seen first.
  setTimeout(keepNow);
  studyLater();
  sendChanges();
}

function hear(told: Told): void {
  const isNow = "turn" in told && told.turn === turn.value;
  switch (told.kind) {
    case "ready":
      questions.value = told.questions;
      return;
    case "reading":
      if (told.turn !== beforeAll) whenNothingIsPressed(() => takeReading(told));
      return;
    case "links-at-most":
      linksAtMost.value = told;
      return;
    case "holding":
      if (isNow) holding.value = told;
      return;
    case "ladder":
      if (isNow) ladder.value = told.html;
      return;
    case "chain":
      studies = false;
      if (isNow) chain.value = told;
      else studyLater();
      return;
    case "paper":
      settle(told.ask, told.html);
      return;
    case "sound":
      settle(told.ask, "");
      return;
    case "refused":
      settle(told.ask, told.complaints);
      return;
    case "failed":
      fault.value = told.message;
      if (told.ask !== null) settle(told.ask, []);
      else {
        reads = false;
        studies = false;
      }
  }
}
