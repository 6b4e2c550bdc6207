import type { Formula } from "@hoopstay/core";
import temml from "temml";
import { text } from "../html/escape.ts";
import { expressionToTex } from "./expression.ts";
import { isName, symbolToTex } from "./symbol.ts";

const typeset = new Map<string, string>();

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

function mathmlOf(tex: string): string {
  let found = typeset.get(tex);
  if (found === undefined) {
    found = lean(temml.renderToString(tex, { annotate: false, throwOnError: true }));
    typeset.set(tex, found);
  }
  return found;
}

const texOfExpression = new Map<string, string>();

function texOf(expression: string): string {
  let found = texOfExpression.get(expression);
  if (found === undefined) {
    found = expressionToTex(expression);
    texOfExpression.set(expression, found);
  }
  return found;
}

const symbolTex = (symbol: string): string | undefined => {
  if (isName(symbol)) return symbolToTex(symbol);
  return /^[\w/]+$/.test(symbol) ? texOf(symbol) : undefined;
};

/** A symbol as MathML; as plain text where it is no name the formulas would use. */
export function symbolMarkup(symbol: string): string {
  const tex = symbolTex(symbol);
  return tex === undefined ? text(symbol) : mathmlOf(tex);
}

/** The formula as an equation, in MathML; cached by what is printed. */
export function equationMarkup({ symbol, expression }: Formula): string {
  const tex = symbolTex(symbol);
  if (tex === undefined) return `${text(symbol)} = ${mathmlOf(texOf(expression))}`;
  return mathmlOf(`${tex}=${texOf(expression)}`);
}
