import { type Complaint, Refusal } from "@hoopstay/core";
import { reachedFailure } from "./movement-limit.ts";
import type { AnchorsInUse, PullTest } from "./pull-test.ts";
import { reductionsOf } from "./reduction-factors.ts";

/** A test that counts: its reductions, and whether it reached the anchor's strength. */
export interface CountedTest {
  readonly test: PullTest;
  readonly cyclic: number;
  readonly wetter: number;
  readonly failed: boolean;
}

export type WhyLeftOut = "frozen ground" | "another kind of anchor" | "another place";

export interface LeftOutTest {
  readonly test: PullTest;
  readonly why: WhyLeftOut;
}

/**
 * Sorts tests into those that speak for the anchors in use and those that do not.
 *
 * @throws Refusal `not-positive` for a pull not above zero, `out-of-range` for a movement or a number
 *   of repeats that cannot be
 */
export function sortTests(
  tests: readonly PullTest[],
  use: AnchorsInUse,
): { readonly counted: readonly CountedTest[]; readonly leftOut: readonly LeftOutTest[] } {
  const complaints = tests.flatMap(complaintsOf);
  if (complaints.length > 0) throw new Refusal(complaints);
  const counted: CountedTest[] = [];
  const leftOut: LeftOutTest[] = [];
  for (const test of tests) {
    const why = whyLeftOut(test, use);
    if (why) {
      leftOut.push({ test, why });
      continue;
    }
    const [cyclic, wetter] = reductionsOf(test, use);
    counted.push({ test, cyclic, wetter, failed: reachedFailure(test) });
  }
  return { counted, leftOut };
}

function whyLeftOut(test: PullTest, use: AnchorsInUse): WhyLeftOut | undefined {
  if (test.ground === "frozen") return "frozen ground";
  if (test.anchorKind !== use.anchorKind) return "another kind of anchor";
  return test.place === use.place ? undefined : "another place";
}

function complaintsOf({ pull, movement, repeats }: PullTest): Complaint[] {
  const found: Complaint[] = [];
  if (!(pull > 0 && Number.isFinite(pull))) {
    found.push({
      code: "not-positive",
      given: String(pull),
      expected: "a pull above zero",
      mend: "Give the largest pull the scale showed; leave out a pull that was not made.",
    });
  }
  for (const [way, moved] of Object.entries(movement ?? {})) {
    if (moved >= 0 && Number.isFinite(moved)) continue;
    found.push({
      code: "out-of-range",
      given: String(moved),
      expected: `a movement ${way} of zero or more`,
      mend: "Give how far the head moved from where it stood before the pull.",
    });
  }
  if (!(Number.isInteger(repeats) && repeats >= 0)) {
    found.push({
      code: "out-of-range",
      given: String(repeats),
      expected: "a whole number of repeat pulls, 0 or more",
      mend: "Count the pulls after the first one during which the movement did not grow.",
    });
  }
  return found;
}
