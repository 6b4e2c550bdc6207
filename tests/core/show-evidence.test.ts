import {
  type EvidenceTotals,
  formulasWords,
  gradesWords,
  showCount,
  showOurs,
  totalsWords,
} from "@hoopstay/core";
import { expect, test } from "vitest";

const totals: EvidenceTotals = {
  values: 12_345,
  agree: 12_340,
  known: 5,
  differ: 0,
  grades: { read: 1300, derived: 11_045 },
  formulas: { declared: 1200, reached: 180 },
};

test.each([
  [0, "0"],
  [999, "999"],
  [1000, "1,000"],
  [1_234_567, "1,234,567"],
])("a count of %s is told %s", (count, words) => {
  expect(showCount(count)).toBe(words);
});

test("a computed number is told to six figures, words as they are", () => {
  expect(showOurs({ ours: 1 / 3 })).toBe("0.333333");
  expect(showOurs({ ours: "the same" })).toBe("the same");
});

test("totals tell printed values and those worked otherwise apart, and shout a difference", () => {
  expect(totalsWords(totals)).toBe(
    "1,300 printed values and 11,045 worked by other means compared: 12,340 agree, 5 disagree as is known and explained, none differs otherwise",
  );
  expect(totalsWords({ ...totals, differ: 2 })).toMatch(/, 2 DIFFER$/);
  expect(totalsWords({ ...totals, grades: { read: 12_345 } })).toMatch(
    /^12,345 printed values and 0 /,
  );
});

test("grades and formulas are told with their counts", () => {
  expect(gradesWords(totals)).toBe(
    "1,300 read in the source; 11,045 by hand or by other code, printed nowhere",
  );
  expect(formulasWords(totals)).toBe(
    "1,200 formulas and constants: 180 move at least one of these values, 1,020 move none",
  );
});
