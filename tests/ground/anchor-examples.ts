import type {
  Anchor,
  Capacity,
  Clay,
  GroundState,
  MeasuredSoil,
  NotRated,
  Pull,
  RatedCapacity,
  Sand,
  ScrewAnchor,
  Stake,
} from "@hoopstay/ground";
import fc from "fast-check";

/** Seed of every law of anchors, so that a failure repeats. */
export const seed = 3285;

const inch = 0.0254;
export const pound = 0.45359237 * 9.80665;
export const degree = Math.PI / 180;
const pcf = pound / 0.3048 ** 3;

export const wet: GroundState = { wetness: "wet" };
export const dry: GroundState = { wetness: "dry" };

export const upward: Pull = { fromShaft: 0, aboveGround: Math.PI / 2 };
export const level: Pull = { fromShaft: Math.PI / 2, aboveGround: 0 };
export const slanted = (fromShaft: number): Pull => ({
  fromShaft,
  aboveGround: Math.PI / 2 - fromShaft,
});

export const loose: Sand = { likeness: "sand", frictionAngle: 30 * degree, unitWeight: 108 * pcf };
export const firm: Clay = {
  likeness: "clay",
  shearStrength: 50_000,
  unitWeight: 18_000,
  measured: "wet",
};

export const given = (values: Sand | Clay, state: GroundState): MeasuredSoil => ({
  basis: "theory",
  values,
  state,
});

const shaft = {
  diameter: 0.75 * inch,
  plasticModulus: (0.75 * inch) ** 3 / 6,
  pullHeight: 0.05,
};

/** A 6 in screw anchor at 42 in on a 3/4 in rod. */
export const sixInch: ScrewAnchor = {
  kind: "screw",
  helices: [{ diameter: 6 * inch, depth: 42 * inch }],
  shaft,
};

export const stabiliser = { breadth: 12 * inch, top: 0, height: 8 * inch };

/** A 1 in stake, 36 in deep. */
export const stake: Stake = {
  kind: "stake",
  depth: 36 * inch,
  shaft: { diameter: inch, plasticModulus: inch ** 3 / 6, pullHeight: 0.05 },
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const sand: fc.Arbitrary<Sand> = fc.record({
  likeness: fc.constant("sand" as const),
  frictionAngle: between(20, 45).map((angle) => angle * degree),
  unitWeight: between(90, 130).map((weight) => weight * pcf),
});

export const clay: fc.Arbitrary<Clay> = fc.record({
  likeness: fc.constant("clay" as const),
  shearStrength: between(5_000, 200_000),
  unitWeight: between(15_000, 21_000),
  measured: fc.constantFrom("wet" as const, "dry" as const),
});

export const soilValues = fc.oneof(sand, clay);
export const state = fc.constantFrom(wet, dry, { wetness: "frozen" } as const);

export const shafts = fc
  .record({
    diameter: between(0.012, 0.05),
    share: between(0.3, 1),
    pullHeight: between(0, 0.3),
  })
  .map(({ diameter, share, pullHeight }) => ({
    diameter,
    plasticModulus: (share * diameter ** 3) / 6,
    pullHeight,
  }));

export const stabilisers = fc.record({
  breadth: between(0.1, 0.5),
  top: between(0, 0.1),
  height: between(0.05, 0.3),
});

/** One helix, at least one diameter deep. */
export const oneHelix: fc.Arbitrary<ScrewAnchor> = fc
  .record({ diameter: between(0.08, 0.4), depth: between(0.5, 2.5), shaft: shafts })
  .map(({ diameter, depth, shaft }) => ({
    kind: "screw" as const,
    helices: [{ diameter, depth }],
    shaft,
  }));

export const severalHelices: fc.Arbitrary<ScrewAnchor> = fc
  .record({
    helices: fc.array(fc.record({ diameter: between(0.08, 0.3), depth: between(0.5, 2.5) }), {
      minLength: 1,
      maxLength: 5,
    }),
    shaft: shafts,
  })
  .map((anchor) => ({ kind: "screw" as const, ...anchor }));

export const stakes: fc.Arbitrary<Stake> = fc
  .record({ depth: between(0.3, 2), shaft: shafts })
  .map((one) => ({ kind: "stake" as const, ...one }));

const drivenPlates: fc.Arbitrary<Anchor> = fc
  .record({ area: between(0.002, 0.1), depth: between(0.5, 2.5) })
  .map((one) => ({ kind: "driven plate" as const, ...one }));

const deadmen: fc.Arbitrary<Anchor> = fc
  .record({ face: between(0.1, 0.4), length: between(0.4, 3), depth: between(0.92, 2.1) })
  .map((one) => ({ kind: "deadman" as const, body: "timber" as const, ...one }));

const holdfasts: fc.Arbitrary<Anchor> = fc
  .constantFrom("1", "1-1", "2-1", "1-1-1", "3-2-1")
  .map((set) => ({ kind: "picket set" as const, set }));

export const anchors: fc.Arbitrary<Anchor> = fc.oneof(
  oneHelix,
  severalHelices,
  fc.tuple(oneHelix, stabilisers).map(([one, plate]) => ({ ...one, stabiliser: plate })),
  drivenPlates,
  stakes,
  deadmen,
  holdfasts,
);

export const pulls: fc.Arbitrary<Pull> = fc.record({
  fromShaft: fc.oneof(fc.constantFrom(0, Math.PI / 2), between(0, Math.PI / 2)),
  aboveGround: fc.oneof(fc.constantFrom(0, Math.PI / 4), between(0, Math.PI / 2)),
});

/** A capacity that has a number, or the reason why it has none as an error. */
export const rated = (capacity: Capacity): RatedCapacity => {
  if (!capacity.rated) throw new Error(capacity.reason);
  return capacity;
};

export const unrated = (capacity: Capacity): NotRated => {
  if (capacity.rated) throw new Error(`${capacity.allowable} N where none was expected`);
  return capacity;
};
