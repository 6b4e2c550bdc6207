import { Chapter } from "@hoopstay/core";
import { type GroundAtWork, lateralCapacity, type Shaft, type Stabiliser } from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seed, shafts, stabilisers } from "./anchor-examples.ts";

const slices = 4000;

/** Reaction per length on the pulled side, N/m, of shaft and plate when all strength is used. */
type Reaction = (depth: number) => number;

interface Case {
  readonly shaft: Shaft;
  readonly depth: number;
  readonly plate: Stabiliser | undefined;
  readonly ground: GroundAtWork;
}

/** Strength of the ground on the shaft and of the stabiliser, written from Broms's words. */
function reactionsOf({ shaft, plate, ground }: Case): { onShaft: Reaction; onPlate: Reaction } {
  const { diameter } = shaft;
  const bottom = plate ? plate.top + plate.height : 0;
  const inPlate = (z: number) => plate !== undefined && z >= plate.top && z < bottom;
  if (ground.likeness === "clay") {
    const start = Math.max(1.5 * diameter, bottom);
    const { sidewaysStrength: strength } = ground;
    return {
      onShaft: (z) => (z < start ? 0 : 9 * strength * diameter),
      onPlate: (z) => (plate && inPlate(z) ? 3 * strength * plate.breadth : 0),
    };
  }
  const sine = Math.sin(ground.frictionAngle);
  const passive = (3 * ground.unitWeight * (1 + sine)) / (1 - sine);
  return {
    onShaft: (z) => passive * z * diameter,
    onPlate: (z) => (plate && inPlate(z) ? passive * z * (plate.breadth - diameter) : 0),
  };
}

/** Greatest moment of the shaft under a pull, with reactions divided by a factor, by slices. */
function greatestMoment(one: Case, pull: number, factor: number): number {
  const { onShaft, onPlate } = reactionsOf(one);
  const step = (2 * one.depth) / slices;
  let [shear, moment, greatest] = [pull, pull * one.shaft.pullHeight, 0];
  for (let slice = 0; slice < slices && shear > 0; slice += 1) {
    const z = (slice + 0.5) * step;
    const next = shear - ((onShaft(z) + onPlate(z)) * step) / factor;
    moment += ((shear + Math.max(0, next)) / 2) * step;
    shear = next;
    greatest = Math.max(greatest, moment);
  }
  return greatest;
}

/** Pull at which a rigid shaft turns, by bisection on its turning point; null where none exists. */
function turningPull(one: Case): number | null {
  const { onShaft, onPlate } = reactionsOf(one);
  const step = one.depth / slices;
  const at = (turn: number): { moment: number; force: number } => {
    let [moment, force] = [0, 0];
    for (let slice = 0; slice < slices; slice += 1) {
      const z = (slice + 0.5) * step;
      // The slice in which the shaft turns is split.
      const front = Math.min(1, Math.max(0, (turn - slice * step) / step));
      const along = (2 * front - 1) * onShaft(z) + onPlate(z);
      force += along * step;
      moment += along * step * (z + one.shaft.pullHeight);
    }
    return { moment, force };
  };
  const bottom = one.plate ? one.plate.top + one.plate.height : 0;
  let [low, high] = [Math.max(bottom, 1.5 * one.shaft.diameter), one.depth];
  if (at(low).moment > 0 || at(high).moment < 0) return null;
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    if (at(middle).moment < 0) low = middle;
    else high = middle;
  }
  return at(high).force;
}

/** Pull of a shaft in sand with one force at its end: moments about the end, by slices. */
function endPull(one: Case): number {
  const { onShaft, onPlate } = reactionsOf(one);
  const step = one.depth / slices;
  let moment = 0;
  for (let slice = 0; slice < slices; slice += 1) {
    const z = (slice + 0.5) * step;
    moment += (onShaft(z) + onPlate(z)) * step * (one.depth - z);
  }
  return moment / (one.shaft.pullHeight + one.depth);
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const strength = between(10_000, 150_000);
const clayGround = strength.map((value) => ({
  likeness: "clay" as const,
  shearStrength: value,
  sidewaysStrength: value,
  unitWeight: 18_000,
  wet: false,
}));
const sandGround = fc.record({ angle: between(22, 44), weight: between(8_000, 19_000) }).map(
  ({ angle, weight }): GroundAtWork => ({
    likeness: "sand",
    frictionAngle: (angle * Math.PI) / 180,
    unitWeight: weight,
    wet: false,
  }),
);

/** So strong a shaft that the ground decides. */
const rigid = (shaft: Shaft): Shaft => ({ ...shaft, plasticModulus: 1 });

const capacityOf = ({ shaft, depth, plate, ground }: Case, safety = 3) =>
  lateralCapacity(shaft, depth, plate, ground, safety, new Chapter("test", "test"));

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 100 });

describe("sideways hold against slices", () => {
  test("clay, bare shaft: forces and moments balance at the pull given", () => {
    holds(
      fc.property(shafts, between(0.4, 2), clayGround, (shaft, depth, ground) => {
        const one = { shaft: rigid(shaft), depth, plate: undefined, ground };
        const expected = turningPull(one) as number;
        expect(capacityOf(one).ultimate / expected).toBeCloseTo(1, 2);
      }),
    );
  });

  test("clay with a stabiliser: as slices find it where the shaft can balance the plate's full force, and never below the bare shaft", () => {
    let compared = 0;
    holds(
      fc.property(
        shafts,
        between(0.6, 2),
        stabilisers,
        clayGround,
        (shaft, depth, plate, ground) => {
          const one = { shaft: rigid(shaft), depth, plate, ground };
          const bare = capacityOf({ ...one, plate: undefined }).ultimate;
          const { ultimate } = capacityOf(one);
          expect(ultimate).toBeGreaterThanOrEqual(bare * (1 - 1e-12));
          const full = turningPull(one);
          if (full === null || full < bare) return;
          compared += 1;
          expect(ultimate / full).toBeCloseTo(1, 1);
        },
      ),
    );
    expect(compared).toBeGreaterThan(5);
  });

  test("sand, with and without a stabiliser: moments about the end balance", () => {
    holds(
      fc.property(
        shafts,
        between(0.6, 2),
        stabilisers,
        sandGround,
        (shaft, depth, plate, ground) => {
          for (const fitted of [undefined, plate]) {
            const one = { shaft: rigid(shaft), depth, plate: fitted, ground };
            expect(capacityOf(one).ultimate / endPull(one)).toBeCloseTo(1, 2);
          }
        },
      ),
    );
  });

  test("where the shaft decides, its greatest moment at the allowable pull is at most M_p/1.67", () => {
    let bent = 0;
    const ground = fc.oneof(clayGround, sandGround);
    holds(
      fc.property(shafts, between(0.6, 2), stabilisers, ground, (shaft, depth, plate, soil) => {
        for (const fitted of [undefined, plate]) {
          const one = { shaft, depth, plate: fitted, ground: soil };
          const { allowable, model } = capacityOf(one);
          if (!model.includes("bends")) continue;
          bent += 1;
          const allowed = (36 * 6_894_757.293168361 * shaft.plasticModulus) / 1.67;
          // The better of both stands: with the plate, or the shaft alone.
          const bare = greatestMoment({ ...one, plate: undefined }, allowable, 3);
          const moment = Math.min(bare, greatestMoment(one, allowable, 3));
          expect(moment).toBeLessThanOrEqual(allowed * 1.01);
          if (!fitted) expect(moment).toBeGreaterThanOrEqual(allowed * 0.98);
        }
      }),
    );
    expect(bent).toBeGreaterThan(20);
  });

  test("a shaft no longer than 1.5 diameters in clay is refused", () => {
    const shaft = { diameter: 0.05, plasticModulus: 1e-5, pullHeight: 0 };
    const ground = fc.sample(clayGround, { seed, numRuns: 1 })[0] as GroundAtWork;
    expect(() => capacityOf({ shaft, depth: 0.07, plate: undefined, ground })).toThrow(
      /ground-outside/,
    );
  });

  test("a stabiliser deeper than the shaft, or narrower, is refused", () => {
    const shaft = { diameter: 0.05, plasticModulus: 1e-5, pullHeight: 0 };
    const ground = fc.sample(clayGround, { seed, numRuns: 1 })[0] as GroundAtWork;
    const deep = { breadth: 0.3, top: 0.5, height: 0.6 };
    const narrow = { breadth: 0.04, top: 0, height: 0.2 };
    for (const plate of [deep, narrow]) {
      expect(() => capacityOf({ shaft, depth: 1, plate, ground })).toThrow(/sizes-disagree/);
    }
  });
});
