import type { Formula } from "@hoopstay/core";
import temml from "temml";
import { text } from "../html/escape.ts";
import { expressionToTex } from "./expression.ts";
import { isName, symbolToTex } from "./symbol.ts";

/** MathML without what the operator dictionary says anyway. */
function lean(mathml: string): string {
  return mathml
    .replace(/<mpadded lspace="0">(<mi>[^<]*<\/mi>)<\/mpadded>/g, "$1")
    .replace(/ (?:fence|separator|stretchy)="true"| form="(?:prefix|postfix)"/g, "")
    .replaceAll("<mspace></mspace>", "")
    .replaceAll('<mspace width="0.1667em"></mspace>', '<mspace width=".17em"></mspace>')
    .replaceAll("<mo>\u2061</mo>", "")
    .replace(/<mrow>(<m[ino]>[^<]*<\/m[ino]>)<\/mrow>/g, "$1");
}

/** A function of text that remembers; the same few formulas are printed again and again. */
function remembered<Result>(make: (from: string) => Result): (from: string) => Result {
  const known = new Map<string, Result>();
  return (from) => {
    if (!known.has(from)) known.set(from, make(from));
    return known.get(from) as Result;
  };
}

const mathmlOf = remembered((tex) =>
  lean(temml.renderToString(tex, { annotate: false, throwOnError: true })),
);
const texOf = remembered(expressionToTex);

const symbolTex = remembered((symbol) => {
  if (isName(symbol)) return symbolToTex(symbol);
  return /^[\w/]+$/.test(symbol) ? texOf(symbol) : undefined;
});

/**
 * A symbol as MathML; words after it ("F_z case 3") and what is no name at all stay plain text.
 */
export function symbolMarkup(symbol: string): string {
  const [name = "", ...others] = symbol.split(" ");
  const tex = symbolTex(name);
  if (tex === undefined) return text(symbol);
  return [mathmlOf(tex), ...others.map(text)].join(" ");
}

/** The formula as an equation, in MathML; cached by what is printed. */
export function equationMarkup({ symbol, expression }: Formula): string {
  const tex = symbolTex(symbol);
  if (tex === undefined) return `${text(symbol)} = ${mathmlOf(texOf(expression))}`;
  return mathmlOf(`${tex}=${texOf(expression)}`);
}
