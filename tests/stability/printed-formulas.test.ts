import * as stability from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { expectPrinted, formulasOf } from "../core/printed-formulas.ts";

const formulas = formulasOf(stability);

describe("every formula prints what it computes", () => {
  test("some are declared", () => {
    expect(formulas.length).toBeGreaterThan(5);
  });

  test.each(formulas)("%s", (_, formula) => {
    expectPrinted(formula);
  });
});
