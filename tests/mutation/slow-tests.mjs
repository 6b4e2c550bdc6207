/**
 * Tests that look at the clock, or take seconds each even with few examples of their laws. Thousands
 * of mutants cannot wait for them, so they are left out: what only they would find counts as alive.
 */
const slowTests = {
  "tests/section/catalogue.test.ts": ["a slip of the pen"],
  "tests/core/quantity-laws.test.ts": ["in a moment"],
  "tests/stability/independent.test.ts": [""],
  "tests/stability/limit-laws.test.ts": ["with tethers aslant and the slope unknown"],
  "tests/stability/all-at-once-laws.test.ts": [
    "the same on a slope of unknown direction",
    "at most that of any of the sixteen directions",
  ],
  "tests/frame/rail-speed.test.ts": [""],
  "tests/frame/plan-speed.test.ts": [""],
  "tests/frame/plan-flexibility.test.ts": [""],
};

export function slow(file, name) {
  return (slowTests[file] ?? []).some((part) => name.includes(part));
}
