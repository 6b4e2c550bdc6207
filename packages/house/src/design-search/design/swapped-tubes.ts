import type { Tube } from "@hoopstay/section";
import type { House } from "../../model/house-model.ts";
import { steelTube } from "../../model/steel-tube.ts";
import type { TubeChoice } from "../range/design-range.ts";

const ofRail = new Set(["rails", "noses, front", "noses, back"]);

/**
 * A house with other tubes of the same outside sizes: no place, no length and no surface changes with
 * them, so that the model needs not be read again.
 */
export function swappedTubes(house: House, hoop: TubeChoice, rail: TubeChoice): House {
  const tubeOf = (what: string): Tube | null =>
    what === "hoops" ? hoop.tube : ofRail.has(what) ? rail.tube : null;
  return {
    ...house,
    hoopTube: hoop.tube,
    rail: { ...house.rail, tube: rail.tube },
    parts: house.parts.map((part) => {
      const tube = part.kind === "bar" ? tubeOf(part.what) : null;
      return tube && part.kind === "bar" ? { ...part, tube } : part;
    }),
    links: {
      ...house.links,
      hoop: steelTube(hoop.input, hoop.tube),
      rail: steelTube(rail.input, rail.tube),
    },
  };
}

const sidesOf = (tube: Tube): string =>
  tube.kind === "round"
    ? `round ${tube.outside}`
    : tube.kind === "rectangular"
      ? `${tube.depth} x ${tube.width}`
      : tube.kind;

/** Designs with the same key differ in nothing that the wind can tell: in walls and anchors only. */
export const shellKey = (hoop: TubeChoice, count: number, rail: TubeChoice): string =>
  `${count} ${sidesOf(hoop.tube)} ${sidesOf(rail.tube)}`;
