import { INCH } from "./definition.ts";
import { type Dimension, type Quantity, wording } from "./dimension.ts";
import { type Numeral, readNumeral } from "./numeral.ts";
import { type Problem, type QuantityRefusal, refuseQuantity } from "./refusal.ts";
import { dimensionsOf, findUnit, nearestSpelling } from "./spelling.ts";
import { plainText, quotable } from "./typography.ts";

export type QuantityRead = ({ readonly ok: true } & Quantity) | QuantityRefusal;

/** An SI value, or a reason and perhaps how to mend it. */
type Outcome = number | { problem: Problem; mend?: string };

const AFTER_FEET = /^(?:ft\.?|feet|foot|')(?: ?- |-| ?)(?=[\d.])/i;

/** Feet and inches as one length; undefined if the text is not of that form. */
function feetAndInches(feet: Numeral): Outcome | undefined {
  const mark = AFTER_FEET.exec(feet.rest)?.[0];
  if (mark === undefined) return undefined;
  const inch = readNumeral(feet.rest.slice(mark.length));
  if (!inch.ok || findUnit(inch.rest, "length")?.factor !== INCH) return undefined;
  if (!Number.isInteger(feet.value) || inch.value >= 12) return { problem: "feet and inches" };
  return (feet.value * 12 + inch.value) * INCH;
}

/** A slope as rise:run; undefined if the text is not of that form. */
function riseOverRun(rise: Numeral, dimension: Dimension): Outcome | undefined {
  if (!rise.rest.startsWith(":")) return undefined;
  const run = readNumeral(rise.rest.slice(1).trim());
  if (!run.ok || run.rest !== "" || run.value === 0) return { problem: "garbled" };
  if (rise.loneComma || run.loneComma) return { problem: "comma" };
  if (dimension !== "angle")
    return { problem: "foreign", mend: "Two numbers with a colon are a slope" };
  return Math.atan(rise.value / run.value);
}

/** Why the text after a number is no unit of this dimension. */
function explain(number: Numeral, dimension: Dimension): Outcome {
  const unit = number.rest;
  if (/^[\d/:+^.,]|^- ?[\d.]/.test(unit)) return { problem: "garbled" };
  const foreign = (spelling: string): Outcome | undefined => {
    const nouns = dimensionsOf(spelling).map((other) => wording[other].noun);
    if (nouns.length === 0) return undefined;
    const mend = `"${quotable(spelling)}" measures ${nouns.join(", or ")}. Use a unit listed`;
    return { problem: "foreign", mend };
  };
  const whole = foreign(unit);
  if (whole !== undefined) return whole;
  const words = unit.split(" ", 4);
  const starts = [words.slice(0, 3), words.slice(0, 2), words.slice(0, 1)].map((some) =>
    some.join(" ").replace(/[,;]$/, ""),
  );
  const mark = /^['"°%]/.exec(unit) ?? [];
  for (const start of [...starts, ...mark].filter((start) => start.length < 24)) {
    if (findUnit(start, dimension)) {
      const extra = quotable(unit.slice(start.length).trim());
      return { problem: "trailing", mend: `Leave out "${extra}" after ${number.typed} ${start}` };
    }
    if (start.length > 1 && dimensionsOf(start).length > 0) return foreign(start) as Outcome;
  }
  const near = nearestSpelling(unit, dimension);
  if (near === undefined) return { problem: "unknown" };
  const mend = `"${quotable(unit)}" is not a unit read here. Did you mean ${number.typed} ${near}`;
  return { problem: "unknown", mend: `${mend}? If not, use a unit listed` };
}

/** The SI value of an unsigned plain text. */
function measure(text: string, dimension: Dimension): Outcome {
  const number = readNumeral(text);
  if (!number.ok) return number;
  if (number.rest === "") return bare(number, dimension);
  const form = dimension === "length" ? feetAndInches(number) : undefined;
  const compound = form ?? riseOverRun(number, dimension);
  if (compound !== undefined) return compound;
  const unit = findUnit(number.rest, dimension);
  if (!unit) return explain(number, dimension);
  if (number.loneComma && unit.system === "si") return { problem: "comma" };
  const value = number.value * unit.factor;
  if (value === 0 && number.value !== 0) return { problem: "out of reach" };
  return unit.slope ? Math.atan(value) : value;
}

/** A number with no unit is a fraction, if it is one at most: 30 may mean 30 %. */
function bare(number: Numeral, dimension: Dimension): Outcome {
  if (dimension !== "fraction") return { problem: "bare" };
  if (number.value <= 1) return number.value;
  const mend = `Write ${number.typed} % or, as a plain number, ${number.value / 100}`;
  return { problem: "bare", mend };
}

/**
 * Reads a text with a unit into SI. Never guesses and never clamps: what is not clear is refused.
 * @param given what stood in the file; a number without unit passes only as a fraction up to 1
 * @param dimension the kind of quantity the field asks for. A pound or a kilogram is a weight in
 * a force, a moment, a force per length or a pressure, and a mass in mass-per-area and density
 * @returns the value in SI and the text as typed; or a code, what was given, what is expected and
 * how to mend it. Any finite value is in range, negative ones too. Never throws
 * @example readQuantity("6 ft 4 in", "length") // { ok: true, value: 1.9304, text: "6 ft 4 in" }
 */
export function readQuantity(given: unknown, dimension: Dimension): QuantityRead {
  const refuse = (problem: Problem, mend?: string) =>
    refuseQuantity(given, dimension, problem, mend);
  if (given === null || given === undefined) return refuse("empty");
  if (typeof given !== "string" && typeof given !== "number") return refuse("garbled");
  const typed = String(given);
  const text = plainText(typed);
  if (text === "") return refuse("empty");
  const signs = /^[+\- ]*/.exec(text)?.[0] ?? "";
  if (signs.replaceAll(" ", "").length > 1) return refuse("two signs");
  const outcome = measure(text.slice(signs.length), dimension);
  if (typeof outcome !== "number") return refuse(outcome.problem, outcome.mend);
  if (!Number.isFinite(outcome)) return refuse("out of reach");
  const value = signs.includes("-") && outcome !== 0 ? -outcome : outcome;
  return { ok: true, value, text: typed };
}
