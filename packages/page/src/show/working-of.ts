import type { CheckSummary, Complaint } from "@hoopstay/core";
import { signal } from "@preact/signals";
import type { WorkingOf } from "../engine/messages.ts";
import { paper } from "../work/steps.ts";

/** The working that is shown over the page. */
export interface ShownWorking {
  readonly title: string;
  /** Chapter to begin at, such as S3. */
  readonly chapter: string | null;
  /** Null while it is being made. */
  readonly made: string | readonly Complaint[] | null;
}

export const shownWorking = signal<ShownWorking | null>(null);

/** Opens the working of a number, the same as the report's. */
export async function openWorking(
  of: WorkingOf,
  title: string,
  chapter: string | null = null,
): Promise<void> {
  const opened: ShownWorking = { title, chapter, made: null };
  shownWorking.value = opened;
  const made = await paper({ name: "working", of });
  if (shownWorking.value === opened) shownWorking.value = { ...opened, made };
}

/** A check of one state is worked by its case; everything at once stands with the anchors. */
export const workingOfCheck = ({ check, governs }: CheckSummary): WorkingOf =>
  check === "together" ? "anchors" : { caseId: governs.id };
