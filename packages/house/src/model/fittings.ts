import type { Obstacle } from "@hoopstay/load";
import type { PathComplaint } from "../read/complaints.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Filling } from "./house-model.ts";
import { at, type Part } from "./part.ts";

type PlaceInput = NonNullable<HouseInput["fittings"]>[number]["at"];

const placeOf = (place: PlaceInput) =>
  at(place.across?.value ?? 0, place.along?.value ?? 0, place.up?.value ?? 0);

/** Bins and tanks (empty resists, full pulls) and whatever else is attached. */
export function fittingParts(input: HouseInput): Part[] {
  const bins = (input.bins ?? []).map(
    (bin): Part => ({
      kind: "lump",
      what: bin.what,
      low: bin.empty.value,
      high: bin.full.value,
      ...placeOf(bin.at),
    }),
  );
  const fittings = (input.fittings ?? []).map(
    (fitting): Part => ({
      kind: "lump",
      what: fitting.what,
      low: fitting.weight.value,
      high: fitting.weight_high?.value ?? fitting.weight.value,
      ...placeOf(fitting.at),
    }),
  );
  return [...bins, ...fittings];
}

/** What bins and tanks weigh more when they are full. */
export const fillingsOf = (input: HouseInput): Filling[] =>
  (input.bins ?? []).map(({ what, empty, full, at: place }) => ({
    what,
    weight: full.value - empty.value,
    ...placeOf(place),
  }));

/** Wind faces of bins and tanks. */
export function obstaclesOf(input: HouseInput, complaints: PathComplaint[]): Obstacle[] {
  return (input.bins ?? []).flatMap((bin, index): Obstacle[] => {
    if (bin.full.value < bin.empty.value) {
      complaints.push({
        path: ["bins", index, "full"],
        code: "sizes-disagree",
        given: `full ${bin.full.text}, empty ${bin.empty.text}`,
        expected: "a full weight not below the empty one",
        mend: "Check which is which.",
      });
    }
    const area = (face: typeof bin.side_face): number =>
      face ? face.width.value * face.height.value : 0;
    const outside = bin.outside ?? false;
    if (outside && (!bin.side_face || !bin.end_face)) {
      complaints.push({
        path: ["bins", index],
        code: "key-missing",
        expected: "side_face and end_face, each with width and height",
        mend: "It stands in the wind: give the face seen from the side and from the end.",
      });
    }
    const { x, y, z } = placeOf(bin.at);
    return [{ x, y, z, areaAcross: area(bin.side_face), areaAlong: area(bin.end_face), outside }];
  });
}
