import * as strength from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { expectPrinted, formulasOf } from "../core/printed-formulas.ts";

const formulas = formulasOf(strength);

describe("every formula prints what it computes", () => {
  test("some are declared", () => {
    expect(formulas.length).toBeGreaterThan(5);
  });

  test.each(formulas)("%s", (_, formula) => {
    expectPrinted(formula);
  });
});
