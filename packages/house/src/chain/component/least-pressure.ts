import { measured, type Words } from "@hoopstay/core";
import { leastComponentPressure } from "@hoopstay/load";
import type { CombinationId } from "@hoopstay/stability";
import { designCombinations } from "../combination.ts";

/**
 * The least pressure of the standard on a component is a required check beside the others, no part
 * of a wind ratio: a finding where a part does not carry it.
 *
 * @param perPressure demand for a net pressure of one, N or N m per Pa
 */
export function leastPressureFinding(
  part: string,
  perPressure: number,
  resistance: { readonly ASD: number; readonly LRFD: number },
  method: CombinationId,
): Words[] {
  const least = leastComponentPressure.value;
  const wind = designCombinations(method)[0]?.wind ?? 1;
  const ratio = (wind * least * perPressure) / resistance[method];
  if (ratio <= 1) return [];
  return [
    [
      `${part}: does not carry the least pressure of the standard, `,
      measured(least, "pressure"),
      ` net either way (ratio ${ratio.toFixed(2)}), whatever the wind.`,
    ],
  ];
}
