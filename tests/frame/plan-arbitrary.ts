import type { Base, HoopOnRails, LateralAnchor, SideHold } from "@hoopstay/frame";
import fc from "fast-check";
import { stiffnessFrom } from "./plan-cases.ts";

export const seed = 27_151;

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const sixteenths = (most: number) =>
  fc.integer({ min: -16 * most, max: 16 * most }).map((count) => count / 16);

/** Places as a part of the length: some fall together, none are nearer than a 4096th. */
const part = fc.oneof(
  fc.integer({ min: 0, max: 4096 }).map((count) => count / 4096),
  fc.integer({ min: 0, max: 8 }).map((count) => count / 8),
);

/** Stiffness of a hoop: the square of any three rows, so that no movement gains work. */
const stiffness = fc
  .tuple(fc.array(sixteenths(1), { minLength: 9, maxLength: 9 }), double(10, 200))
  .map(([factors, size]) => {
    const row = (i: number): number[] => factors.slice(3 * i, 3 * i + 3).map((f) => f * size);
    const rows = [row(0), row(1), row(2)];
    return stiffnessFrom(
      [0, 1, 2].map((i) =>
        [0, 1, 2].map((j) =>
          rows.reduce((sum, one) => sum + (one[i] as number) * (one[j] as number), 0),
        ),
      ),
    );
  });

const rail = fc.record({ bending: double(2e4, 2e6), twist: double(2e4, 2e6) });

const anchors = (length: number): fc.Arbitrary<LateralAnchor[]> =>
  fc
    .array(
      fc.record({ rail: fc.constantFrom("left", "right"), part, stiffness: double(2e4, 2e6) }),
      {
        maxLength: 6,
      },
    )
    .map((more) => [
      { rail: "left", y: length / 8, stiffness: 2e5 },
      { rail: "right", y: (7 * length) / 8, stiffness: 3e5 },
      ...more.map(({ part: at, ...one }) => ({ ...one, y: at * length })),
    ]);

/** A base that is held, whatever its hoops do: two cross members and, if asked for, two anchors. */
export const arbitraryBase: fc.Arbitrary<Base> = fc
  .record({ length: double(4, 40), span: double(2, 10), left: rail, right: rail })
  .chain((size) => {
    const { length } = size;
    const hoop = fc.record({ part, stiffness });
    const member = fc.record({ part, axial: double(1e6, 3e8), bending: double(0, 1e6) });
    const sideHold: fc.Arbitrary<SideHold> = fc.oneof(
      fc.constant("evenly" as const),
      anchors(length),
    );
    return fc.record({
      ...(Object.fromEntries(
        Object.entries(size).map(([key, value]) => [key, fc.constant(value)]),
      ) as { [Key in keyof typeof size]: fc.Arbitrary<(typeof size)[Key]> }),
      hoops: fc
        .array(hoop, { minLength: 1, maxLength: 14 })
        .map((given) =>
          given.map(({ part: at, ...one }): HoopOnRails => ({ ...one, y: at * length })),
        ),
      crossMembers: fc
        .array(member, { maxLength: 4 })
        .map((given) => [
          { y: 0, axial: 5e6, bending: 1e5 },
          ...given.map(({ part: at, ...one }) => ({ ...one, y: at * length })),
          { y: length, axial: 5e7, bending: 2e5 },
        ]),
      sideHold,
    });
  });

export const loadOn = ({ hoops }: Base): fc.Arbitrary<number[]> =>
  fc.array(sixteenths(2000), { minLength: 4 * hoops.length, maxLength: 4 * hoops.length });

export interface LoadedBase {
  readonly base: Base;
  readonly load: readonly number[];
}

export const loadedBase: fc.Arbitrary<LoadedBase> = arbitraryBase.chain((base) =>
  loadOn(base).map((load) => ({ base, load })),
);

/** Sum of the sizes of a load; moments count by the span. */
export const sizeOfLoad = ({ span }: Base, load: readonly number[]): number =>
  load.reduce((sum, value, i) => sum + Math.abs(value) / (i % 2 === 0 ? 1 : span), 0);
