import { governingCases } from "@hoopstay/core";
import { expect, it } from "vitest";

const found = (codeSpeed: number, speedOf: string) => ({
  codeSpeed: { ASD: codeSpeed, LRFD: 50 },
  from: {
    ratio: { ASD: { id: "tip 3", state: "shut" }, LRFD: { id: "tip 4", state: "shut" } },
    codeSpeed: { ASD: { id: speedOf, state: "shut" }, LRFD: { id: "tip 5", state: "shut" } },
  },
});

it.each([
  ["one case for both is told once", found(40, "tip 3"), "tip 3"],
  ["another case for the speed is told beside it", found(40, "tip 1"), "tip 3, speed tip 1"],
  [
    "no wind limits: there is no case of a speed",
    found(Number.POSITIVE_INFINITY, "tip 1"),
    "tip 3",
  ],
])("%s", (_, check, words) => {
  expect(governingCases(check, "ASD")).toBe(words);
});

it("each combination has its own", () => {
  expect(governingCases(found(40, "tip 3"), "LRFD")).toBe("tip 4, speed tip 5");
});
