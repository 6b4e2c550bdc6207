import { type Citation, FOOT, formula } from "@hoopstay/core";

/** Figures of component coefficients are flat up to this effective area, 10 ft2, m2. */
export const flatArea = 10 * FOOT ** 2;

/**
 * A component coefficient as its figure draws it: `first` up to 10 ft2, `last` from `decades` times
 * as much on, straight between them over the logarithm of the area.
 *
 * @param text `first` and the change to `last`, as printed: "-1.1 + 0.3"
 * @param times area where the figure is flat again, in units of 10 ft2
 */
export const fallingCoefficient = (
  id: string,
  name: string,
  text: string,
  { first, last, times }: { first: number; last: number; times: number },
  citation: Citation,
) =>
  formula({
    id,
    symbol: "GC_p",
    name,
    measure: "ratio",
    arguments: [["A", "effective wind area", "area"]],
    expression: `${text} * min(1, max(0, log(A / 0.9290304) / log(${times})))`,
    citation,
    range: `flat up to 10 ft2 and from ${10 * times} ft2 on, as drawn`,
    evaluate: (area) => {
      const share = Math.log(area / flatArea) / Math.log(times);
      return first + (last - first) * Math.min(1, Math.max(0, share));
    },
  });
