import { parseExpression } from "@hoopstay/core/second-evaluation";
import { symbolToTex } from "./symbol.ts";

/** The parts of the expression library's tree that typesetting looks at. */
interface Tree {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: string;
  readonly op?: string;
  readonly fn?: { readonly name?: string };
  readonly args?: readonly Tree[];
  readonly content?: Tree;
  toTex(options?: object): string;
}

const upright = new Set(["max", "min", "exp", "sin", "cos", "tan"]);

/** Typesets a printed expression, from the very tree that the second evaluation reads. */
export function expressionToTex(expression: string): string {
  return (parseExpression(expression) as unknown as Tree).toTex({ handler });
}

const tex = (tree: Tree | undefined): string => tree?.toTex({ handler }) ?? "";
const inner = (tree: Tree | undefined): string =>
  tree?.type === "ParenthesisNode" ? inner(tree.content) : tex(tree);

function handler(tree: Tree): string | undefined {
  switch (tree.type) {
    case "ConstantNode":
      return constantToTex(Number(tree.value));
    case "SymbolNode":
      return symbolToTex(tree.name ?? "");
    case "ParenthesisNode":
      return `\\left(${inner(tree)}\\right)`;
    case "FunctionNode":
      return callToTex(tree.fn?.name ?? "", tree.args ?? []);
    case "OperatorNode":
      return operationToTex(tree.op ?? "", tree.args ?? []);
    default:
      return undefined;
  }
}

function constantToTex(value: number): string {
  if (value === Math.PI) return "\\pi ";
  const [mantissa = "", power] = String(value).split("e");
  return power === undefined ? mantissa : `${mantissa}\\cdot 10^{${Number(power)}}`;
}

function callToTex(name: string, args: readonly Tree[]): string {
  if (name === "sqrt") return `\\sqrt{${inner(args[0])}}`;
  if (name === "log") return `\\ln\\left(${args.map(inner).join("{,}\\;")}\\right)`;
  if (name === "abs") return `\\left|${inner(args[0])}\\right|`;
  const head = upright.has(name) ? `\\${name}` : `\\operatorname{${name}}`;
  return `${head}\\left(${args.map(inner).join("{,}\\;")}\\right)`;
}

function operationToTex(operator: string, args: readonly Tree[]): string | undefined {
  const [one, other] = args;
  if (operator === "/") return `\\frac{${inner(one)}}{${inner(other)}}`;
  if (operator === "^") return `{${tex(one)}}^{${inner(other)}}`;
  if (operator === "*") {
    const sign = startsWithFigure(other) ? "\\cdot " : "\\,";
    return `${tex(one)}${sign}${tex(other)}`;
  }
  if (other === undefined) return `${operator}${tex(one)}`;
  if (operator === "+" || operator === "-") return `${tex(one)}${operator}${tex(other)}`;
  return undefined;
}

/** Two numbers side by side need a visible sign between them. */
function startsWithFigure(tree: Tree | undefined): boolean {
  if (tree?.type === "ConstantNode") return true;
  return tree?.op === "^" && startsWithFigure(tree.args?.[0]);
}
