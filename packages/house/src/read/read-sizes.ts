import { measured, showMeasured } from "@hoopstay/core";
import { shellOf } from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import { Assumptions } from "../model/assumption.ts";
import { shapeOf } from "../model/shape.ts";
import { tubeModel } from "../model/tube-model.ts";
import type { HouseInput } from "../schema/house-schema.ts";

/** Far more hoops than a house that can be moved has. */
export const mostHoops = 1000;

/** What the entries of a file are held against, m. */
export interface ReadSizes {
  readonly hoopCount: number;
  /** Tube of one hoop, straightened. */
  readonly hoopLength: number;
  /** Of the hoop tube's centre line, above the ground. */
  readonly crown: number;
  readonly railTop: number;
  readonly railWidth: number;
  readonly hoopTube: Tube;
}

/** Undefined where hoops or rails are complained of elsewhere. */
export function readSizes(input: HouseInput): ReadSizes | undefined {
  const hoopTube = tubeModel(input.hoops.tube, [], []);
  const rail = tubeModel(input.rails.tube, [], []);
  if (!hoopTube || !rail) return undefined;
  const railTop = acrossOf(rail, "depth");
  const shape = shapeOf(input, new Assumptions(), [], railTop, hoopTube);
  if (!shape || shape.lines.hoopCount > mostHoops) return undefined;
  const { lines, leg } = shape;
  const { arc } = shellOf({ ...lines, hoopDiameter: 0 });
  return {
    hoopCount: lines.hoopCount,
    hoopLength: arc.length + 2 * leg,
    crown: lines.springing + lines.rise,
    railTop,
    railWidth: acrossOf(rail, "width"),
    hoopTube,
  };
}

const acrossOf = (tube: Tube, way: "depth" | "width"): number =>
  tube.kind === "round" ? tube.outside : tube.kind === "rectangular" ? tube[way] : 0;

/** A length in both systems, for what a complaint expects. */
export function shownLength(value: number): string {
  const length = measured(value, "length");
  return `${showMeasured(length, "us")} (${showMeasured(length, "si")})`;
}

/** What a tube is called in its file. */
export const tubeText = ({ size, outside, depth, width }: HouseInput["hoops"]["tube"]): string =>
  size ?? outside?.text ?? `${depth?.text} by ${width?.text}`;
