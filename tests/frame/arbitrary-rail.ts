import {
  type Rail,
  type RailLoads,
  type RailSolution,
  type RailSupport,
  railReactions,
} from "@hoopstay/frame";
import fc from "fast-check";

export const seed = 27_150;

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Loads in sixteenths: none so small that rounding is all there is. */
const load = (min: number, max: number) =>
  fc.integer({ min: min * 16, max: max * 16 }).map((count) => count / 16);

/** Places as a part of the length: some fall together, none are nearer than a 4096th. */
const part = fc.oneof(
  fc.integer({ min: 0, max: 4096 }).map((count) => count / 4096),
  fc.integer({ min: 0, max: 8 }).map((count) => count / 8),
);

export interface LoadedRail {
  readonly rail: Rail;
  readonly loads: RailLoads;
  readonly supports: readonly RailSupport[];
}

const rail = fc.record({ length: double(3, 35), stiffness: double(2e4, 3e6) });

const partLoads = fc.record({
  uniform: load(-200, 50),
  forces: fc.array(fc.record({ part, force: load(-3000, 4000) }), { maxLength: 25 }),
  couples: fc.array(fc.record({ part, couple: load(-2000, 2000) }), { maxLength: 3 }),
});

const stiffness = fc.oneof(double(2e4, 5e6), double(2e4, 5e6), fc.constant("rigid" as const));
const cap = fc.option(double(50, 8000), { nil: null });

const partSupport = (kinds: readonly RailSupport["kind"][]) =>
  fc.record({ kind: fc.constantFrom(...kinds), part, stiffness, cap });

interface PartSupport {
  readonly kind: RailSupport["kind"];
  readonly part: number;
  readonly stiffness: number | "rigid";
  readonly cap: number | null;
}

/** Makes supports; of two rigid ones at one place, the second is left out. */
function supportsOn({ length }: Rail, given: readonly PartSupport[]): RailSupport[] {
  const kept = given.filter(
    (one, i) =>
      one.stiffness !== "rigid" ||
      !given.slice(0, i).some((b) => b.stiffness === "rigid" && b.part === one.part),
  );
  return kept.map(({ kind, part: at, stiffness: k, cap: greatest }): RailSupport => {
    const support = { kind, x: at * length, stiffness: k };
    return greatest === null || kind === "two-way" ? support : { ...support, cap: greatest };
  });
}

export function loadsOn({ length }: Rail): fc.Arbitrary<RailLoads> {
  return partLoads.map(({ uniform, forces, couples }) => ({
    uniform,
    forces: forces.map(({ part: at, force }) => ({ x: at * length, force })),
    couples: couples.map(({ part: at, couple }) => ({ x: at * length, couple })),
  }));
}

const railWith = (kinds: readonly RailSupport["kind"][], minLength: number) =>
  rail.chain((one) =>
    fc.record({
      rail: fc.constant(one),
      loads: loadsOn(one),
      supports: fc
        .array(partSupport(kinds), { minLength, maxLength: 25 })
        .map((given) => supportsOn(one, given)),
    }),
  );

/** A rail on anchors, ground and now and then a two-way support. */
export const contactRail: fc.Arbitrary<LoadedRail> = railWith(
  ["anchor", "anchor", "anchor", "ground", "ground", "ground", "two-way"],
  1,
);

/** A rail on two-way supports, at least two of them well apart. */
export const twoWayRail: fc.Arbitrary<LoadedRail> = railWith(["two-way"], 0).map((one) => ({
  ...one,
  supports: [
    { kind: "two-way", x: one.rail.length / 3, stiffness: 3e5 },
    ...one.supports,
    { kind: "two-way", x: (2 * one.rail.length) / 3, stiffness: "rigid" },
  ],
}));

/** The solution of a rail, if it is held. */
export function solutionOf({ rail: one, loads, supports }: LoadedRail): RailSolution | undefined {
  const found = railReactions(one, loads, supports);
  return found.outcome === "held" ? found : undefined;
}
