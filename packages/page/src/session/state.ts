import type { ChainReview, Question, System } from "@hoopstay/core";
import { computed, signal } from "@preact/signals";
import type { Answer, FileName, Holding, Reading, Texts } from "../engine/messages.ts";

/** What the screen shows. Signals hold the state of the work; functions of this folder change it. */

/** Both files as they stand; null before anything was opened or begun. */
export const texts = signal<Texts | null>(null);
/** Names under which the files are saved, where they were not opened under others. */
export const usualNames: Readonly<Record<FileName, string>> = {
  house: "house.yaml",
  site: "site.yaml",
};
export const names = signal(usualNames);
export const questions = signal<Readonly<Record<FileName, Question>> | null>(null);

/** The last reading, and the last one that gave an answer. */
export const reading = signal<Reading | null>(null);
export const answer = signal<Answer | null>(null);
/** Working gust at which some link has given way at the latest, m/s, and for which turn. */
export const linksAtMost = signal<{ readonly turn: number; readonly gust: number } | null>(null);
/** What takes longer, each of the turn it was worked out for. */
export const holding = signal<Holding | null>(null);
/** The storm ladder as the report shows it, HTML. */
export const ladder = signal<string | null>(null);
export const chain = signal<{ readonly turn: number; readonly chain: ChainReview } | null>(null);

export const turn = signal(0);
export const system = signal<System>("us");
/** The forecast gust as typed. */
export const forecast = signal("");

/** What went wrong in the program itself, or in this browser. */
export const fault = signal<string | null>(null);
/** A sentence about what was just done. */
export const notice = signal<string | null>(null);

export const complaints = computed(() => reading.value?.complaints ?? []);
/** Whether the answer shown is of an earlier state of the work. */
export const isOld = computed(() => complaints.value.length > 0);
/** Whether what takes longer is of the present state. */
export const holdingIsNew = computed(() => holding.value?.turn === turn.value);
export const chainIsNew = computed(() => chain.value?.turn === turn.value);
