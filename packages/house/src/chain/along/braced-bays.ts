import type { House } from "../../model/house-model.ts";
import type { Bars } from "../../model/link-parts.ts";

/** Diagonals that hold the end bays along the house. */
export interface Braced {
  readonly bars: Bars;
  /** How many act at one end at a time. */
  readonly acting: number;
  readonly pullOnly: boolean;
}

/**
 * Braces are taken as half at each end. Tubes push and pull; flat bars, rods and angles only pull,
 * so that of each end's braces only half act at a time.
 *
 * @returns null without braces; words where those entered do not hold
 */
export function bracedBays({ links, spacing }: House): Braced | string | null {
  const bars = links.endBraces;
  if (!bars) return null;
  if (bars.length <= spacing) {
    return "The end braces are no longer than a bay: they do not reach from hoop to hoop.";
  }
  const pullOnly = bars.tube.kind !== "round" && bars.tube.kind !== "rectangular";
  const acting = Math.floor(bars.count / (pullOnly ? 4 : 2));
  if (acting > 0) return { bars, acting, pullOnly };
  return pullOnly
    ? "End braces that only pull are needed crossed, two at each end: those entered are not counted."
    : "One end brace leaves the other end without: it is not counted.";
}
