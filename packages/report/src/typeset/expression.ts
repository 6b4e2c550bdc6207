import { parseExpression } from "@hoopstay/core/second-evaluation";
import {
  argumentComma,
  figures,
  fraction,
  grouped,
  infix,
  joined,
  name,
  power,
  type Row,
  root,
  sign,
  thinSpace,
} from "./element.ts";
import { symbolRow } from "./symbol.ts";

/** The parts of the expression library's tree that typesetting looks at. */
interface Tree {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly fn?: { readonly name?: string };
  readonly args?: readonly Tree[];
  readonly content?: Tree;
}

const treeOf = (expression: string) => parseExpression(expression) as unknown as Tree;

/** Typesets a printed expression, from the very tree that the second evaluation reads. */
export const expressionRow = (expression: string): Row => rowOf(treeOf(expression));

/** Terms of a sum that fit side by side on a narrow paper. */
const termsInRow = 6;

/** The same in rows: a line breaks between those of a long sum, inside of one it cannot. */
export function expressionRows(expression: string): readonly Row[] {
  const terms = termsOf(treeOf(expression));
  const starts = terms.flatMap((_, place) => (place % termsInRow === 0 ? [place] : []));
  return starts.map((start) =>
    terms
      .slice(start, start + termsInRow)
      .flatMap(({ mark, row }, place) => [
        ...(mark ? (place === 0 ? infix : sign)(mark) : []),
        ...row,
      ]),
  );
}

interface Term {
  readonly mark?: string;
  readonly row: Row;
}

/** The terms of a sum, each but the first with its sign. */
function termsOf(tree: Tree): readonly Term[] {
  const [one, other] = tree.args ?? [];
  const isSum = tree.type === "OperatorNode" && (tree.op === "+" || tree.op === "-");
  if (!isSum || !one || !other) return [{ row: rowOf(tree) }];
  return [...termsOf(one), { mark: plusOrMinus(tree.op), row: rowOf(other) }];
}

function rowOf(tree: Tree): Row {
  const { type, args = [] } = tree;
  if (type === "ConstantNode") return constant(Number(tree.value));
  if (type === "SymbolNode") return symbolRow(tree.name ?? "");
  if (type === "ParenthesisNode") return grouped(sign("("), bare(tree), sign(")"));
  if (type === "FunctionNode") return call(tree.fn?.name ?? "", args.map(bare));
  const [one, other] = args;
  if (type === "OperatorNode" && one) {
    return other ? operation(tree.op, one, other) : grouped(sign(plusOrMinus(tree.op)), rowOf(one));
  }
  throw new Error(`no typesetting of a ${type}`);
}

/** Without the parentheses that a fraction bar, a root or a call makes needless. */
const bare = (tree: Tree): Row =>
  tree.type === "ParenthesisNode" && tree.content ? bare(tree.content) : rowOf(tree);

function constant(value: number): Row {
  if (value === Math.PI) return symbolRow("pi");
  const [mantissa = "", exponent] = String(value).split("e");
  if (exponent === undefined) return figures(mantissa);
  const size = figures(exponent.replace(/[+-]/, ""));
  const raised = exponent.startsWith("-") ? grouped(sign("\u2212"), size) : size;
  return [...figures(mantissa), ...sign("\u22c5"), ...power(figures("10"), raised)];
}

function call(called: string, args: readonly Row[]): Row {
  const inside = joined(args, argumentComma);
  if (called === "sqrt") return root(inside);
  if (called === "abs") return grouped(sign("|"), inside, sign("|"));
  const shown = name(called === "log" ? "ln" : called);
  return [...shown, ...grouped(sign("("), inside, sign(")"))];
}

function operation(operator: string | undefined, one: Tree, other: Tree): Row {
  if (operator === "/") return fraction(bare(one), bare(other));
  if (operator === "^") return power(rowOf(one), bare(other));
  if (operator === "*") return [...rowOf(one), ...between(other), ...rowOf(other)];
  return [...rowOf(one), ...sign(plusOrMinus(operator)), ...rowOf(other)];
}

function plusOrMinus(operator: string | undefined): string {
  if (operator === "+") return "+";
  if (operator === "-") return "\u2212";
  throw new Error(`no typesetting of the operator ${operator}`);
}

/** Two numbers side by side need a visible sign between them, and so does a minus. */
const between = (factor: Tree): Row => (startsBare(factor) ? sign("\u22c5") : thinSpace);

function startsBare({ type, op, args = [] }: Tree): boolean {
  if (type === "ConstantNode") return true;
  if (type !== "OperatorNode") return false;
  return args.length === 1 || (op === "^" && args.slice(0, 1).some(startsBare));
}
