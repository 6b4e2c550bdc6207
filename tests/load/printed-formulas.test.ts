import * as load from "@hoopstay/load";
import { describe, expect, test } from "vitest";
import { expectPrinted, formulasOf } from "../core/printed-formulas.ts";

const formulas = formulasOf(load);

describe("every formula prints what it computes", () => {
  test("some are declared", () => {
    expect(formulas.length).toBeGreaterThan(5);
  });

  test.each(formulas)("%s", (_, formula) => {
    expectPrinted(formula);
  });
});
