import { computed, signal } from "@preact/signals";
import type { Texts } from "../engine/messages.ts";

/** Earlier and later states of the files, the nearest last. */
const before = signal<readonly Texts[]>([]);
const after = signal<readonly Texts[]>([]);
/** The field whose typing the last step gathers. */
let gathering = "";

const most = 200;

export const canUndo = computed(() => before.value.length > 0);
export const canRedo = computed(() => after.value.length > 0);

/** Notes a state that is about to change; typing on in one field is one step. */
export function note(now: Texts, field: string): void {
  if (field !== "" && field === gathering && before.value.length > 0) {
    after.value = [];
    return;
  }
  gathering = field;
  before.value = [...before.value, now].slice(-most);
  after.value = [];
}

export function undone(now: Texts): Texts | undefined {
  const earlier = before.value.at(-1);
  if (!earlier) return undefined;
  gathering = "";
  before.value = before.value.slice(0, -1);
  after.value = [...after.value, now];
  return earlier;
}

export function redone(now: Texts): Texts | undefined {
  const later = after.value.at(-1);
  if (!later) return undefined;
  gathering = "";
  after.value = after.value.slice(0, -1);
  before.value = [...before.value, now];
  return later;
}

export function forgetSteps(): void {
  gathering = "";
  before.value = [];
  after.value = [];
}
