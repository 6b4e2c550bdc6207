import type { Words } from "@hoopstay/core";
import { gustStep } from "./gust-step.ts";

/** How a search went, in numbers of designs. */
interface SearchCounts {
  readonly worked: number;
  /** Not worked in full, and not beaten by one that was. */
  readonly open: number;
  readonly leftOut: number;
}

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `1 ${one}` : `${count} ${many}`;

/** What a reader has to know of how the designs were found. */
export function searchWords({ worked, open, leftOut }: SearchCounts): Words[] {
  const step = { value: gustStep.value, measure: "speed", digits: 2 } as const;
  const found: Words[] = [
    [
      `${counted(worked, "design was", "designs were")} worked in full, by every check; all others by quick forms that leave checks out and promise too much rather than too little. Gusts are told apart in steps of `,
      step,
      ", rounded down.",
    ],
  ];
  if (open > 0) {
    found.push([
      `${counted(open, "more design", "more designs")} may be unbeaten too: the quick forms do not rule them out, and they were not worked in full. A narrower range (search in the house file) shows more.`,
    ]);
  }
  if (leftOut > 0) {
    found.push([
      `${counted(leftOut, "design was", "designs were")} left out: they cannot be computed, or the ground does not carry them.`,
    ]);
  }
  return found;
}
