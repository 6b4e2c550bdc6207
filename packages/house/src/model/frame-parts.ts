import { arcHeightAt, arcLineCentroid, arcPointAt, type Shell, shellOf } from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import type { PathComplaint } from "../read/complaints.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { TubeInput } from "../schema/tube.ts";
import type { Assumptions } from "./assumption.ts";
import type { Rail } from "./house-model.ts";
import { at, type BarPart, type Part, type Place } from "./part.ts";
import type { HouseShape } from "./shape.ts";
import { tubeModel } from "./tube-model.ts";

export interface FrameSizes {
  readonly shape: HouseShape;
  readonly rail: Rail;
  readonly hoopTube: Tube;
  readonly shell: Shell;
}

/** All steel of the house, with the middle of each group. */
export function frameParts(
  input: HouseInput,
  sizes: FrameSizes,
  assumed: Assumptions,
  complaints: PathComplaint[],
): Part[] {
  const { shape, rail, hoopTube } = sizes;
  const { lines, leg, shoulder } = shape;
  const parts: Part[] = [];
  const bar = (
    what: string,
    tube: Tube | undefined,
    count: number,
    length: number,
    place: Place,
    frame = true,
  ): void => {
    if (tube && count > 0 && length > 0) {
      parts.push({ kind: "bar", what, tube, count, length, frame, ...place });
    }
  };
  const read = (key: string, tube: TubeInput): Tube | undefined =>
    tubeModel(tube, [key, "tube"], complaints);
  // The hoop tubes' own centre lines: the shell without its half-tube of growth.
  const { arc } = shellOf({ ...lines, hoopDiameter: 0 });
  const legMiddle = lines.springing - leg / 2;
  const hoopLength = arc.length + 2 * leg;
  const hoopMiddle =
    (arc.length * (lines.springing + arcLineCentroid(arc)) + 2 * leg * legMiddle) / hoopLength;
  bar("hoops", hoopTube, lines.hoopCount, hoopLength, at(0, 0, hoopMiddle));
  const stub = read("stubs", input.stubs.tube);
  const stubLength = input.stubs.length.value;
  bar("stubs", stub, 2 * lines.hoopCount, stubLength, at(0, 0, rail.depth + stubLength / 2), false);
  bar("rails", rail.tube, 2, rail.length, at(0, 0, rail.depth / 2));
  bar("noses, front", rail.tube, 2, rail.noseFront, noseAt(rail, 1));
  bar("noses, back", rail.tube, 2, rail.noseBack, noseAt(rail, -1));
  const splices = input.rails.splices;
  if (splices) {
    const plate: Tube = {
      kind: "flat",
      width: splices.width.value,
      thickness: splices.thickness.value,
    };
    bar(
      "splice plates",
      plate,
      splices.count,
      splices.length.value,
      at(0, 0, rail.depth / 2),
      false,
    );
  }
  const low = at(0, 0, rail.depth / 2);
  const { cross_members: cross, corner_braces: corners, drawbar } = input;
  if (cross) bar("cross members", read("cross_members", cross.tube), cross.count, lines.span, low);
  if (corners) {
    const tube = read("corner_braces", corners.tube);
    bar("corner braces", tube, corners.count, corners.length.value, low);
  }
  if (drawbar) {
    const end = drawbar.end === "front" ? rail.front : -rail.back;
    bar("drawbar", read("drawbar", drawbar.tube), 1, drawbar.length.value, at(0, end, low.z));
  }
  if (input.ridge) {
    const crown = at(0, 0, lines.springing + lines.rise);
    bar("ridge", read("ridge", input.ridge.tube), 1, lines.length, crown);
  }
  const { purlins } = input;
  if (purlins) {
    let height = 0;
    for (let line = 1; line <= purlins.count; line += 1) {
      const share = 1 - Math.abs((2 * line) / (purlins.count + 1) - 1);
      height += (lines.springing + arcPointAt(arc, share).z) / purlins.count;
    }
    bar("purlins", read("purlins", purlins.tube), purlins.count, lines.length, at(0, 0, height));
  }
  const ties = input.collar_ties;
  if (ties) {
    const height = ties.height.value;
    const chord = chordAt(lines.span, arc, height - lines.springing);
    if (chord === undefined) {
      complaints.push({
        path: ["collar_ties", "height"],
        code: "out-of-range",
        given: ties.height.text,
        expected: "a height between the springing and the crown",
        mend: "Measure from the ground under the skids.",
      });
    } else {
      bar("collar ties", read("collar_ties", ties.tube), ties.count, chord, at(0, 0, height));
    }
  }
  for (const [key, what] of [
    ["truss_bars", "truss bars"],
    ["knee_braces", "knee braces"],
    ["end_braces", "end-bay braces"],
  ] as const) {
    const bars = input[key];
    if (!bars) continue;
    bar(what, read(key, bars.tube), bars.count, bars.length.value, at(0, 0, bars.height.value));
  }
  for (const side of ["left", "right"] as const) {
    const pipe = input.roll_up_sides?.[side];
    if (!pipe?.pipe) continue;
    const tube = tubeModel(pipe.pipe, ["roll_up_sides", side, "pipe"], complaints);
    const x = ((side === "right" ? 1 : -1) * lines.span) / 2;
    bar(`roll-up pipe, ${side}`, tube, 1, pipe.length.value, at(x, 0, rail.depth + shoulder));
  }
  parts.push({ kind: "share", what: "bolts, clamps, weld metal", low: 0, high: 0.03 });
  assumed.list.push({
    key: "bolts, clamps, weld metal",
    used: "0 to 3 % of the steel",
    why: "common practice, no source; nothing in the low weight is the safe side",
  });
  return parts;
}

const noseAt = (rail: Rail, end: 1 | -1): Place => {
  const nose = end === 1 ? rail.noseFront : rail.noseBack;
  const y = end === 1 ? rail.front + nose / 2 : -(rail.back + nose / 2);
  return at(0, y, rail.depth / 2 + nose / 4);
};

/** Width of the arc at a height above its springing, or undefined outside it. */
function chordAt(
  span: number,
  arc: ReturnType<typeof shellOf>["arc"],
  height: number,
): number | undefined {
  if (!(height >= 0 && height < arc.rise)) return undefined;
  let [inner, outer] = [0, span / 2];
  for (let round = 0; round < 60; round += 1) {
    const middle = (inner + outer) / 2;
    if (arcHeightAt(arc, middle) > height) inner = middle;
    else outer = middle;
  }
  return inner + outer;
}

export const frameBars = (parts: readonly Part[]): BarPart[] =>
  parts.filter((part): part is BarPart => part.kind === "bar" && part.frame);
