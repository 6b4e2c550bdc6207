import { type Hoop, HoopFrame, type HoopLoad, hoopLine } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { assembleStiffness } from "../../packages/frame/src/hoop/assemble.ts";
import { JointSolver } from "../../packages/frame/src/hoop/joint-solver.ts";
import { greatestLeftOver } from "../../packages/frame/src/hoop/left-over.ts";
import { type FrameParts, noLoad, recover } from "../../packages/frame/src/hoop/recover.ts";
import { expectNear } from "./held-rail.ts";
import { bareHoop, normalOn, portal, segment } from "./hoop-simple.ts";

const tube = { A: 5e-4, I: 2e-7, E: 2e11 };
const [EA, EI] = [tube.E * tube.A, tube.E * tube.I];

interface Prepared {
  readonly frame: HoopFrame;
  readonly parts: FrameParts;
}

/** What a frame is solved from, of its own: a test may spoil it. */
function prepared(hoop: Hoop, loads: readonly HoopLoad[] = []): Prepared {
  const frame = new HoopFrame(hoop, loads);
  return { frame, parts: (frame as unknown as { parts: FrameParts }).parts };
}

const scale = (numbers: Float64Array, factor: number): void => {
  numbers.set(numbers.map((one) => one * factor));
};

/** A column of two metres, bent by nothing but its feet. */
const column = bareHoop(
  hoopLine([{ kind: "straight", from: { x: 0, z: 0 }, to: { x: 0, z: 2 } }]),
  tube,
);

/** All of a symmetric matrix from its upper part. */
const whole = (upper: Float64Array, size: number): number[][] =>
  Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => upper[Math.min(i, j) * size + Math.max(i, j)] as number),
  );

const stiffnessOf = ({ unknowns, elements, bars }: FrameParts): number[][] =>
  whole(assembleStiffness(unknowns, elements, bars), unknowns.free + 6);

describe("the stiffness of joints and feet", () => {
  test("a column: that of the textbooks", () => {
    const [across, turning] = [(12 * EI) / 8, (6 * EI) / 4];
    const along = EA / 2;
    expectNear(
      stiffnessOf(prepared(column).parts).flat(),
      [
        [across, 0, -turning, -across, 0, -turning],
        [0, along, 0, 0, -along, 0],
        [-turning, 0, (4 * EI) / 2, turning, 0, (2 * EI) / 2],
        [-across, 0, turning, across, 0, turning],
        [0, -along, 0, 0, along, 0],
        [-turning, 0, (2 * EI) / 2, turning, 0, (4 * EI) / 2],
      ].flat(),
      1e-12,
    );
  });

  test("moved or turned as one stiff body, nothing resists", () => {
    const bar = { fromEnd: "rigid", toEnd: "pinned", section: tube, weight: 0 } as const;
    const joints = [
      { x: 0.4, z: 1.2 },
      { x: -0.7, z: 0.9 },
    ];
    const line = segment(3, 1.9);
    const { frame, parts } = prepared({
      line,
      section: tube,
      hinges: [0.3 * line.length],
      joints,
      bars: [
        { ...bar, from: { s: 0.2 * line.length }, to: { joint: 0 } },
        { ...bar, from: { joint: 0 }, to: { s: 0.7 * line.length }, toEnd: "rigid" },
        { ...bar, from: { s: 0.5 * line.length }, to: { joint: 1 } },
        { ...bar, from: { joint: 1 }, to: { s: line.length }, fromEnd: "pinned" },
        { ...bar, from: { joint: 1 }, to: { joint: 0 }, fromEnd: "pinned", toEnd: "rigid" },
      ],
    });
    const { free, nodeBreak, nodeMove, turnBefore, turnAfter, jointMove, jointTurn } =
      parts.unknowns;
    const [dx, dz, turn] = [0.3, -0.5, 0.7];
    const moved = new Array<number>(free + 6).fill(Number.NaN);
    const move = (at: number, x: number, z: number): void => {
      moved[at] = dx - turn * z;
      moved[at + 1] = dz + turn * x;
    };
    for (const [node, at] of nodeMove.entries()) {
      const place = nodeBreak[node] as number;
      move(at, frame.intervals.x[place] as number, frame.intervals.z[place] as number);
      moved[turnBefore[node] as number] = turn;
      moved[turnAfter[node] as number] = turn;
    }
    for (const [joint, { x, z }] of joints.entries()) {
      move(jointMove[joint] as number, x, z);
      if ((jointTurn[joint] as number) >= 0) moved[jointTurn[joint] as number] = turn;
    }
    // Four joints on the hoop, one of them with two turns; a free joint that turns and one that does not.
    expect(Array.from(jointTurn, (at) => at >= 0)).toEqual([true, false]);
    expect(free).toBe(4 * 3 + 1 + 3 + 2);
    const stiffness = stiffnessOf(parts);
    const most = Math.max(...stiffness.flat().map(Math.abs));
    const forces = stiffness.map((row) => row.reduce((sum, k, j) => sum + k * (moved[j] ?? 0), 0));
    expectNear(
      forces,
      forces.map(() => 0),
      1e-12,
      most,
    );
  });
});

test("what is left over at joints: the greatest, couples over the developed length", () => {
  const { unknowns } = prepared({ ...bareHoop(portal(4, 6), tube), hinges: [4] }).parts;
  // One joint: two movements and two turns, then the feet, which the ground holds.
  const greatest = (...left: number[]) => greatestLeftOver(unknowns, Float64Array.from(left));
  expect(greatest(0, 0, 0, 0, 9, 9, 9, 9, 9, 9)).toBe(0);
  expect(greatest(2, -3, 14, 28, 9, 9, 9, 9, 9, 9)).toBe(3);
  expect(greatest(1, 1, 14, -42, 9, 9, 9, 9, 9, 9)).toBe(3);
});

describe("how far a hoop, followed from joint to joint, ends beside its joints, by hand", () => {
  /** A column without stiffness, which its joints may leave as they will. */
  const limp = (hinges: readonly number[]): FrameParts => {
    const { parts } = prepared({ ...column, hinges }, [normalOn(0, 2)]);
    parts.elements.stiffness.fill(0);
    parts.elements.held.fill(0);
    parts.intervals.flexibility.fill(0);
    return parts;
  };
  const gapOf = (parts: FrameParts, load: number, ...displaced: number[]): number =>
    recover(parts, load, Float64Array.from(displaced), new Float64Array(parts.layout.size));

  test.each([
    ["moved as one", [3, 0, 0, 3, 0, 0], 0],
    ["turned as one", [0, 0, 0.5, -1, 0, 0.5], 0],
    ["parted sideways", [3, 0, 0, 4, 0, 0], 1 / 3],
    ["parted upward", [0, -3, 0, 0, -5, 0], 2 / 3],
    ["turned apart, over the length", [3, 0, 0, 3, 0, 0.25], 0.5 / 3],
    ["not moved at all", [0, 0, 0, 1, 0, 0], Infinity],
  ])("%s", (_, displaced, expected) => {
    expect(gapOf(limp([]), noLoad, ...displaced)).toBeCloseTo(expected, 12);
  });

  test("beside what its forces would bend a beam", () => {
    const parts = limp([]);
    const beam = (48 * EI) / 2 ** 3;
    const parted = [3 / beam, 0, 0, 4 / beam, 0, 0];
    // Eight newtons and what a newton a metre adds on two; their moment is less over the length.
    parts.elements.held.set([8, 0, 0]);
    expect(gapOf(parts, 0, ...parted)).toBeCloseTo(1 / (3 + 10), 12);
    // A couple of sixty and the load's two, over two metres.
    parts.elements.held.set([0, 0, 60]);
    expect(gapOf(parts, 0, ...parted)).toBeCloseTo(1 / (3 + 62 / 2), 12);
  });

  test("at any joint: the middle of a column, its movements and two turns first", () => {
    const below = [4, 0, 0, 0, 3, 0, 0, 4, 0, 0];
    const above = [3, 0, 0, 0, 3, 0, 0, 4, 0, 0];
    expect([below, above].map((moved) => gapOf(limp([1]), noLoad, ...moved))).toEqual([
      1 / 4,
      1 / 3,
    ]);
  });
});

describe("what the solver does not answer", () => {
  const legged = { ...bareHoop(portal(4, 6), tube), hinges: [4] };

  test("members that give otherwise than their stiffness says gape, and that is told", () => {
    const moved = (more: number): void => {
      const { frame, parts } = prepared(legged);
      scale(parts.intervals.flexibility, more);
      new JointSolver(frame, parts).moveFoot(0, new Float64Array(frame.size));
    };
    expect(() => moved(1)).not.toThrow();
    expect(() => moved(1 + 1e-7)).toThrow(/gapes/);
    expect(() => moved(Number.NaN)).toThrow(/gapes/);
  });

  test("joints that do not settle in five rounds: each leaves a thousandth, or a hundredth", () => {
    const { frame, parts } = prepared(legged, [normalOn(0, 4)]);
    const { elements, intervals } = parts;
    // Stiffer than what the solver has eliminated, so that each round goes too far by that part.
    const loaded = (more: number): void => {
      const solver = new JointSolver(frame, parts);
      scale(elements.stiffness, more);
      scale(intervals.flexibility, 1 / more);
      solver.load(0, new Float64Array(frame.size));
    };
    expect(() => loaded(1.001)).not.toThrow();
    expect(() => loaded(1.01)).toThrow(/mechanism/);
  });
});
