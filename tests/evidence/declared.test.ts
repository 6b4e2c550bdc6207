import { declaredFormulas } from "@hoopstay/core";
import { chapterRows } from "@hoopstay/evidence";
import { evaluate, holdChapters, holdReview, makeReview, stormLadder } from "@hoopstay/house";
import { expect, test } from "vitest";
import { sloping } from "../hold-down/example-house.ts";
import { fixtureTexts } from "../published/fixture-texts.ts";

test("working a house declares no formula: the list is what the packages declare, and stays so", () => {
  const before = declaredFormulas().length;
  const evaluation = evaluate(sloping.house, sloping.site);
  const hold = holdReview(evaluation, { search: true });
  const files = { house: "", site: "" };
  const meta = { version: "0.0.0", digest: "0", date: null, files, inputs: [] };
  makeReview(evaluation, meta, {
    full: true,
    holding: {
      hold,
      ladder: stormLadder(evaluation, hold, null),
      chapters: holdChapters(evaluation),
    },
  });
  for (const id of ["wind", "section", "member", "connection", "ground"] as const) {
    chapterRows(fixtureTexts, id);
  }
  expect(before).toBeGreaterThan(490);
  expect(declaredFormulas().length).toBe(before);
});
