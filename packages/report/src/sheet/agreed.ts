import type { Chapter } from "@hoopstay/core";
import { type Agreement, agreement } from "@hoopstay/core/second-evaluation";

/**
 * How many steps of a working were evaluated twice and agree: all that have a formula.
 *
 * @throws Error naming the steps whose second evaluation disagrees; nothing is printed of them
 */
export function agreed(
  chapters: readonly Chapter[],
): Pick<Agreement, "steps" | "evaluated" | "agreeing"> {
  const { steps, evaluated, agreeing, disagreeing } = agreement(chapters);
  if (disagreeing.length > 0) {
    throw new Error(`the second evaluation disagrees with ${disagreeing.join("; ")}`);
  }
  return { steps, evaluated, agreeing };
}

/** The count in a sentence, with what was not evaluated told apart. */
export const countWords = ({ steps, evaluated, agreeing }: ReturnType<typeof agreed>): string =>
  `${steps} steps: ${evaluated} formulas, ${evaluated} evaluated twice, ${agreeing} agree; ${
    steps - evaluated
  } numbers that stand as they are (constants, table values, results of a search or a solver)`;
