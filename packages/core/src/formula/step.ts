import type { Formula } from "./formula.ts";

/** One line of working: a formula, the numbers put into it (SI) and what came out. */
export interface Step {
  readonly formula: Formula;
  readonly inputs: readonly number[];
  readonly value: number;
  /** Symbol as printed here, where it differs from the formula's own (one of several zones, say). */
  readonly symbol: string;
  readonly note?: string;
}

/**
 * Collects the steps of one chapter of working, in the order in which they are computed. It may put in
 * results of the chapters that it rests on, told by their ids, and of no other.
 */
export class Chapter {
  readonly steps: Step[] = [];

  constructor(
    readonly id: string,
    readonly title: string,
    readonly restsOn: readonly string[] = [],
  ) {}

  /** Evaluates a formula, keeps the step and returns the value. */
  work<Values extends readonly number[]>(
    formula: Formula<Values>,
    inputs: Values,
    as?: { readonly symbol?: string; readonly note?: string },
  ): number {
    const value = formula.evaluate(...inputs);
    const step = {
      formula: formula as unknown as Formula,
      inputs,
      value,
      symbol: as?.symbol ?? formula.symbol,
    };
    this.steps.push(as?.note === undefined ? step : { ...step, note: as.note });
    return value;
  }
}
