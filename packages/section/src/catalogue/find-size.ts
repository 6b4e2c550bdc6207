import { plainSpellings } from "./catalogue.ts";
import { longestName, plainName } from "./plain-name.ts";
import type { CatalogueSize } from "./size.ts";

/**
 * The catalogue size of a designation. Case, spaces, `x` or `×`, and trailing zeros do not matter.
 * A European designation without CF or HF is taken as cold formed, which has the smaller area.
 *
 * @param name designation, such as `HSS4X3X3/16`, `Pipe 1-1/2 STD`, `NPS 1-1/2 sch 40`,
 *   `CFCHS48.3x3.0`, `Fence 1-5/8 x 16ga BWG`, `L2X2X1/8`
 * @returns the size, or undefined where none has that name; see `nearestSizes`
 * @example findSize("hss 4 x 3 x 3/16")?.name // "HSS4X3X3/16"
 */
export function findSize(name: string): CatalogueSize | undefined {
  if (name.length > longestName) return undefined;
  return plainSpellings().get(plainName(name));
}
