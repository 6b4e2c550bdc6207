import { type Formula, sources } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import { expect } from "vitest";

const isFormula = (value: object): value is Formula =>
  "expression" in value && "evaluate" in value && "arguments" in value;

/** Every formula that a package exports, or holds in what it exports. */
export function formulasOf(module: object): readonly (readonly [string, Formula])[] {
  const found = new Map<Formula, string>();
  const look = (value: unknown, deep: number): void => {
    if (typeof value !== "object" || value === null || deep > 3) return;
    if (isFormula(value)) found.set(value, value.id);
    else for (const part of Object.values(value)) look(part, deep + 1);
  };
  look(Object.values(module), 0);
  return [...found].map(([formula, id]) => [id, formula]);
}

/** Numbers of different sizes and orders, so that each side of a `max` or `min` is met. */
const scales = [
  [0.83, 0.31, 0.62, 0.17, 0.44, 0.29, 0.71, 0.53, 0.12, 0.92],
  [9.3, 4.1, 2.7, 1.9, 0.8, 0.47, 0.31, 0.23, 0.19, 0.11],
  [0.13, 0.22, 0.37, 0.58, 0.95, 1.7, 2.9, 4.3, 6.1, 8.9],
  [31, 0.27, 53, 0.81, 17, 0.39, 71, 0.11, 43, 0.67],
  [0.041, 23, 0.077, 61, 0.019, 47, 0.053, 83, 0.029, 37],
  [2e5, 3e5, 0.021, 0.034, 4e4, 0.0093, 7e3, 0.012, 0.4, 5],
];

/** Names its source and its arguments, and prints an expression that gives what the program computes. */
export function expectPrinted(formula: Formula): void {
  const symbols = formula.arguments.map(({ symbol }) => symbol);
  expect(new Set(symbols).size, formula.id).toBe(symbols.length);
  for (const { symbol, name, measure } of formula.arguments) {
    expect(symbol, formula.id).toMatch(/\w/);
    expect(name, formula.id).toMatch(/\w/);
    expect(measure, formula.id).toMatch(/^[a-z]{4}[a-z-]*$/);
  }
  expect(sources[formula.citation?.source], `${formula.id} names its source`).toBeDefined();
  let compared = 0;
  for (const scale of scales) {
    const inputs = scale.slice(0, symbols.length);
    const value = evaluated(formula, inputs);
    if (value === undefined || !Number.isFinite(value)) continue;
    if (lostInRounding(formula, inputs, value)) continue;
    const { second, agrees } = evaluateAgain({ formula, inputs, value, symbol: formula.symbol });
    expect(agrees, `${formula.id}: ${formula.expression}: ${second} against ${value}`).toBe(true);
    compared += 1;
  }
  expect(compared, `${formula.id} at none of the samples`).toBeGreaterThan(0);
}

/** Undefined where the numbers are refused. */
function evaluated(formula: Formula, inputs: readonly number[]): number | undefined {
  try {
    return formula.evaluate(...inputs);
  } catch {
    return undefined;
  }
}

/** Whether the last bit of one number already moves the value: no two ways of computing it agree. */
function lostInRounding(formula: Formula, inputs: readonly number[], value: number): boolean {
  return inputs.some((input, place) => {
    const moved = evaluated(formula, inputs.with(place, input * (1 + Number.EPSILON)));
    return Math.abs((moved ?? value) - value) > 1e-12 * Math.abs(value);
  });
}
