import type { PrintedLine } from "@hoopstay/report";
import { diffArrays } from "diff";

/** Lines of a sheet at one place of it: as they were, and as they are now. Either may be none. */
export interface Difference {
  readonly sheet: string;
  readonly was: readonly string[];
  readonly now: readonly string[];
}

/** More changes than this in one sheet are told as one: nobody reads them line by line. */
const mostEdits = 2000;

const textsOn = (sheet: string, lines: readonly PrintedLine[]): string[] =>
  lines.filter((line) => line.sheet === sheet).map(({ text }) => text);

/** Where two printed pages part, sheet by sheet, in the order of the pages. */
export function differingLines(
  before: readonly PrintedLine[],
  again: readonly PrintedLine[],
): Difference[] {
  const sheets = new Set([...before, ...again].map(({ sheet }) => sheet));
  return [...sheets].flatMap((sheet) =>
    differencesOn(sheet, textsOn(sheet, before), textsOn(sheet, again)),
  );
}

function differencesOn(sheet: string, was: string[], now: string[]): Difference[] {
  const parts = diffArrays(was, now, { maxEditLength: mostEdits });
  if (parts === undefined) return [{ sheet, was, now }];
  const differences: Difference[] = [];
  let open: { was: string[]; now: string[] } | undefined;
  for (const { added, removed, value } of parts) {
    if (!added && !removed) {
      open = undefined;
      continue;
    }
    if (open === undefined) {
      open = { was: [], now: [] };
      differences.push({ sheet, ...open });
    }
    (added ? open.now : open.was).push(...value);
  }
  return differences;
}
