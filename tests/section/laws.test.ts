import { Refusal } from "@hoopstay/core";
import {
  cornerRadii,
  massPerLength,
  properties,
  type SectionProperties,
  type Tube,
  weightPerLength,
} from "@hoopstay/section";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { conventions, rectangularTube, roundTube, scaled, seed, tube } from "./arbitrary-tube.ts";

const powers = {
  area: 2,
  secondMomentX: 4,
  secondMomentY: 4,
  elasticModulusX: 3,
  elasticModulusY: 3,
  plasticModulusX: 3,
  plasticModulusY: 3,
  radiusX: 1,
  radiusY: 1,
  leastRadius: 1,
  torsionConstant: 4,
  torsionModulus: 3,
  outsidePerimeter: 1,
  designWall: 1,
  massPerLength: 2,
} as const satisfies Partial<Record<keyof SectionProperties, number>>;

const quantities = Object.keys(powers) as (keyof typeof powers)[];

const grow = [
  "area",
  "secondMomentX",
  "secondMomentY",
  "elasticModulusX",
  "elasticModulusY",
  "plasticModulusX",
  "plasticModulusY",
  "massPerLength",
] as const;

/** Two walls closer than a double can tell may round the wrong way. */
const rounding = 1 - 1e-12;

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 500 });

describe("laws of sections", () => {
  test("every number is finite and positive", () => {
    holds(
      fc.property(tube, (one) => {
        const all = properties(one);
        for (const quantity of quantities) expect(all[quantity], quantity).toBeGreaterThan(0);
        for (const quantity of quantities) expect(all[quantity]).toBeLessThan(1000);
      }),
    );
  });

  test("a section k times as large has k, k2, k3, k4 times the properties", () => {
    holds(
      fc.property(tube, fc.double({ min: 0.5, max: 2, noNaN: true }), (one, k) => {
        const larger = scaled(one, k);
        fc.pre(sameCorners(one, larger));
        const [before, after] = [properties(one), properties(larger)];
        for (const quantity of quantities) {
          const expected = before[quantity] * k ** powers[quantity];
          expect(after[quantity] / expected, quantity).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("a thicker wall never lowers area, inertia, modulus or weight", () => {
    holds(
      fc.property(
        fc.oneof(roundTube, rectangularTube),
        fc.double({ min: 0.5, max: 1, noNaN: true }),
        (thick, share) => {
          const thin = { ...thick, wall: share * thick.wall };
          fc.pre(sameCorners(thin, thick));
          const [before, after] = [properties(thin), properties(thick)];
          for (const quantity of grow) {
            expect(after[quantity], quantity).toBeGreaterThanOrEqual(before[quantity] * rounding);
          }
          expect(weightPerLength(thick).low).toBeGreaterThanOrEqual(
            weightPerLength(thin).low * rounding,
          );
          expect(weightPerLength(thick).high).toBeGreaterThanOrEqual(
            weightPerLength(thin).high * rounding,
          );
        },
      ),
    );
  });

  test("EN 10219-2 steps to larger corners over 6 mm, where area does fall", () => {
    const side = { kind: "rectangular", depth: 0.1, width: 0.1, galvanized: false } as const;
    const at = (wall: number) => properties({ ...side, wall, convention: "EN 10219-2" }).area;
    expect(cornerRadii("EN 10219-2", 0.006).outside).toBe(2);
    expect(cornerRadii("EN 10219-2", 0.00601).outside).toBe(2.5);
    expect(at(0.00601)).toBeLessThan(at(0.006));
    expect(at(0.0063)).toBeGreaterThan(at(0.006));
  });

  test("low weight, nominal weight and high weight stand in order", () => {
    holds(
      fc.property(tube, (one) => {
        const { low, high } = weightPerLength(one);
        const nominal = massPerLength(one) * 9.80665;
        expect(low).toBeLessThan(nominal);
        expect(high).toBeGreaterThan(nominal);
      }),
    );
  });

  test("zinc raises the high weight and nothing else", () => {
    holds(
      fc.property(fc.oneof(roundTube, rectangularTube), (bare) => {
        const coated = { ...bare, galvanized: true };
        expect(properties(coated)).toEqual(properties(bare));
        expect(weightPerLength(coated).low).toBe(weightPerLength(bare).low);
        expect(weightPerLength(coated).high).toBeGreaterThan(weightPerLength(bare).high);
      }),
    );
  });

  test("a square tube is the rectangle with equal sides; turned, it exchanges its axes", () => {
    holds(
      fc.property(rectangularTube, (one) => {
        const turned = properties({ ...one, depth: one.width, width: one.depth });
        const upright = properties(one);
        expect(turned.secondMomentX).toBe(upright.secondMomentY);
        expect(turned.plasticModulusY).toBe(upright.plasticModulusX);
        const square = properties({ ...one, depth: one.width });
        expect(square.secondMomentX).toBe(square.secondMomentY);
        expect(square.elasticModulusX).toBe(square.elasticModulusY);
      }),
    );
  });

  test("Z is at least S, and the torsion constant at most the polar second moment", () => {
    holds(
      fc.property(tube, (one) => {
        const all = properties(one);
        expect(all.plasticModulusX).toBeGreaterThanOrEqual(all.elasticModulusX);
        expect(all.plasticModulusY).toBeGreaterThanOrEqual(all.elasticModulusY);
        const polar = all.secondMomentX + all.secondMomentY;
        expect(all.torsionConstant).toBeLessThanOrEqual(polar * (1 + 1e-9));
      }),
    );
  });

  test("any numbers give a finite answer or a coded refusal", () => {
    const any = fc.double();
    const convention = fc.constantFrom(...conventions);
    const wild: fc.Arbitrary<Tube> = fc.oneof(
      fc.record({
        kind: fc.constant("round" as const),
        outside: any,
        wall: any,
        convention,
        galvanized: fc.boolean(),
      }),
      fc.record({
        kind: fc.constant("rectangular" as const),
        depth: any,
        width: any,
        wall: any,
        convention,
        galvanized: fc.boolean(),
      }),
      fc.record({ kind: fc.constant("flat" as const), width: any, thickness: any }),
      fc.record({ kind: fc.constant("angle" as const), legs: fc.tuple(any, any), thickness: any }),
      fc.record({ kind: fc.constant("bar" as const), diameter: any }),
    );
    holds(
      fc.property(wild, (one) => {
        try {
          const { low, high } = weightPerLength(one);
          const numbers = [low, high, ...quantities.map((quantity) => properties(one)[quantity])];
          for (const value of numbers) expect(Number.isFinite(value)).toBe(true);
        } catch (refusal) {
          expect(refusal).toBeInstanceOf(Refusal);
        }
      }),
    );
  });
});

function sameCorners(one: Tube, other: Tube): boolean {
  if (one.kind !== "rectangular" || other.kind !== "rectangular") return true;
  const radii = (tube: typeof one) => cornerRadii(tube.convention, tube.wall).outside;
  return radii(one) === radii(other);
}
