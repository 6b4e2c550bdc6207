import { type Measured, measured } from "@hoopstay/core";
import { strengthOverAllowable } from "@hoopstay/ground";
import { designCombinations } from "./combination.ts";
import type { ChainContext } from "./context.ts";
import type { LinkRow } from "./link.ts";

/** Resistance of a part by its maker's allowable value. */
export const ratedResistance = (allowable: number): { ASD: number; LRFD: number } => ({
  ASD: allowable,
  LRFD: strengthOverAllowable.value * allowable,
});

/** Stands in where no rating is known and only the demand is asked for. */
export const unrated = { ASD: 1, LRFD: 1 };

/** The greatest demand of some rows at the design wind, factored; null without rows. */
export function designDemand(
  { evaluation }: ChainContext,
  rows: readonly LinkRow[],
): Measured | null {
  const [first] = rows;
  if (!first) return null;
  const { pressure, site } = evaluation;
  const asked = rows.flatMap((row) =>
    designCombinations(site.combination).map((one) => row.asked(pressure, one).demand),
  );
  return measured(Math.max(...asked), first.measure);
}

/** K_d q_h of the design wind with its factor, Pa, by the method the site asks for. */
export const designWind = ({ evaluation: { pressure, site } }: ChainContext): number =>
  pressure * Math.max(...designCombinations(site.combination).map(({ wind }) => wind));
