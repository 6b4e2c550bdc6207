/**
 * Tests that look at the clock, or take seconds each even with few examples of their laws. Thousands
 * of mutants cannot wait for them, so they are left out: what only they would find counts as alive.
 */
const slowTests = {
  "tests/section/catalogue.test.ts": ["a slip of the pen"],
  "tests/core/quantity-laws.test.ts": ["in a moment"],
  "tests/frame/rail-speed.test.ts": [""],
  "tests/frame/hoop-speed.test.ts": [""],
  "tests/frame/plan-speed.test.ts": [""],
  "tests/frame/plan-flexibility.test.ts": [""],
};

export function slow(file, name) {
  return (slowTests[file] ?? []).some((part) => name.includes(part));
}
