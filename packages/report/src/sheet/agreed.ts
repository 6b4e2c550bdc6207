import type { Chapter } from "@hoopstay/core";
import { type Agreement, agreement } from "@hoopstay/core/second-evaluation";

/**
 * How many steps of a working were evaluated twice and agree: all of them.
 *
 * @throws Error naming the steps whose second evaluation disagrees; nothing is printed of them
 */
export function agreed(chapters: readonly Chapter[]): Pick<Agreement, "steps" | "agreeing"> {
  const { steps, agreeing, disagreeing } = agreement(chapters);
  if (disagreeing.length > 0) {
    throw new Error(`the second evaluation disagrees with ${disagreeing.join("; ")}`);
  }
  return { steps, agreeing };
}
