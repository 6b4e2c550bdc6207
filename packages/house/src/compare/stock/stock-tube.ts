import type { Tube } from "@hoopstay/section";
import { type SteelTube, steelTubeAt } from "../../model/steel-tube.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { TubeInput } from "../../schema/tube.ts";

/** A tube as it is bought: section, finish and steel. */
export interface StockTube extends SteelTube {
  /** Equal for tubes that may be cut from the same stick. */
  readonly id: string;
  readonly name: string;
}

const rounded = (value: unknown): unknown =>
  typeof value === "number" ? Math.round(value * 1e6) / 1e6 : value;

const idOf = ({ tube, steel }: SteelTube): string =>
  JSON.stringify([tube, steel], (_, value) => rounded(value));

/** Whether two tubes are the same by section and finish, whatever is known of their steel. */
export const sameSection = (one: Tube, other: Tube): boolean =>
  JSON.stringify(one, (_, value) => rounded(value)) ===
  JSON.stringify(other, (_, value) => rounded(value));

/** A tube in words, as its owner typed it. */
export function tubeName(input: TubeInput): string {
  const { size, outside, depth, width, wall, gauge, grade, galvanized } = input;
  const sides = [outside, depth, width].flatMap((side) => (side ? [side.text] : []));
  const thick = wall?.text ?? (gauge === undefined ? "" : `${gauge} ga`);
  const what = size ?? [...sides, thick].join(" x ");
  return [what, ...(grade ? [grade] : []), ...(galvanized ? ["galvanized"] : [])].join(", ");
}

/** The tube of a house file that has been read without complaint. */
export function stockTube(input: TubeInput): StockTube {
  const steel = steelTubeAt(input);
  if (!steel) throw new Error("a tube that was not read");
  return { ...steel, id: idOf(steel), name: tubeName(input) };
}

/** The tube that each part of the take-off is made of, by the part's name. */
export function tubesOfParts(input: HouseInput): Map<string, TubeInput> {
  const { hoops, stubs, rails, roll_up_sides: sides } = input;
  const given: readonly (readonly [string, TubeInput | undefined])[] = [
    ["hoops", hoops.tube],
    ["stubs", stubs.tube],
    ["rails", rails.tube],
    ["noses, front", rails.tube],
    ["noses, back", rails.tube],
    ["cross members", input.cross_members?.tube],
    ["corner braces", input.corner_braces?.tube],
    ["drawbar", input.drawbar?.tube],
    ["ridge", input.ridge?.tube],
    ["purlins", input.purlins?.tube],
    ["collar ties", input.collar_ties?.tube],
    ["truss bars", input.truss_bars?.tube],
    ["knee braces", input.knee_braces?.tube],
    ["end-bay braces", input.end_braces?.tube],
    ["roll-up pipe, left", sides?.left?.pipe],
    ["roll-up pipe, right", sides?.right?.pipe],
  ];
  return new Map(given.flatMap(([what, tube]) => (tube ? [[what, tube] as const] : [])));
}
