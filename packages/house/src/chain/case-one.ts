import type { LoadSet } from "../review/evaluate.ts";
import type { WindDirection } from "./chain-case.ts";

export const windDirections: readonly WindDirection[] = ["+x", "-x", "+y", "-y"];

/**
 * Index of the first load case 1 of a direction and an inside pressure in a load set's table.
 *
 * @param inside one of the set's inside coefficients
 */
export function caseOneOf(
  { table, surfaces, insideCoefficients }: LoadSet,
  direction: WindDirection,
  inside: number,
): number {
  const block = insideCoefficients.indexOf(inside);
  if (block < 0) throw new Error(`inside pressure ${inside} does not run in this load set`);
  const perInside = table.count / insideCoefficients.length;
  let place = block * perInside;
  const lists = [...surfaces.across, ...surfaces.along];
  for (const [at, of] of windDirections.entries()) {
    if (of === direction) break;
    place += lists[at]?.length ?? 0;
  }
  return place;
}
