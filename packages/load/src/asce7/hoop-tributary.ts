import { derived, formula } from "@hoopstay/core";
import type { Shell } from "../shell/shell.ts";

/** The stretch of the shell, along y, that one hoop carries, m. */
export interface HoopTributary {
  readonly from: number;
  readonly to: number;
}

/** Half way to the neighbours; the end hoops carry to the ends of the shell. */
export const hoopTributaries = ({ L }: Shell, places: readonly number[]): HoopTributary[] =>
  places.map((y, hoop) => {
    const [before, after] = [places[hoop - 1], places[hoop + 1]];
    return {
      from: before === undefined ? -L / 2 : (before + y) / 2,
      to: after === undefined ? L / 2 : (y + after) / 2,
    };
  });

/** Load on a hoop's centre line, at right angles to it: the shell is wider than the centre lines. */
export const hoopLineLoad = formula({
  id: "hoop-line-load",
  symbol: "w",
  name: "wind on a hoop per length of its centre line, toward it",
  measure: "force-per-length",
  arguments: [
    ["p", "net pressure toward the surface", "pressure"],
    ["s", "length of house that the hoop carries", "length"],
    ["b", "span, centre to centre", "length"],
    ["d", "hoop tube diameter", "length"],
  ],
  expression: "p * s * (b + d) / b",
  citation: derived("the vertical force on the shell's span, spread over the centre line's"),
  evaluate: (p, length, span, diameter) => (p * length * (span + diameter)) / span,
});
