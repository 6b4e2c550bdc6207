import type { CombinationId } from "@hoopstay/stability";
import type { Worksheet } from "@hoopstay/strength";
import { type LinkRow, plainRow, type RowAbout, ratioRow } from "./link.ts";
import {
  factoredPressure,
  forceOverStrength,
  lineForceOverStrength,
  momentOverStrength,
} from "./superposed.ts";

type About = Omit<RowAbout, "work">;
type Strengths = { readonly ASD: number; readonly LRFD: number };

/** Computes without keeping a step. */
export const silent: Worksheet = { work: (formula, inputs) => formula.evaluate(...inputs) };

const overStrength = {
  force: forceOverStrength,
  moment: momentOverStrength,
  "force-per-length": lineForceOverStrength,
} as const;

/**
 * A row whose demand goes straight with the wind: computed and printed by one function.
 *
 * @param demand on a sheet, for a factored K_d q_h, Pa; zero or more
 * @param strength works the resistance on a sheet
 */
export function windRow(
  about: About & { readonly measure: keyof typeof overStrength },
  demand: (sheet: Worksheet, q: number) => number,
  resistance: Strengths,
  strength: (sheet: Worksheet) => void = () => {},
): LinkRow {
  const perPressure = demand(silent, 1);
  return plainRow(
    {
      ...about,
      work: (sheet, q, { wind, method, words }) => {
        strength(sheet);
        const needs = demand(sheet, sheet.work(factoredPressure, [wind, q], { note: words }));
        sheet.work(overStrength[about.measure], [needs, resistance[method]]);
      },
    },
    (q, { wind }) => wind * q * perPressure,
    resistance,
  );
}

/** A row of interacting actions under wind alone; the last step of `ratio` is the ratio. */
export const windRatioRow = (
  about: Omit<About, "measure">,
  ratio: (sheet: Worksheet, q: number, method: CombinationId) => number,
  strength: (sheet: Worksheet) => void = () => {},
): LinkRow =>
  ratioRow(
    {
      ...about,
      work: (sheet, q, { wind, method, words }) => {
        strength(sheet);
        ratio(sheet, sheet.work(factoredPressure, [wind, q], { note: words }), method);
      },
    },
    (q, { wind, method }) => ratio(silent, wind * q, method),
  );
