import { type Constant, derived, formula } from "@hoopstay/core";
import { bareFlatDrag, bareTubeDrag } from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import type { BarPart } from "./part.ts";

/** The largest size of a section across the wind, m, however it is turned. */
export function faceOf(tube: Tube): number {
  switch (tube.kind) {
    case "round":
      return tube.outside;
    case "rectangular":
      return Math.max(tube.depth, tube.width);
    case "flat":
      return Math.max(tube.width, tube.thickness);
    case "angle":
      return Math.max(...tube.legs);
    case "bar":
      return tube.diameter;
  }
}

/** C_f of a section once the film is off: a round one, or one with flat faces. */
export const bareDragOf = ({ kind }: Tube): Constant =>
  kind === "round" || kind === "bar" ? bareTubeDrag : bareFlatDrag;

/** What bars of one kind show the wind once the film is off. */
export const bareArea = formula({
  id: "bare-area",
  symbol: "A",
  name: "face of tubes or bars of one kind: number, length, largest size across the wind",
  measure: "area",
  arguments: [
    ["n", "number of them", "ratio"],
    ["l", "length of each", "length"],
    ["d", "largest size of the section", "length"],
  ],
  expression: "n * l * d",
  citation: derived("every length as if square to the wind, none behind another; safe side"),
  evaluate: (count, length, size) => count * length * size,
});

/** C_f times what bars of one kind show the wind, m2. */
export const bareDragAreaOf = ({ count, length, tube }: BarPart): number =>
  bareDragOf(tube).value * bareArea.evaluate(count, length, faceOf(tube));
