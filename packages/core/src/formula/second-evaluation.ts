import {
  absDependencies,
  addDependencies,
  atanDependencies,
  cosDependencies,
  create,
  divideDependencies,
  expDependencies,
  type FactoryFunctionMap,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  powDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
} from "mathjs/number";
import type { Chapter, Step } from "./step.ts";

/** A step's printed expression, evaluated again by the expression library. */
export interface SecondValue {
  readonly second: number;
  readonly agrees: boolean;
}

export interface Agreement {
  readonly steps: number;
  /** Steps with a formula to evaluate: a number that stands as it is is none. */
  readonly evaluated: number;
  readonly agreeing: number;
  readonly disagreeing: readonly string[];
}

/** Largest relative difference between the two evaluations that still counts as agreement. */
const tolerance = 1e-9;

const library = create({
  absDependencies,
  addDependencies,
  atanDependencies,
  cosDependencies,
  divideDependencies,
  expDependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  parseDependencies,
  powDependencies,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  unaryMinusDependencies,
} as FactoryFunctionMap);

/** The printed expression as the expression library reads it; the report typesets the same tree. */
export function parseExpression(expression: string) {
  if (!library.parse) throw new Error("the expression library has no parser");
  return library.parse(expression);
}

const compiled = new Map<string, { evaluate(scope: object): unknown }>();

/**
 * Evaluates a step's printed expression from its printed inputs with the expression library, and
 * compares it with the value of the typed function.
 *
 * @returns the second value and whether it agrees to 1e-9 relative
 */
export function evaluateAgain(step: Step): SecondValue {
  const { expression } = step.formula;
  let code = compiled.get(expression);
  if (!code) {
    code = parseExpression(expression).compile();
    compiled.set(expression, code);
  }
  const scope = Object.fromEntries(
    step.formula.arguments.map((argument, place) => [argument.symbol, step.inputs[place]]),
  );
  const second = Number(code.evaluate(scope));
  const difference = Math.abs(second - step.value);
  const near = Number.isFinite(second) && difference <= tolerance * Math.abs(second);
  return { second, agrees: second === step.value || near };
}

/**
 * Counts how many steps of a working have a formula, and how many of those agree with their second
 * evaluation.
 */
export function agreement(chapters: readonly Chapter[]): Agreement {
  const steps = chapters.flatMap((chapter) =>
    chapter.steps.map((step) => ({ chapter, step, ...evaluateAgain(step) })),
  );
  const evaluated = steps.filter(({ step }) => step.formula.arguments.length > 0);
  return {
    steps: steps.length,
    evaluated: evaluated.length,
    agreeing: evaluated.filter((step) => step.agrees).length,
    disagreeing: steps
      .filter((step) => !step.agrees)
      .map(({ chapter, step }) => `${chapter.id}: ${step.formula.id} (${step.symbol})`),
  };
}
