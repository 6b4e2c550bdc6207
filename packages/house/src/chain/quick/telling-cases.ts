import type { Evaluation } from "../../review/evaluate.ts";
import { type ChainCase, chainCases } from "../chain-case.ts";
import type { LinkRow } from "../link.ts";
import { quickLimit } from "./quick-limit.ts";

/**
 * Cases of wind from one side, where it crosses the house, and of wind on its bare tubes along it:
 * the others mirror these, or differ from hoop to hoop.
 */
export const quickCases = (evaluation: Evaluation): ChainCase[] =>
  chainCases(evaluation, []).filter(({ direction }) => direction === "+x" || direction === "+y");

/** Of the cases of some rows those in which a part of a link gives way first, by place. */
export function tellingCases(
  rows: readonly LinkRow[],
  cases: readonly ChainCase[],
  most: number,
): number[] {
  const first = new Map<string, { limit: number; row: LinkRow }>();
  for (const row of rows) {
    const key = `${row.link} ${row.part}`;
    const known = first.get(key);
    const limit = quickLimit([row], known?.limit ?? most);
    if (!known || limit < known.limit) first.set(key, { limit, row });
  }
  const places = [...first.values()].map(({ row }) =>
    cases.findIndex(
      ({ form, sets }) =>
        form === row.windCase.form &&
        [...row.windCase.sets].every(([set, index]) => sets.get(set) === index),
    ),
  );
  return [...new Set(places)].filter((place) => place >= 0).sort((a, b) => a - b);
}
