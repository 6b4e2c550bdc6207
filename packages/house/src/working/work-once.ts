import type { Chapter, Formula } from "@hoopstay/core";

/** Works a formula; where the chapter has it already with the same numbers, that step stands. */
export function workOnce<Values extends readonly number[]>(
  chapter: Chapter,
  formula: Formula<Values>,
  inputs: Values,
  as: { readonly symbol?: string; readonly note?: string } = {},
): number {
  const symbol = as.symbol ?? formula.symbol;
  const found = chapter.steps.find(
    (step) =>
      step.formula.id === formula.id &&
      step.symbol === symbol &&
      step.inputs.length === inputs.length &&
      step.inputs.every((input, at) => input === inputs[at]),
  );
  return found?.value ?? chapter.work(formula, inputs, as);
}
