import type { Formula } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import * as section from "@hoopstay/section";
import { describe, expect, test } from "vitest";

const isFormula = (value: unknown): value is Formula =>
  typeof value === "object" && value !== null && "expression" in value && "evaluate" in value;

const formulas = Object.values(section as Record<string, unknown>).filter(isFormula);

/** Plain arguments in falling order, so that a wall is below half a side. */
const samples = [
  [0.102, 0.083, 0.0061, 0.0092, 0.031],
  [2.375, 1.9, 0.154, 0.3, 0.7],
] as const;

describe("printed expressions of section formulas", () => {
  test("more than twenty are declared", () => {
    expect(formulas.length).toBeGreaterThan(20);
  });

  test.each(formulas.map((formula) => [formula.id, formula] as const))(
    "%s: the printed expression gives what the program computes",
    (_, formula) => {
      for (const sample of samples) {
        const inputs = sample.slice(0, formula.arguments.length);
        expect(inputs).toHaveLength(formula.arguments.length);
        const value = formula.evaluate(...inputs);
        const step = { formula, inputs, value, symbol: formula.symbol };
        const { second, agrees } = evaluateAgain(step);
        expect(Number.isFinite(value), String(value)).toBe(true);
        expect(agrees, `${formula.expression}: ${second} against ${value}`).toBe(true);
      }
    },
  );
});
