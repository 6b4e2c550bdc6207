import type { AnchorsInUse, PullTest } from "@hoopstay/ground";
import fc from "fast-check";

/** Seed of every law here, so that a failure repeats. */
export const seed = 31_007;

export const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>): void =>
  fc.assert(law, { seed, numRuns: 500 });

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A test in wet ground, pulled again and again: counts whole. */
export const plainTest: PullTest = {
  place: "hill",
  date: "2026-04-02",
  anchorKind: "6 in screw",
  pull: 4000,
  ended: "failed",
  ground: "wet",
  repeats: 3,
};

export const plainUse: AnchorsInUse = {
  place: "hill",
  anchorKind: "6 in screw",
  form: "plate",
  groundMayGetWet: true,
  everyAnchorProofLoaded: true,
};

export const testsOf = (pulls: readonly number[], others: Partial<PullTest> = {}): PullTest[] =>
  pulls.map((pull) => ({ ...plainTest, ...others, pull }));

/** Pulls within a factor of ten of each other. */
export const pulls = (least: number, most: number) =>
  fc.array(between(500, 5000), { minLength: least, maxLength: most });

export const uses: fc.Arbitrary<AnchorsInUse> = fc
  .record({
    everyAnchorProofLoaded: fc.boolean(),
    groundMayGetWet: fc.boolean(),
    form: fc.constantFrom("plate" as const, "stake" as const, "deadman" as const),
    scatter: fc.option(between(0.01, 0.6), { nil: undefined }),
  })
  .map(({ scatter, ...others }) => {
    const use = { ...plainUse, ...others };
    return scatter === undefined ? use : { ...use, knownScatter: scatter };
  });

/** A test as owners may hand it in, some of them not counting. */
export const anyTest: fc.Arbitrary<PullTest> = fc.record({
  place: fc.constantFrom("hill", "hill", "hill", "flat"),
  date: fc.constant("2026-04-02"),
  anchorKind: fc.constantFrom("6 in screw", "6 in screw", "4 in screw"),
  pull: between(100, 20_000),
  ended: fc.constantFrom("failed" as const, "stopped" as const),
  ground: fc.constantFrom("wet" as const, "dry" as const, "frozen" as const, "unknown" as const),
  repeats: fc.nat(5),
});
