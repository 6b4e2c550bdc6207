import {
  type ChainContext,
  chainContext,
  chainRows,
  type Evaluation,
  evaluate,
  type House,
  type LinkRow,
} from "@hoopstay/house";
import { sloping } from "../hold-down/example-house.ts";

export const { house, site } = sloping;
/** The example house on the hill, all states. */
export const evaluation: Evaluation = evaluate(house, site);
export const context: ChainContext = chainContext(evaluation);
export const rows: readonly LinkRow[] = chainRows(context).rows;

/** Another house on the same hill. */
export const chainOn = (other: House, where = site) => {
  const evaluated = evaluate(other, where);
  const made = chainContext(evaluated);
  return { evaluation: evaluated, context: made, rows: chainRows(made).rows };
};

/** A share of a list, evenly through it. */
export const everyOf = <Item>(list: readonly Item[], count: number): Item[] => {
  const step = Math.max(1, Math.floor(list.length / count));
  return list.filter((_, at) => at % step === 0);
};
