import {
  type ActionTable,
  type Anchor,
  type BaseLine,
  type Bearing,
  baseLines,
  type CheckId,
  type Combination,
  checkTerms,
  combinations,
  extremesOf,
  type Governing,
  governingChecks,
  type Holding,
  type Slope,
  type Weight,
} from "@hoopstay/stability";
import fc from "fast-check";

/** Seed of every law of stability, so that a failure repeats. */
export const seed = 27_150;

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

export const holds = <Values extends [unknown, ...unknown[]]>(
  law: fc.IProperty<Values>,
  numRuns = 200,
): void => {
  fc.assert(law, { seed, numRuns });
};

/** A house on its rails with what holds it. */
export interface HeldHouse {
  readonly bearing: Bearing;
  readonly weights: readonly [Weight, Weight];
  readonly anchors: readonly Anchor[];
  readonly slope: Slope | null;
  readonly friction: number;
}

const bearing: fc.Arbitrary<Bearing> = fc.record({
  halfSpan: between(1.5, 5),
  front: between(3, 15),
  back: between(3, 15),
  railWidth: between(0.08, 0.2),
  allowable: between(30_000, 100_000),
});

const share = between(-0.3, 0.3);
const weight = fc.record({ W: between(1000, 20_000), x: share, y: share, z: between(0.3, 2) });

/** Where a tether pulls to: straight down, or down at 30 to 60 degrees and to any side. */
const vertical = fc.constant([0, 0, -1] as const);
const slanted = fc
  .record({ down: between(Math.PI / 6, Math.PI / 3), side: between(-Math.PI, Math.PI) })
  .map(({ down, side }) => {
    const level = Math.cos(down);
    return [level * Math.cos(side), level * Math.sin(side), -Math.sin(down)] as const;
  });

const anchor = (toward: fc.Arbitrary<Anchor["toward"]>) =>
  fc.record({
    x: fc.constantFrom(-1, 1),
    y: between(-1, 1),
    pull: between(500, 30_000),
    toward,
  });

const level = fc.constant(null);
const downhill = between(-Math.PI, Math.PI).map((at) => [Math.cos(at), Math.sin(at)] as const);
export const sloping = fc.record({ angle: between(0.01, 0.15), downhill });
export const unknownSlope = fc.record({ angle: between(0.01, 0.15), downhill: fc.constant(null) });

interface Kind {
  readonly anchors?: "none" | "vertical" | "slanted";
  readonly slope?: fc.Arbitrary<Slope | null>;
}

/** Houses of one kind; on level ground and without anchors unless said. */
export function heldHouse({ anchors = "none", slope = level }: Kind = {}): fc.Arbitrary<HeldHouse> {
  const tether = anchor(anchors === "vertical" ? vertical : fc.oneof(vertical, slanted));
  const count = anchors === "none" ? { maxLength: 0 } : { minLength: 1, maxLength: 6 };
  return fc
    .record({
      bearing,
      low: weight,
      high: weight,
      anchors: fc.array(tether, count),
      slope,
      friction: fc.integer({ min: 0, max: 60 }).map((one) => one / 100),
    })
    .map(({ bearing: on, low, high, anchors: tethers, ...ground }) => {
      const at = ({ x, y }: { x: number; y: number }) => ({
        x: x * on.halfSpan,
        y: y < 0 ? y * on.back : y * on.front,
      });
      const heavier = { ...high, ...at(high), W: low.W + high.W, name: "high" as const };
      return {
        ...ground,
        bearing: on,
        weights: [{ ...low, ...at(low), name: "low" as const }, heavier] as const,
        anchors: tethers.map((one) => ({ ...one, ...at(one) })),
      };
    });
}

/** Sixteenths: nought is common, and nothing else is so small that its square is nought. */
export const sixteenths = (min: number, max: number) =>
  fc.integer({ min: 16 * min, max: 16 * max }).map((one) => one / 16);

const row = (leastUplift: number) =>
  fc.tuple(
    sixteenths(-60, 60),
    sixteenths(-60, 60),
    sixteenths(leastUplift, 120),
    sixteenths(-300, 300),
    sixteenths(-300, 300),
    sixteenths(-100, 100),
    sixteenths(-60, 60),
  );

const tableOf = (rows: number[][]): ActionTable => ({
  count: rows.length,
  components: Float64Array.from(rows.flat()),
});

/** Any actions per unit of pressure, m2 and m3: pressing down too, or lifting only. */
export const actions = fc.array(row(-60), { minLength: 1, maxLength: 5 }).map(tableOf);
export const liftingActions = fc.array(row(0), { minLength: 1, maxLength: 5 }).map(tableOf);

export const pressure = between(5, 2000);
export const combination = fc.constantFrom(...combinations);

export const linesOf = ({ bearing: on, weights, anchors }: HeldHouse): BaseLine[] =>
  baseLines(on, weights[0].W, anchors.length > 0);

export const holdingsOf = ({ weights, anchors, slope, friction }: HeldHouse): Holding[] =>
  weights.map((one) => ({ weight: one, anchors, slope, friction }));

export const termsOf = (house: HeldHouse, by: Combination, q: number) =>
  checkTerms(holdingsOf(house), linesOf(house), by, q);

/** The governing outcomes of every check, by name. */
export function solve(
  house: HeldHouse,
  table: ActionTable,
  by: Combination,
  q: number,
): Record<CheckId, Governing> {
  const found = governingChecks(termsOf(house, by, q), table, extremesOf(table, linesOf(house)));
  return Object.fromEntries(found.map((one) => [one.check, one])) as Record<CheckId, Governing>;
}
