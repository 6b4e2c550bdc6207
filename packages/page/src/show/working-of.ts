import type { CheckSummary } from "@hoopstay/core";
import { signal } from "@preact/signals";
import type { WorkingOf } from "../engine/messages.ts";
import type { Made } from "../session/requests.ts";
import { paper } from "../session/steps.ts";

/** The working that is shown over the page. */
export interface ShownWorking {
  readonly title: string;
  /** Chapter to begin at, such as S3. */
  readonly chapter: string | null;
  /** Null while it is being made. */
  readonly made: Made | null;
}

export const shownWorking = signal<ShownWorking | null>(null);

/** Opens the working of a number, the same as the report's. */
export async function openWorking({ of, chapter }: Worked, title: string): Promise<void> {
  const opened: ShownWorking = { title, chapter, made: null };
  shownWorking.value = opened;
  const made = await paper({ name: "working", of });
  if (shownWorking.value === opened) shownWorking.value = { ...opened, made };
}

/** The checks of a case, in the order in which they are worked. */
const checks = ["lift", "tip-right", "tip-left", "tip-front", "tip-back", "slide"];

/** Where a number's working is, and at which chapter of it. */
export interface Worked {
  readonly of: WorkingOf;
  readonly chapter: string | null;
}

/** A check is worked with its case; everything at once stands with the anchors. */
export const workingOfCase = (check: string, caseId: string): Worked =>
  check === "together"
    ? { of: "anchors", chapter: null }
    : { of: { caseId }, chapter: `${caseId}-${checks.indexOf(check) + 1}` };

export const workingOfCheck = ({ check, governs }: CheckSummary): Worked =>
  workingOfCase(check, governs.id);
