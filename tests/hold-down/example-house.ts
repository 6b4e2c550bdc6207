import { readFileSync } from "node:fs";
import {
  type Evaluation,
  evaluate,
  type House,
  houseSchema,
  readHouseModel,
  readSiteModel,
  type Site,
  siteSchema,
} from "@hoopstay/house";
import fc from "fast-check";
import { parse } from "yaml";

export const seed = 41_211;

export const holds = <Values extends [unknown, ...unknown[]]>(
  law: fc.IProperty<Values>,
  numRuns: number,
): void => {
  fc.assert(law, { seed, numRuns, endOnFailure: true });
};

const fixture = (path: string): unknown =>
  parse(readFileSync(new URL(`../../fixtures/${path}.yaml`, import.meta.url), "utf8"));

function example(houseName: string, siteName: string): { house: House; site: Site } {
  const house = readHouseModel(houseSchema.parse(fixture(`houses/${houseName}`)), []);
  const site = readSiteModel(siteSchema.parse(fixture(`sites/${siteName}`)), []);
  if (!house || !site) throw new Error("the example is refused");
  return { house, site };
}

export const level = example("harrow-brook", "sheltered-paddock");
export const sloping = example("harrow-brook", "hill-top");

/** The example house in another length, with other boxes, ballast and places of its parts. */
export interface Change {
  readonly length: number;
  readonly hoopCount: number;
  readonly overhang: number;
  readonly boxes: readonly { readonly x: number; readonly y: number; readonly area: number }[];
  readonly block: { readonly x: number; readonly y: number; readonly weight: number };
  /** Moves every part sideways and along, m. */
  readonly shift: readonly [number, number];
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const change: fc.Arbitrary<Change> = fc.record({
  length: between(4, 14),
  hoopCount: fc.integer({ min: 2, max: 9 }),
  overhang: between(0, 0.5),
  boxes: fc.array(fc.record({ x: between(-2, 2), y: between(-2, 2), area: between(0.1, 3) }), {
    maxLength: 2,
  }),
  block: fc.record({ x: between(-2, 2), y: between(-2, 2), weight: between(100, 3000) }),
  shift: fc.tuple(between(-0.3, 0.3), between(-0.4, 0.4)),
});

export function changed({ house }: { house: House }, by: Change): House {
  const { length, hoopCount, overhang, boxes, block, shift } = by;
  const reach = length / 2 + overhang;
  const times = length / house.lines.length;
  return {
    ...house,
    lines: { ...house.lines, length, hoopCount },
    spacing: length / (hoopCount - 1),
    rail: { ...house.rail, length: 2 * reach, front: reach, back: reach },
    parts: house.parts.map((part) => {
      if (part.kind === "share") return part;
      const moved = { ...part, x: part.x + shift[0], y: part.y * times + shift[1] };
      return moved.kind === "lump" ? moved : { ...moved, count: moved.count * times };
    }),
    obstacles: boxes.map(({ x, y, area }) => ({
      x,
      y,
      z: 0.8,
      areaAcross: area,
      areaAlong: area,
      outside: true,
    })),
    ballast: [{ what: "block", fixed: true, z: 0.2, ...block }],
    anchors: [],
  };
}

/** The house seen in a mirror that changes left and right, or front and back. */
export function mirrored(house: House, axis: "x" | "y"): House {
  const turn = <Thing extends { readonly x: number; readonly y: number }>(thing: Thing): Thing => ({
    ...thing,
    [axis]: -thing[axis],
  });
  return {
    ...house,
    parts: house.parts.map((part) => (part.kind === "share" ? part : turn(part))),
    obstacles: house.obstacles.map(turn),
    ballast: house.ballast.map(turn),
  };
}

export const evaluated = (by: Change, on = level): Evaluation => evaluate(changed(on, by), on.site);
