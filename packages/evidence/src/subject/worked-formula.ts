import type { Formula } from "@hoopstay/core";
import type { Compute, Given } from "../published/given.ts";
import { declared } from "../reach/declared.ts";

/** The formula of a case by its id, and by its source where several have it. */
function formulaOf(given: Given): Formula {
  const id = given.text("formula");
  const found = declared.filter(
    (one) => one.id === id && (!given.has("by") || one.citation.source === given.text("by")),
  );
  const [formula] = found;
  if (formula === undefined || found.length > 1) throw new Error(`${found.length} formulas ${id}`);
  return formula;
}

const named = ["formula", "by"];

/**
 * A declared formula with the arguments that a case gives by their symbols. Such cases hold the
 * source's equation worked by hand, or one of its constants.
 */
export const workedFormula: Compute = (given) => {
  const formula = formulaOf(given);
  const symbols = formula.arguments.map(({ symbol }) => symbol);
  const extra = Object.keys(given.all()).filter(
    (key) => !named.includes(key) && !symbols.includes(key),
  );
  if (extra.length > 0) throw new Error(`${formula.id} has no ${extra.join(", ")}`);
  return formula.evaluate(...symbols.map((symbol) => given.number(symbol)));
};
