import {
  type BarEnd,
  type BarJoint,
  type FeetSupport,
  type Hoop,
  type HoopBar,
  type HoopLine,
  type HoopLoad,
  hoopForcesAt,
  hoopLine,
  hoopShapeAt,
  placeAtHeight,
} from "@hoopstay/frame";
import { describe, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { normalOn, type SolvedHoop, solvedHoop } from "./hoop-simple.ts";
import { carriedOn, type StraightModel, straightModel } from "./hoop-straight-model.ts";

const tube = { A: 5.23e-4, I: 2.16e-7, E: 2e11 };
const light = { A: 2.1e-4, I: 3.1e-8, E: 2e11 };

const legs = (radius: number, leg: number): HoopLine =>
  hoopLine([
    { kind: "straight", from: { x: -radius, z: 0.2 }, to: { x: -radius, z: 0.2 + leg } },
    { kind: "arc", centre: { x: 0, z: 0.2 + leg }, radius, fromAngle: Math.PI, toAngle: 0 },
    { kind: "straight", from: { x: radius, z: 0.2 + leg }, to: { x: radius, z: 0.2 } },
  ]);

/** A pointed arch that springs vertically and meets in a kink, and stands on nothing else. */
function pointed(span: number, rise: number): HoopLine {
  const radius = (rise ** 2 + span ** 2 / 4) / span;
  const centre = radius - span / 2;
  const crown = Math.acos(centre / radius);
  return hoopLine([
    {
      kind: "arc",
      centre: { x: centre, z: 0 },
      radius,
      fromAngle: Math.PI,
      toAngle: Math.PI - crown,
    },
    { kind: "arc", centre: { x: -centre, z: 0 }, radius, fromAngle: crown, toAngle: 0 },
  ]);
}

const bar = (from: BarJoint, to: BarJoint, fromEnd: BarEnd, toEnd: BarEnd): HoopBar => ({
  from,
  to,
  fromEnd,
  toEnd,
  section: light,
  weight: 16,
});

const wind = (line: HoopLine): (readonly [HoopLoad, number])[] => [
  [normalOn(0, 0.21 * line.length), 310],
  [normalOn(0.21 * line.length, 0.5 * line.length), -690],
  [normalOn(0.5 * line.length, line.length), -340],
  [{ kind: "weight" }, 40],
  [{ kind: "push" }, 90],
  [{ kind: "bar-weight" }, 1],
  [{ kind: "point", s: 0.37 * line.length, x: 120, z: -260, couple: 75 }, 1.3],
];

interface Example {
  readonly name: string;
  readonly hoop: Hoop;
  readonly feet: FeetSupport;
}

function kneeBraced(): Example {
  const line = legs(2.4, 1.3);
  const [low, high] = (["left", "right"] as const).map((side) => placeAtHeight(line, 0.8, side));
  const [a, b] = (["left", "right"] as const).map((side) => placeAtHeight(line, 2.9, side));
  const bars = [
    bar({ s: low as number }, { s: a as number }, "rigid", "rigid"),
    bar({ s: high as number }, { s: b as number }, "rigid", "pinned"),
  ];
  const feet = [3e5, 2e6, 4e3, 2e5, 5e6, 9e3] as const;
  return { name: "knee braces, springs under both feet", hoop: hoopOf(line, bars), feet };
}

function trussed(): Example {
  const line = legs(3.1, 0.7);
  const joints = [
    { x: -1, z: 2.2 },
    { x: 1.1, z: 2.2 },
  ];
  const [left, right] = (["left", "right"] as const).map((side) => placeAtHeight(line, 2.2, side));
  const bars = [
    bar({ s: left as number }, { joint: 0 }, "pinned", "rigid"),
    bar({ joint: 0 }, { joint: 1 }, "rigid", "rigid"),
    bar({ joint: 1 }, { s: right as number }, "rigid", "pinned"),
    bar({ s: 0.4 * line.length }, { joint: 0 }, "pinned", "pinned"),
    bar({ joint: 0 }, { s: 0.5 * line.length }, "pinned", "pinned"),
    bar({ s: 0.5 * line.length }, { joint: 1 }, "pinned", "pinned"),
    bar({ s: 0.61 * line.length }, { joint: 1 }, "pinned", "pinned"),
  ];
  const held = Number.POSITIVE_INFINITY;
  const feet = [held, held, 0, 8e5, held, 5e3] as const;
  return { name: "a tie as a beam under truss bars", hoop: hoopOf(line, bars, joints), feet };
}

function hinged(): Example {
  const line = pointed(6, 3.9);
  const bolts = (["left", "right"] as const).map((side) => placeAtHeight(line, 0.12, side));
  const [left, right] = (["left", "right"] as const).map((side) => placeAtHeight(line, 2.4, side));
  const ends = [{ s: left as number }, { s: right as number }] as const;
  const hoop = hoopOf(line, [
    bar(...ends, "pinned", "pinned"),
    bar({ s: 0 }, ends[1], "rigid", "pinned"),
  ]);
  const hinges = [...bolts, line.length / 2];
  const held = Number.POSITIVE_INFINITY;
  return {
    name: "hinges at bolts and crown, stubs clamped on a rail, a tie and a long brace",
    hoop: { ...hoop, hinges },
    feet: [9e5, held, 2e4, 7e5, held, 3e4],
  };
}

const hoopOf = (line: HoopLine, bars: HoopBar[], joints: Hoop["joints"] = []): Hoop => ({
  line,
  section: tube,
  hinges: [],
  joints,
  bars,
});

/** What the model of straight elements lists, from the solver. */
function listed({ frame, response }: SolvedHoop): StraightModel {
  const places = Array.from(frame.breaks);
  const shape = places.map((s) => hoopShapeAt(frame, response, s));
  const bars = frame.hoop.bars.map((_, i) => response.slice(frame.barAt(i), frame.barAt(i) + 6));
  return {
    feet: Array.from(response.slice(0, 6)),
    bars: bars.flatMap((one) => Array.from(one)),
    shape: shape.flatMap(({ x, z, turn }) => [x, z, turn]),
    moments: places.map((s) => hoopForcesAt(frame, response, s).M),
  };
}

describe("straight elements by the common stiffness method, carried on to none", () => {
  test.each([kneeBraced(), trussed(), hinged()].map((one) => [one.name, one] as const))(
    "%s",
    (_, { hoop, feet }) => {
      const loads = wind(hoop.line);
      const solved = solvedHoop(hoop, feet, loads);
      const breaks = Array.from(solved.frame.breaks);
      const [coarse, fine] = [16, 32].map((parts) =>
        straightModel(hoop, breaks, feet, loads, parts),
      ) as [StraightModel, StraightModel];
      const expected = carriedOn(coarse, fine);
      const found = listed(solved);
      // The step leaves 1e-7; without it 32 elements a part are off by 1e-4.
      for (const key of ["feet", "bars", "shape", "moments"] as const) {
        expectNear(found[key], expected[key], 1e-6);
      }
    },
  );
});
