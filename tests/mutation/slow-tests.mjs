/** Tests that look at the clock: under mutants they would tell of the machine. */
const timed = {
  "tests/section/catalogue.test.ts": ["a slip of the pen"],
  "tests/core/quantity-laws.test.ts": ["in a moment"],
  "tests/frame/rail-speed.test.ts": [""],
  "tests/frame/plan-speed.test.ts": [""],
};

/** Tests that take seconds even with few examples of their laws: tried on what all others let live. */
const slowTests = {
  "tests/stability/independent.test.ts": [""],
  "tests/stability/limit-laws.test.ts": ["with tethers aslant and the slope unknown"],
  "tests/stability/all-at-once-laws.test.ts": [
    "the same on a slope of unknown direction",
    "at most that of any of the sixteen directions",
  ],
  "tests/frame/plan-flexibility.test.ts": [""],
};

export const looksAtClock = (file, name) => among(timed, file, name);
export const slow = (file, name) => among(slowTests, file, name);

function among(tests, file, name) {
  return (tests[file] ?? []).some((part) => name.includes(part));
}
