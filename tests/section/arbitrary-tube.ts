import type { Convention, Tube } from "@hoopstay/section";
import fc from "fast-check";

/** Seed of every law of sections, so that a failure repeats. */
export const seed = 20_219;

export const conventions = [
  "AISC",
  "ASTM A1085",
  "ASTM A1065",
  "EN 10219-2",
  "EN 10210-2",
  "other",
] as const satisfies readonly Convention[];

const convention = fc.constantFrom(...conventions);
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Round tube, 20 to 120 mm, diameter over wall 3 to 60. */
export const roundTube = fc
  .record({ convention, outside: between(0.02, 0.12), slenderness: between(3, 60) })
  .map(({ convention, outside, slenderness }) => ({
    kind: "round" as const,
    outside,
    wall: outside / slenderness,
    convention,
    galvanized: false,
  }));

/** Rectangular tube, 20 to 150 mm, shorter side over wall 8 to 50. */
export const rectangularTube = fc
  .record({
    convention,
    depth: between(0.02, 0.15),
    width: between(0.02, 0.15),
    slenderness: between(8, 50),
  })
  .map(({ convention, depth, width, slenderness }) => ({
    kind: "rectangular" as const,
    depth,
    width,
    wall: Math.min(depth, width) / slenderness,
    convention,
    galvanized: false,
  }));

const flat = fc
  .record({ width: between(0.02, 0.15), slenderness: between(1, 20) })
  .map(({ width, slenderness }) => ({
    kind: "flat" as const,
    width,
    thickness: width / slenderness,
  }));

export const angle = fc
  .record({ upright: between(0.02, 0.15), lying: between(0.02, 0.15), slenderness: between(3, 20) })
  .map(({ upright, lying, slenderness }) => ({
    kind: "angle" as const,
    legs: [upright, lying] as [number, number],
    thickness: Math.min(upright, lying) / slenderness,
  }));

const bar = between(0.005, 0.05).map((diameter) => ({ kind: "bar" as const, diameter }));

export const tube: fc.Arbitrary<Tube> = fc.oneof(roundTube, rectangularTube, flat, angle, bar);

/** The same section, k times as large. */
export function scaled(one: Tube, k: number): Tube {
  switch (one.kind) {
    case "round":
      return { ...one, outside: k * one.outside, wall: k * one.wall };
    case "rectangular":
      return { ...one, depth: k * one.depth, width: k * one.width, wall: k * one.wall };
    case "flat":
      return { ...one, width: k * one.width, thickness: k * one.thickness };
    case "angle":
      return { ...one, legs: [k * one.legs[0], k * one.legs[1]], thickness: k * one.thickness };
    case "bar":
      return { ...one, diameter: k * one.diameter };
  }
}
