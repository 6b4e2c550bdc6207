import { type Complaint, readQuantity } from "@hoopstay/core";
import { type Engine, startEngine } from "../engine/engines.ts";
import type { Change, FileName, Paper, Reading, Texts, Told } from "../engine/messages.ts";
import { forgetSteps, note, redone, undone } from "./history.ts";
import { forget, type Kept, keep, kept } from "./keep.ts";
import { whenNothingIsPressed } from "./pointer.ts";
import {
  answer,
  chain,
  fault,
  forecast,
  holding,
  ladder,
  linksAtMost,
  names,
  notice,
  questions,
  reading,
  system,
  texts,
  turn,
  usualNames,
} from "./work.ts";

/** Everything that changes the work goes through here, one step after the other. */

/** The quick engine follows every keystroke; the other does what takes longer. */
let quick: Engine;
let begun: Engine | undefined;

/** Changes made while the quick engine was still at the last ones. */
let waiting: Change[] = [];
let reads = false;
let studies = false;
let later: ReturnType<typeof setTimeout> | undefined;

/** A turn that no state of the work ever has. */
const beforeAll = -1;

/** After this many ms without a change, what takes longer is begun. */
const pause = 250;

export function begin(): void {
  quick = startEngine(hear, fail);
  const work = kept();
  if (work) take(work);
  quick.ask({ kind: "start" });
}

const fail = (message: string): void => {
  fault.value = message;
};

/** The other engine, begun when it is first needed: the first answer has the device to itself. */
function slow(): Engine {
  begun ??= startEngine(hear, fail);
  return begun;
}

function take(work: Kept): void {
  system.value = work.system;
  forecast.value = work.forecast;
  names.value = work.names;
  read(work.texts);
}

/** The gust of the forecast, m/s; null where none that can be read was typed. */
export function forecastGust(): number | null {
  const gust = readQuantity(forecast.value, "speed");
  return gust.ok && gust.value > 0 ? gust.value : null;
}

/** Lets the engine read what is likely to be opened, so that its answer is there at a touch. */
export function prepare(likely: Texts): void {
  quick.ask({ kind: "read", turn: beforeAll, texts: likely });
}

/** Other files in place of those open. */
export function open(opened: Texts, as: Readonly<Record<FileName, string>>): void {
  if (texts.value) note(texts.value, "");
  names.value = as;
  read(opened);
}

function read(now: Texts): void {
  waiting = [];
  reads = true;
  turn.value += 1;
  texts.value = now;
  quick.ask({ kind: "read", turn: turn.value, texts: now });
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
  quick.ask({ kind: "change", turn: turn.value, texts: now, changes });
}

export function undo(): void {
  const earlier = texts.value && undone(texts.value);
  if (earlier) read(earlier);
}

export function redo(): void {
  const next = texts.value && redone(texts.value);
  if (next) read(next);
}

/** Takes everything of the work off this device. */
export function clear(): void {
  forget();
  forgetSteps();
  waiting = [];
  texts.value = null;
  reading.value = null;
  answer.value = null;
  holding.value = null;
  ladder.value = null;
  chain.value = null;
  forecast.value = "";
  names.value = usualNames;
  notice.value = null;
  turn.value += 1;
}

/** The forecast, as typed: the ladder follows it. */
export function tellForecast(typed: string): void {
  forecast.value = typed;
  keepNow();
  if (reading.value?.answer && texts.value) {
    slow().ask({ kind: "forecast", turn: turn.value, texts: texts.value, ...shownIn() });
  }
}

export function chooseUnits(chosen: "us" | "si"): void {
  system.value = chosen;
  keepNow();
  study();
}

function keepNow(): void {
  if (!texts.value) return;
  const work = {
    texts: texts.value,
    names: names.value,
    system: system.value,
    forecast: forecast.value,
  };
  if (!keep(work)) {
    notice.value = "This browser keeps nothing between visits: save your files before you leave.";
  }
}

function study(): void {
  if (studies || !reading.value?.answer || !texts.value) return;
  studies = true;
  slow().ask({ kind: "study", turn: turn.value, texts: texts.value, ...shownIn() });
}

const shownIn = () => ({ forecast: forecastGust(), system: system.value });

/** Papers asked for and not yet made, by number. */
const asked = new Map<number, (made: string | readonly Complaint[]) => void>();
let asks = 0;

/** A paper of the work as it stands: HTML, or what is complained of. */
export function paper(which: Paper): Promise<string | readonly Complaint[]> {
  const now = texts.value;
  if (!now) return Promise.resolve([]);
  asks += 1;
  const ask = asks;
  slow().ask({ kind: "paper", ask, texts: now, paper: which, system: system.value });
  return new Promise((settle) => asked.set(ask, settle));
}

/** What keeps a text from being a house or site file at all; what it tells may still be mended. */
export async function whatIsWrong(file: FileName, text: string): Promise<readonly Complaint[]> {
  asks += 1;
  const ask = asks;
  quick.ask({ kind: "look", ask, file, text });
  const made = await new Promise<string | readonly Complaint[]>((settle) => asked.set(ask, settle));
  return typeof made === "string" ? [] : made;
}

function settle(ask: number, made: string | readonly Complaint[]): void {
  asked.get(ask)?.(made);
  asked.delete(ask);
}

function takeReading(told: Reading): void {
  reads = false;
  if (told.turn !== turn.value) return;
  reading.value = told;
  texts.value = told.texts;
  if (told.answer) answer.value = told.answer;
  keepNow();
  clearTimeout(later);
  later = setTimeout(study, pause);
  sendChanges();
}

function hear(told: Told): void {
  switch (told.kind) {
    case "ready":
      questions.value = told.questions;
      return;
    case "reading":
      if (told.turn === beforeAll) return;
      whenNothingIsPressed(() => takeReading(told));
      return;
    case "links-at-most":
      linksAtMost.value = told;
      return;
    case "holding":
      if (told.turn === turn.value) holding.value = told;
      return;
    case "ladder":
      if (told.turn === turn.value) ladder.value = told.html;
      return;
    case "chain":
      studies = false;
      if (told.turn === turn.value) chain.value = told;
      else study();
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
