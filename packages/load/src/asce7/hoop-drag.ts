import { formula, judged } from "@hoopstay/core";
import type { Shell } from "../shell/shell.ts";
import { bareTubeDrag } from "./constants.ts";
import type { LoadsOfCases, WindDirection } from "./hoop-row.ts";

/**
 * Wind on one hoop with the film off, per unit of K_d q_h and of developed length of tube, legs
 * included: level, the way the wind blows, m. Along the ridge it bends the hoop out of its plane.
 */
export interface HoopDragRow {
  readonly caseIndex: number;
  readonly direction: WindDirection;
  readonly drag: number;
}

export const bareTubeLoad = formula({
  id: "bare-tube-load",
  symbol: "w",
  name: "wind on a bare tube per length, level",
  measure: "force-per-length",
  arguments: [
    ["q", "K_d q_h", "pressure"],
    ["C_f", "force coefficient of a bare tube", "ratio"],
    ["d", "size of the tube across the wind", "length"],
  ],
  expression: "q * C_f * d",
  citation: judged(
    "the whole tube as if it stood square to the wind, whatever its slope, no shielding; safe side",
  ),
  evaluate: (q, coefficient, diameter) => q * coefficient * diameter,
});

/** Rows of load case 1 with the film off; none otherwise. */
export function hoopDragRows({ hoopDiameter }: Shell, { surfaces }: LoadsOfCases): HoopDragRow[] {
  if (surfaces.covering !== "bare") return [];
  const drag = bareTubeLoad.evaluate(1, bareTubeDrag.value, hoopDiameter);
  const [across, along] = [surfaces.across.flat(), surfaces.along.flat()];
  return [...across, ...along].map(({ sense }, caseIndex): HoopDragRow => {
    const axis = caseIndex < across.length ? "x" : "y";
    return { caseIndex, direction: `${sense > 0 ? "+" : "-"}${axis}`, drag: sense * drag };
  });
}
