import { Refusal } from "@hoopstay/core";
import {
  type BoltGrade,
  boltGradeRows,
  type SleeveJoint,
  type SleeveStrength,
  sleeveStrength,
} from "@hoopstay/strength";
import fc from "fast-check";
import { worthOf } from "./member-units.ts";

export const seed = 20261125;
export const inch = worthOf("in");
export const ksi = worthOf("ksi");
export const kip = worthOf("kip");

export const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 400 });

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Two numbers closer than a double can tell may round the wrong way. */
export const rounding = 1 - 1e-12;

/** 1.900 x 0.065 hoop over a 1.660 x 0.130 stub, two 5/16 bolts of grade 5. */
export const sleeve: SleeveJoint = {
  hoop: {
    outside: 1.9 * inch,
    wall: 0.065 * inch,
    yieldStrength: 50 * ksi,
    tensileStrength: 55 * ksi,
    endDistance: 1.5 * inch,
  },
  stub: {
    outside: 1.66 * inch,
    wall: 0.13 * inch,
    yieldStrength: 46 * ksi,
    tensileStrength: 62 * ksi,
    endDistance: 1 * inch,
  },
  overlap: 12 * inch,
  bolt: { grade: "SAE 5", diameter: (5 / 16) * inch, threads: "in the shear plane" },
  count: 2,
  spacing: 6 * inch,
  holeDiameter: null,
  washers: false,
};

/** A sleeve with some of its entries, or of its tubes' and bolt's, put in place of the example's. */
export interface Change extends Partial<Omit<SleeveJoint, "hoop" | "stub" | "bolt">> {
  readonly hoop?: Partial<SleeveJoint["hoop"]>;
  readonly stub?: Partial<SleeveJoint["stub"]>;
  readonly bolt?: Partial<SleeveJoint["bolt"]>;
}

export const changed = (change: Change): SleeveJoint => ({
  ...sleeve,
  ...change,
  hoop: { ...sleeve.hoop, ...change.hoop },
  stub: { ...sleeve.stub, ...change.stub },
  bolt: { ...sleeve.bolt, ...change.bolt },
});

export function coveredSleeve(change: Change = {}): SleeveStrength {
  const strength = sleeveStrength(changed(change));
  if (!strength.covered) throw new Error(strength.reason);
  return strength;
}

export function codeOf(run: () => unknown): string {
  try {
    run();
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.complaints[0]?.code ?? "";
    throw refusal;
  }
  return "";
}

const tubes = fc
  .record({
    outside: between(0.025, 0.12),
    wall: between(0.00065, 0.006),
    yieldStrength: between(150e6, 450e6),
    overYield: between(1, 1.6),
    endDistance: fc.option(between(0.012, 0.2)),
  })
  .map(({ overYield, ...tube }) => ({
    ...tube,
    tensileStrength: overYield * tube.yieldStrength,
  }));

/** Sleeves of any sense and nonsense, inside the sizes that are not refused at once. */
export const sleeves: fc.Arbitrary<SleeveJoint> = fc
  .record({
    hoop: tubes,
    stub: tubes,
    overlap: between(0.05, 0.6),
    bolt: fc.record({
      grade: fc.option(fc.constantFrom(...(Object.keys(boltGradeRows) as BoltGrade[]))),
      diameter: between(0.0065, 0.016),
      threads: fc.constantFrom("in the shear plane", "excluded", "unknown"),
    }),
    count: fc.integer({ min: 1, max: 6 }),
    spacing: fc.option(between(0.02, 0.3)),
    play: fc.option(between(0, 0.006)),
    washers: fc.boolean(),
  })
  .map(({ play, ...joint }) => ({
    ...joint,
    holeDiameter: play === null ? null : joint.bolt.diameter + play,
  }));
