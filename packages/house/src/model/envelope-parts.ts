import { KILOGRAM_FORCE } from "@hoopstay/core";
import type { Shell } from "@hoopstay/load";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Assumptions } from "./assumption.ts";
import type { Rail } from "./house-model.ts";
import {
  commonFilm,
  filmDensity,
  framingHigh,
  sheetTolerance,
  woodDensities,
} from "./materials.ts";
import { at, type Part, type Place } from "./part.ts";
import type { HouseShape } from "./shape.ts";

export interface EnvelopeSizes {
  readonly shape: HouseShape;
  readonly rail: Rail;
  readonly shell: Shell;
}

type BoardInput = NonNullable<HouseInput["base_boards"]>;

/** Film, boards: by length and by area. */
export function envelopeParts(
  input: HouseInput,
  { shape, rail, shell }: EnvelopeSizes,
  assumed: Assumptions,
): Part[] {
  const parts: Part[] = [];
  const { span, length } = shape.lines;
  const board = (
    key: string,
    what: string,
    given: BoardInput,
    count: number,
    each: number,
    place: Place,
  ) => {
    const kind = assumed.take(
      given.wood,
      "spruce-pine-fir",
      `${key}.wood`,
      "spruce-pine-fir, 12 to 30 % moisture",
      "the lightest of the common groups; safe side for the low weight",
    );
    const { low, high } = woodDensities(kind);
    const section = given.thickness.value * given.width.value;
    const unit = { low: low * section, high: high * section };
    parts.push({ kind: "unit", what, count, amount: each, unit: "length", ...unit, ...place });
  };
  const { base_boards: base, hip_boards: hip, end_rails: ends } = input;
  if (base) {
    const z = rail.depth + base.width.value / 2;
    board("base_boards", "base boards", base, 2, length, at(0, 0, z));
  }
  if (hip) board("hip_boards", "hip boards", hip, 2, length, at(0, 0, hip.height.value));
  if (ends) {
    board("end_rails", "end rails", ends, 2, span, at(0, 0, rail.depth + ends.width.value / 2));
  }
  const area = shell.hoopLine * length;
  const film = filmWeight(input, assumed);
  parts.push({
    kind: "unit",
    belongs: "film",
    what: "film",
    count: 1,
    amount: area,
    unit: "area",
    low: sheetTolerance.low * film,
    high: sheetTolerance.high * film,
    ...at(0, 0, shell.hoopLineCentroid),
  });
  return parts;
}

/** Weight of film by area, N/m2. */
function filmWeight(input: HouseInput, assumed: Assumptions): number {
  if (input.film?.mass) return input.film.mass.value * KILOGRAM_FORCE;
  const layers = assumed.take(
    input.film?.layers,
    1,
    "film.layers",
    "1 layer",
    "safe side: lightest",
  );
  const thickness = assumed.take(
    input.film?.thickness?.value,
    commonFilm,
    "film.thickness",
    "6 mil",
    "common practice, no source",
  );
  return layers * thickness * filmDensity;
}

/** Cladding, framing and doors of both end walls. */
export function endWallParts(
  input: HouseInput,
  { shape, shell }: EnvelopeSizes,
  assumed: Assumptions,
): Part[] {
  const parts: Part[] = [];
  for (const end of ["front", "back"] as const) {
    const wall = input.end_walls?.[end];
    const y = ((end === "front" ? 1 : -1) * shape.lines.length) / 2;
    const place = at(0, y, shell.endCentroid);
    const cladding = assumed.take(
      wall?.cladding?.mass.value,
      (commonFilm * filmDensity) / KILOGRAM_FORCE,
      `end_walls.${end}.cladding`,
      "one layer of 6 mil film",
      "safe side: lightest",
    );
    const unit = cladding * KILOGRAM_FORCE;
    parts.push({
      kind: "unit",
      belongs: end,
      what: `end cladding, ${end}`,
      count: 1,
      amount: shell.endArea,
      unit: "area",
      low: sheetTolerance.low * unit,
      high: sheetTolerance.high * unit,
      ...place,
    });
    if (wall?.framing) {
      const { value } = wall.framing.weight;
      parts.push({
        kind: "lump",
        belongs: end,
        what: `end framing, ${end}`,
        low: value,
        high: framingHigh * value,
        ...place,
      });
    }
    for (const door of wall?.doors ?? []) {
      if (!door.weight) continue;
      const { value } = door.weight;
      const what = `${door.name ?? "door"}, ${end}`;
      parts.push({
        kind: "lump",
        belongs: end,
        what,
        low: value,
        high: framingHigh * value,
        ...at(0, y, door.height.value / 2),
      });
    }
  }
  return parts;
}
