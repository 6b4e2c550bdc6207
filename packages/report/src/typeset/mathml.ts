import type { Formula } from "@hoopstay/core";
import { text } from "../html/escape.ts";
import { math, type Row, sign } from "./element.ts";
import { expressionRow, expressionRows } from "./expression.ts";
import { isName, symbolRow } from "./symbol.ts";

/** A name, or names with a fraction bar between them; nothing for other text. */
function namesRow(symbol: string): Row | undefined {
  if (isName(symbol)) return symbolRow(symbol);
  return /^[\w/]+$/.test(symbol) ? expressionRow(symbol) : undefined;
}

/**
 * A symbol as MathML; words after it ("F_z case 3") and what is no name at all stay plain text.
 */
export function symbolMarkup(symbol: string): string {
  const [first = "", ...others] = symbol.split(" ");
  const row = namesRow(first);
  return row ? [math(row), ...others.map(text)].join(" ") : text(symbol);
}

/** The formula as an equation, in MathML; a long sum in several, for a line to break between. */
export function equationMarkup({ symbol, expression }: Formula): string {
  const left = namesRow(symbol);
  const [first = [], ...others] = expressionRows(expression);
  const start = left ? math([...left, ...sign("="), ...first]) : `${text(symbol)} = ${math(first)}`;
  return [start, ...others.map(math)].join(" ");
}
