import type { Complaint } from "@hoopstay/core";
import type { FileName, Paper, Texts } from "../engine/messages.ts";
import { put, quick, shownIn, slow, study } from "./conversation.ts";
import { forgetSteps, note, redone, undone } from "./history.ts";
import { forget, kept } from "./keep.ts";
import { keepNow } from "./keep-now.ts";
import { type Made, request } from "./requests.ts";
import {
  answer,
  chain,
  forecast,
  holding,
  ladder,
  names,
  notice,
  reading,
  system,
  texts,
  turn,
  usualNames,
} from "./state.ts";

/** What a person does with the work, besides changing a value of it. */

/** Takes up the work of the last visit. */
export function begin(): void {
  const work = kept();
  if (work) {
    system.value = work.system;
    forecast.value = work.forecast;
    names.value = work.names;
    put(work.texts);
  }
  quick().ask({ kind: "start" });
}

/** Other files in place of those open. */
export function open(opened: Texts, as: Readonly<Record<FileName, string>>): void {
  if (texts.value) note(texts.value, "");
  names.value = as;
  put(opened);
}

export function undo(): void {
  const earlier = texts.value && undone(texts.value);
  if (earlier) put(earlier);
}

export function redo(): void {
  const next = texts.value && redone(texts.value);
  if (next) put(next);
}

/** Takes everything of the work off this device. */
export function clear(): void {
  forget();
  forgetSteps();
  put(null);
  reading.value = null;
  answer.value = null;
  holding.value = null;
  ladder.value = null;
  chain.value = null;
  forecast.value = "";
  names.value = usualNames;
  notice.value = null;
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

/** A paper of the work as it stands: HTML, or what is complained of. */
export function paper(which: Paper): Promise<Made> {
  const now = texts.value;
  if (!now) return Promise.resolve([]);
  return request((ask) =>
    slow().ask({ kind: "paper", ask, texts: now, paper: which, system: system.value }),
  );
}

/** What keeps a text from being a house or site file at all; what it tells may still be mended. */
export async function whatIsWrong(file: FileName, text: string): Promise<readonly Complaint[]> {
  const made = await request((ask) => quick().ask({ kind: "look", ask, file, text }));
  return typeof made === "string" ? [] : made;
}
