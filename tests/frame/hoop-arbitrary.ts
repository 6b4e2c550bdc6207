import {
  type FeetSupport,
  fixedFeet,
  type Hoop,
  type HoopBar,
  type HoopLine,
  type HoopLoad,
  hoopLine,
  type MemberSection,
  pinnedFeet,
  rightRoller,
} from "@hoopstay/frame";
import fc from "fast-check";
import { portal, segment } from "./hoop-simple.ts";

export const seed = 41_807;

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Places as a part of the developed length, in 64ths: some fall together, none are very near. */
const part = (min: number, max: number) =>
  fc.integer({ min: Math.ceil(min * 64), max: Math.floor(max * 64) }).map((count) => count / 64);

export interface LoadedHoop {
  readonly hoop: Hoop;
  readonly feet: FeetSupport;
  readonly loads: readonly (readonly [HoopLoad, number])[];
}

const legged = fc
  .record({ radius: double(1.5, 5), half: double(0.5, 1.57), leg: double(0.2, 2) })
  .map(({ radius, half, leg }) => {
    const reach = radius * Math.sin(half);
    const centre = { x: 0, z: leg - radius * Math.cos(half) };
    return hoopLine([
      { kind: "straight", from: { x: -reach, z: 0 }, to: { x: -reach, z: leg } },
      {
        kind: "arc",
        centre,
        radius,
        fromAngle: Math.PI / 2 + half,
        toAngle: Math.PI / 2 - half,
      },
      { kind: "straight", from: { x: reach, z: leg }, to: { x: reach, z: 0 } },
    ]);
  });

/** A pointed arch of two arcs whose centres lie beyond the middle, on no level of its own. */
const pointed = fc
  .record({
    radius: double(2, 6),
    offset: double(0.1, 1),
    foot: double(-0.3, 0.6),
    z: double(-1, 1),
  })
  .map(({ radius, offset, foot, z }) => {
    const crown = Math.acos((offset * radius) / 2 / radius);
    const away = (offset * radius) / 2;
    return hoopLine([
      {
        kind: "arc",
        centre: { x: away, z },
        radius,
        fromAngle: Math.PI - foot,
        toAngle: Math.PI - crown,
      },
      { kind: "arc", centre: { x: -away, z }, radius, fromAngle: crown, toAngle: foot },
    ]);
  });

/** Two legs and a bow that lean: nothing of it is symmetrical. */
const crooked = fc
  .record({
    lean: double(-0.4, 0.4),
    radius: double(1, 4),
    from: double(1.2, 2.8),
    to: double(0.3, 1.6),
  })
  .map(({ lean, radius, from, to }) => {
    const arc = { x: radius * Math.cos(from + lean), z: 1 + radius * Math.sin(from + lean) };
    const end = {
      x: radius * Math.cos(to + lean - 0.6),
      z: 1 + radius * Math.sin(to + lean - 0.6),
    };
    return hoopLine([
      { kind: "straight", from: { x: arc.x - 0.3, z: arc.z - 1 }, to: arc },
      {
        kind: "arc",
        centre: { x: 0, z: 1 },
        radius,
        fromAngle: from + lean,
        toAngle: to + lean - 0.6,
      },
      { kind: "straight", from: end, to: { x: end.x + 0.7, z: end.z - 1.5 } },
    ]);
  });

const arbitraryLine: fc.Arbitrary<HoopLine> = fc.oneof(
  fc.tuple(double(1.5, 5), double(0.4, 2.4)).map(([radius, half]) => segment(radius, half)),
  fc.tuple(double(1, 4), double(2, 8)).map(([height, span]) => portal(height, span)),
  legged,
  pointed,
  crooked,
);

/** A tube by its middle diameter and wall, thin. */
const section: fc.Arbitrary<MemberSection> = fc
  .record({ d: double(0.02, 0.09), t: double(0.0012, 0.004), E: fc.constantFrom(2e11, 7e10) })
  .map(({ d, t, E }) => ({ A: Math.PI * d * t, I: (Math.PI * d ** 3 * t) / 8, E }));

const end = fc.constantFrom("pinned" as const, "pinned" as const, "rigid" as const);

const brace = (line: HoopLine): fc.Arbitrary<HoopBar> =>
  fc
    .record({
      a: part(0, 0.45),
      b: part(0.5, 1),
      fromEnd: end,
      toEnd: end,
      section,
      weight: double(1, 40),
    })
    .map(({ a, b, ...rest }) => ({
      ...rest,
      from: { s: a * line.length },
      to: { s: b * line.length },
    }));

/** A tie as a beam through a free joint, hung from the hoop by two pinned bars. */
const truss = (line: HoopLine): fc.Arbitrary<Pick<Hoop, "bars" | "joints">> =>
  fc.record({ lean: double(-0.2, 0.2), section }).map(({ lean, section: own }) => {
    const at = (share: number) => ({ s: share * line.length });
    const bar = (from: HoopBar["from"], to: HoopBar["to"], rigid: boolean): HoopBar => ({
      from,
      to,
      fromEnd: "pinned",
      toEnd: rigid ? "rigid" : "pinned",
      section: own,
      weight: 12,
    });
    const mid = ((line.x[0] as number) + (line.x[line.count] as number)) / 2;
    const joint = { x: mid + lean, z: 0.3 * line.length * 0.4 };
    return {
      joints: [joint],
      bars: [
        bar(at(0.2), { joint: 0 }, true),
        bar(at(0.8), { joint: 0 }, true),
        bar(at(0.4), { joint: 0 }, false),
        bar(at(0.55), { joint: 0 }, false),
      ],
    };
  });

const bars = (line: HoopLine): fc.Arbitrary<Pick<Hoop, "bars" | "joints">> =>
  fc.oneof(
    fc.constant({ bars: [], joints: [] }),
    fc.array(brace(line), { minLength: 1, maxLength: 3 }).map((all) => ({ bars: all, joints: [] })),
    truss(line),
  );

/** A hoop with bars, now and then a hinge off every bar: no mechanism on pinned feet. */
export const arbitraryHoop: fc.Arbitrary<Hoop> = arbitraryLine.chain((line) =>
  fc
    .record({ section, with: bars(line), hinge: fc.option(part(0.2, 0.8), { nil: null, freq: 3 }) })
    .map(({ section: own, with: { bars: all, joints }, hinge }) => ({
      line,
      section: own,
      hinges: hinge === null ? [] : [(hinge + 1 / 200) * line.length],
      joints,
      bars: all,
    })),
);

const spring = (most: number) => double(most / 300, most);
const springs = fc
  .tuple(spring(3e6), spring(6e6), spring(2e4), spring(3e6), spring(6e6), spring(2e4))
  .map((all): FeetSupport => all);

const arbitraryFeet: fc.Arbitrary<FeetSupport> = fc.oneof(
  fc.constant(pinnedFeet),
  fc.constant(fixedFeet),
  springs,
);

/** Loads in sixteenths of a newton: none so small that rounding is all there is. */
const size = (most: number) =>
  fc.integer({ min: -16 * most, max: 16 * most }).map((count) => count / 16);

export const arbitraryLoads = (line: HoopLine): fc.Arbitrary<LoadedHoop["loads"]> =>
  fc
    .record({
      bounds: fc.uniqueArray(part(0, 1), { minLength: 2, maxLength: 5 }),
      pressures: fc.array(size(900), { minLength: 4, maxLength: 4 }),
      weight: size(60),
      push: size(60),
      barWeight: fc.constantFrom(0, 1),
      points: fc.array(
        fc.record({ at: part(0, 1), x: size(500), z: size(500), couple: size(200) }),
        {
          maxLength: 2,
        },
      ),
    })
    .map(({ bounds, pressures, weight, push, barWeight, points }) => {
      const places = bounds.sort((a, b) => a - b).map((share) => share * line.length);
      return [
        ...places
          .slice(1)
          .map((to, i): readonly [HoopLoad, number] => [
            { kind: "normal", from: places[i] as number, to },
            pressures[i] as number,
          ]),
        [{ kind: "weight" }, weight] as const,
        [{ kind: "push" }, push] as const,
        [{ kind: "bar-weight" }, barWeight] as const,
        ...points.map(({ at, x, z, couple }): readonly [HoopLoad, number] => [
          { kind: "point", s: at * line.length, x, z, couple },
          1,
        ]),
      ];
    });

export const loadedHoop: fc.Arbitrary<LoadedHoop> = arbitraryHoop.chain((hoop) =>
  fc.record({ hoop: fc.constant(hoop), feet: arbitraryFeet, loads: arbitraryLoads(hoop.line) }),
);

/** A hoop without a hinge whose right foot slides. */
export const slidingHoop: fc.Arbitrary<LoadedHoop> = loadedHoop.map((one) => ({
  ...one,
  hoop: { ...one.hoop, hinges: [] },
  feet: rightRoller,
}));
