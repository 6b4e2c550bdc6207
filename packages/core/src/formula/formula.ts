import type { Citation } from "../source/citation.ts";

/** What a printed value measures; decides the unit it is shown in. */
export type Measure =
  | "length"
  | "area"
  | "speed"
  | "force"
  | "moment"
  | "pressure"
  | "unit-weight"
  | "force-per-length"
  | "volume"
  | "mass-per-area"
  | "density"
  | "angle"
  | "ratio"
  | "first-moment"
  | "section-modulus"
  | "second-moment";

/** One argument of a formula, in the order in which `evaluate` takes them. */
export interface Argument {
  readonly symbol: string;
  readonly name: string;
  readonly measure: Measure;
}

/**
 * A formula, declared once. `expression` is what the reader sees and what the second evaluator
 * reads; `evaluate` is what the program computes with. A review compares the two on every use.
 */
export interface Formula<Values extends readonly number[] = readonly number[]> {
  readonly id: string;
  readonly symbol: string;
  readonly name: string;
  readonly measure: Measure;
  readonly arguments: readonly Argument[];
  readonly expression: string;
  readonly citation: Citation;
  /** Range of validity in words; outside it the caller refuses, never clamps. */
  readonly range?: string;
  /** Where a number that no expression gives comes from: a search, a solver, a table. */
  readonly origin?: string;
  readonly evaluate: (...values: Values) => number;
}

const declared: Formula[] = [];

/** The formulas and constants declared so far: all of a package's once it is loaded. */
export const declaredFormulas = (): readonly Formula[] => declared;

type Numbers<Names extends readonly unknown[]> = { readonly [Place in keyof Names]: number };

type Names = readonly (readonly [string, string, Measure])[];

type Declaration<Given extends Names> = Omit<Formula, "arguments" | "evaluate"> & {
  readonly arguments: Given;
  readonly evaluate: (...values: Numbers<Given>) => number;
};

/**
 * Declares a formula. Arguments are written `[symbol, name, measure]`; symbols are the variables of
 * `expression`, in the syntax of the second evaluator (`^`, `sqrt`, `exp`, `max`, `min`).
 *
 * @example
 * const area = formula({ id: "area", symbol: "A", name: "area", measure: "area",
 *   arguments: [["b", "width", "length"], ["h", "height", "length"]],
 *   expression: "b * h", citation: derived("rectangle"), evaluate: (b, h) => b * h });
 */
export function formula<const Given extends Names>(
  declaration: Declaration<Given>,
): Formula<Numbers<Given>> {
  const made = madeFormula(declaration);
  declared.push(made as unknown as Formula);
  return made;
}

/** A formula made while working, one of many alike; declared nowhere. */
export const madeFormula = <const Given extends Names>(
  declaration: Declaration<Given>,
): Formula<Numbers<Given>> => ({
  ...declaration,
  arguments: declaration.arguments.map(([symbol, name, measure]) => ({ symbol, name, measure })),
});

const counterparts: readonly (readonly [Measure, Measure])[] = [
  ["force", "moment"],
  ["area", "first-moment"],
];

/** A formula that holds for forces as for moments about a line, in the measures of one of them. */
export function inMeasure<Values extends readonly number[]>(
  formula: Formula<Values>,
  kind: "force" | "moment",
): Formula<Values> {
  const measureOf = (one: Measure): Measure => {
    const [force, moment] = counterparts.find((pair) => pair.includes(one)) ?? [one, one];
    return kind === "force" ? force : moment;
  };
  return {
    ...formula,
    measure: measureOf(formula.measure),
    arguments: formula.arguments.map((one) => ({ ...one, measure: measureOf(one.measure) })),
  };
}

/** A formula without arguments: a number that stands as it is. */
export type Constant = Formula<readonly []> & { readonly value: number };

/**
 * More figures than any source prints. A value that was found by a solver may differ in its last
 * bits from one machine to the next; what is printed of it must not.
 */
const printedFigures = 10;

/** A number as an expression prints it. */
export const asPrinted = (value: number): string =>
  String(Number(value.toPrecision(printedFigures)));

type ConstantParts = readonly [
  id: string,
  symbol: string,
  name: string,
  value: number,
  measure: Measure,
  citation: Citation,
];

/**
 * Declares a constant of a standard or of judgement, with the place it comes from.
 *
 * @example constant("gust-factor", "G", "gust-effect factor", 0.85, "ratio", citation)
 */
export function constant(...parts: ConstantParts): Constant {
  const made = standing(...parts);
  declared.push(made);
  return made;
}

/**
 * A number of this house taken into the working as it stands, with its origin in words ("found by
 * search"); declared nowhere, and no formula: nothing of it is evaluated twice.
 */
export const taken = (origin: string, ...parts: ConstantParts): Constant => ({
  ...standing(...parts),
  origin,
});

function standing(...[id, symbol, name, value, measure, citation]: ConstantParts): Constant {
  return {
    id,
    symbol,
    name,
    measure,
    arguments: [],
    expression: asPrinted(value),
    citation,
    evaluate: () => value,
    value,
  };
}

/** The sum of named terms, as a formula whose expression lists them. Terms may carry a minus. */
export function sumOf(
  id: string,
  symbol: string,
  name: string,
  measure: Measure,
  terms: readonly Argument[],
  citation: Citation,
): Formula {
  return {
    id,
    symbol,
    name,
    measure,
    arguments: terms,
    expression: terms.length === 0 ? "0" : terms.map((term) => term.symbol).join(" + "),
    citation,
    evaluate: (...values) => values.reduce((total, value) => total + value, 0),
  };
}
