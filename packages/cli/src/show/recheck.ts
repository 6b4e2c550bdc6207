import type { MadeFrom } from "@hoopstay/report";
import type { Difference } from "../commands/differing-lines.ts";
import { bullet, leadOf, notSealed, wrap } from "./lines.ts";

/** A report beside the same one made again. */
export interface Rechecked {
  readonly from: MadeFrom;
  /** Version that made it again. */
  readonly now: string;
  readonly digest: string;
  readonly names: readonly [house: string, site: string];
  /** Both are the same to the last sign. */
  readonly same: boolean;
  /** How many lines the report prints. */
  readonly printed: number;
  /** Where the lines of the two part. */
  readonly differences: readonly Difference[];
}

/** Whether a report still stands: made again it prints the same, and the same version leaves no other mark. */
export const stands = ({ from, now, same, differences }: Rechecked): boolean =>
  same || (differences.length === 0 && from.version !== now);

const mostShown = 20;
const mostOfOne = 6;

/** What a report is worth today, in words. */
export function showRecheck(file: string, rechecked: Rechecked): string {
  const { from, now, digest, names, differences } = rechecked;
  const lines = [
    leadOf(stands(rechecked) ? "THE SAME" : "DIFFERS", names),
    "",
    wrap(`${file} was made by hoopstay ${from.version} (${from.asked}).`, "  "),
    wrap(
      `Made again by hoopstay ${now} from the files in it (inputs ${digest.slice(0, 12)}): ${verdictOf(rechecked)}`,
      "  ",
    ),
    ...differences.slice(0, mostShown).flatMap(shown),
    ...(differences.length > mostShown
      ? ["", `  ... and at ${differences.length - mostShown} more places.`]
      : []),
    "",
    wrap(
      "This tells that the numbers follow from these inputs, not that the inputs are those of the house.",
      "  ",
    ),
    notSealed,
  ];
  return `${lines.join("\n")}\n`;
}

function verdictOf({ from, now, same, printed, differences: { length } }: Rechecked): string {
  if (same) return `all ${printed} printed lines are the same, to the last sign.`;
  const older = from.version !== now;
  if (length === 0) {
    return older
      ? `all ${printed} printed lines are the same; its look or its drawings are not.`
      : `all ${printed} printed lines are the same, but the page is not. It was changed after it was made: do not rely on it.`;
  }
  const places = length === 1 ? "1 place" : `${length} places`;
  return older
    ? `it differs at ${places}. Read what changed before you rely on either.`
    : `it differs at ${places}. The same version made it, so it was changed after it was made, or was not made from these files: do not rely on it.`;
}

function shown({ sheet, was, now }: Difference): string[] {
  const told = (lines: readonly string[], mark: string): string[] => [
    ...lines.slice(0, mostOfOne).map((line) => bullet(line, mark)),
    ...(lines.length > mostOfOne
      ? [`  ${mark}... and ${lines.length - mostOfOne} more lines`]
      : []),
  ];
  return ["", wrap(`On the sheet "${sheet}"`, "  "), ...told(was, "was: "), ...told(now, "now: ")];
}
