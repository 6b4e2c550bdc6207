import { memberSection } from "@hoopstay/strength";
import fc from "fast-check";
import { box, inch, ksi, round, steelOfYield } from "./member-examples.ts";

/** Seed of every law of members, so that a failure repeats. */
export const seed = 36_022;

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Round tube, 20 to 120 mm, diameter over wall 4 to 300. */
export const roundTube = fc
  .record({ outside: between(0.02, 0.12), ratio: between(4, 300) })
  .map(({ outside, ratio }) => ({ outside, wall: outside / ratio }));

/** Rectangular tube, 20 to 150 mm, shorter side over wall 8 to 80. */
export const boxTube = fc
  .record({ depth: between(0.02, 0.15), width: between(0.02, 0.15), ratio: between(8, 80) })
  .map(({ depth, width, ratio }) => ({ depth, width, wall: Math.min(depth, width) / ratio }));

export const flatBar = fc
  .record({ width: between(0.02, 0.15), ratio: between(1, 40) })
  .map(({ width, ratio }) => ({ kind: "flat" as const, width, thickness: width / ratio }));

export const roundSection = roundTube.map(({ outside, wall }) => round(outside, wall));
export const boxSection = boxTube.map(({ depth, width, wall }) => box(depth, width, wall));
const solidSection = fc.oneof(
  flatBar.map(memberSection),
  between(0.005, 0.05).map((diameter) => memberSection({ kind: "bar", diameter })),
);
const angleSection = between(0.03, 0.1).map((leg) =>
  memberSection({ kind: "angle", legs: [leg, leg], thickness: leg / 10 }),
);

export const anySection = fc.oneof(roundSection, boxSection, solidSection, angleSection);

/** Yield strength 25 to 70 ksi, tensile strength above it. */
export const anySteel = fc
  .record({ yieldStrength: between(25, 70), share: between(1.05, 1.7) })
  .map(({ yieldStrength, share }) =>
    steelOfYield(yieldStrength * ksi, share * yieldStrength * ksi),
  );

/** 1 in to 30 ft. */
const anyLength = between(inch, 360 * inch);

export const anyLengths = fc.record({
  bucklingX: anyLength,
  bucklingY: anyLength,
  lateral: anyLength,
  shear: anyLength,
  torsion: anyLength,
});
