import process from "node:process";
import { setImmediate } from "node:timers/promises";
import type { SearchReview } from "@hoopstay/core";
import type { SearchProgress } from "@hoopstay/house";

/** What came of a search, and whether the user stopped it. */
export interface SearchRun {
  readonly review: SearchReview;
  readonly interrupted: boolean;
}

/** How often progress is told, and how often the program listens, ms. */
const everySecond = 1000;
const listening = 40;

const progressLine = ({ looked, asked, worked }: SearchProgress, seconds: number): string => {
  const designs = `${asked} ${asked === 1 ? "design" : "designs"}`;
  if (looked === 0) return `${designs} to look at; today's house is worked in full first\n`;
  const done = `${looked} of ${designs}, ${seconds.toFixed(0)} s`;
  return worked === null
    ? `${done}; Ctrl-C stops and keeps what was found\n`
    : `${done}; ${worked} of the best worked in full\n`;
};

/**
 * Runs a search to its end, to its time, or to Ctrl-C; what was found by then is kept. A second
 * Ctrl-C ends the program.
 *
 * @param seconds time to look, from the start of the program; of what was found by then what is worth a
 * look is still worked in full
 */
export async function runSearch(
  search: Generator<SearchProgress, SearchReview, boolean>,
  seconds: number,
): Promise<SearchRun> {
  let interrupted = false;
  const stop = (): void => {
    interrupted = true;
  };
  process.once("SIGINT", stop);
  try {
    let told = Number.NEGATIVE_INFINITY;
    let listened = performance.now();
    let step = search.next(false);
    while (!step.done) {
      const now = performance.now();
      if (now - told >= everySecond) {
        told = now;
        process.stderr.write(progressLine(step.value, now / 1000));
      }
      if (now - listened >= listening) {
        await setImmediate();
        listened = performance.now();
      }
      step = search.next(interrupted || now >= 1000 * seconds);
    }
    return { review: step.value, interrupted };
  } finally {
    process.off("SIGINT", stop);
  }
}
