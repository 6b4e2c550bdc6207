import { Refusal } from "@hoopstay/core";
import {
  type FrameLoads,
  type FrameMember,
  type FrameNode,
  type HeldFrame,
  solvePlanFrame,
} from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seed } from "./hoop-arbitrary.ts";

const [EA, EI, L] = [4e6, 3e5, 5];
const none: FrameLoads = { nodes: [], members: [] };
const clamped = { x: true, y: true, turn: true };
const beam = (from: number, to: number): FrameMember => ({ from, to, axial: EA, bending: EI });
const bar = (from: number, to: number): FrameMember => ({ from, to, axial: EA, bending: 0 });
const onNode = (node: number, x: number, y: number, couple = 0): FrameLoads => ({
  ...none,
  nodes: [{ node, x, y, couple }],
});
const across = (acrossFrom: number, acrossTo: number, along = 0): FrameLoads => ({
  ...none,
  members: [{ member: 0, along, acrossFrom, acrossTo }],
});

function held(
  nodes: readonly FrameNode[],
  members: readonly FrameMember[],
  loads: FrameLoads,
): HeldFrame {
  const solved = solvePlanFrame(nodes, members, loads);
  if (solved.outcome !== "held") throw new Error(solved.outcome);
  return solved;
}

const near = (values: readonly number[], size = 1) =>
  values.map((value) => expect.closeTo(value, 9 - Math.round(Math.log10(size))));
const three = (of: Float64Array, node: number) => [...of.subarray(3 * node, 3 * node + 3)];

/** A beam in some direction, and (along, across to the left, turn) seen with it. */
function turned(angle: number) {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const seen = ([x, y, turn]: readonly number[]) => {
    const [a, b] = [x ?? NaN, y ?? NaN];
    return [c * a + s * b, c * b - s * a, turn ?? NaN];
  };
  const end = { x: 1 + L * c, y: 2 + L * s };
  const load = (along: number, left: number, couple: number) =>
    onNode(1, c * along - s * left, s * along + c * left, couple);
  return { end, seen, load };
}

describe.each([0, 0.7, Math.PI / 2, 2.5, -1.1])("a cantilever toward %d rad", (angle) => {
  const { end, seen, load } = turned(angle);
  const solve = (loads: FrameLoads) => {
    const solved = held([{ x: 1, y: 2, held: clamped }, end], [beam(0, 1)], loads);
    return {
      tip: seen(three(solved.displacements, 1)),
      clamp: seen(three(solved.reactions, 0)),
      free: three(solved.reactions, 1),
      ends: [solved.sections[0]?.[0], solved.sections[0]?.at(-1)],
    };
  };

  test("pulled, pushed across and turned at its tip", () => {
    const [P, Q, C] = [700, -90, 40];
    const { tip, clamp, free, ends } = solve(load(P, Q, C));
    expect(tip).toEqual(
      near([
        (P * L) / EA,
        (Q * L ** 3) / (3 * EI) + (C * L * L) / (2 * EI),
        (Q * L * L) / (2 * EI) + (C * L) / EI,
      ]),
    );
    expect(clamp).toEqual(near([-P, -Q, -Q * L - C], 100));
    expect(free).toEqual([0, 0, 0]);
    expect([ends[0]?.at, ends[0]?.axial, ends[0]?.shear, ends[0]?.moment]).toEqual(
      near([0, P, -Q, Q * L + C], 100),
    );
    expect([ends[1]?.at, ends[1]?.axial, ends[1]?.shear, ends[1]?.moment]).toEqual(
      near([L, P, -Q, C], 100),
    );
  });

  test.each([
    ["even", 60, 60, 1 / 8, 1 / 6, 60 * L, (60 * L * L) / 2],
    ["rising to its tip", 0, 60, 11 / 120, 1 / 8, 30 * L, (60 * L * L) / 3],
    ["falling to its tip", 60, 0, 1 / 30, 1 / 24, 30 * L, (60 * L * L) / 6],
  ])("a line load across, %s", (_, from, to, way, turn, whole, moment) => {
    const { tip, clamp, ends } = solve(across(from, to));
    expect(tip).toEqual(near([0, (way * 60 * L ** 4) / EI, (turn * 60 * L ** 3) / EI]));
    expect(clamp).toEqual(near([0, -whole, -moment], 100));
    expect([ends[0]?.shear, ends[0]?.moment]).toEqual(near([-whole, moment], 100));
    expect([ends[1]?.shear, ends[1]?.moment]).toEqual(near([0, 0], 100));
  });

  test("a line load along", () => {
    const { tip, clamp, ends } = solve(across(0, 0, 80));
    expect(tip).toEqual(near([(80 * L * L) / (2 * EA), 0, 0]));
    expect(clamp).toEqual(near([-80 * L, 0, 0], 100));
    expect([ends[0]?.axial, ends[1]?.axial]).toEqual(near([80 * L, 0], 100));
  });
});

describe("a beam on two supports", () => {
  const peaks = (loads: FrameLoads, holds: readonly [FrameNode["held"], FrameNode["held"]]) => {
    const nodes = [
      { x: 0, y: 0, held: holds[0] ?? {} },
      { x: L, y: 0, held: holds[1] ?? {} },
    ];
    return held(nodes, [beam(0, 1)], loads).sections[0]?.map(({ at, moment }) => [at, moment]);
  };
  const simple = [{ x: true, y: true }, { y: true }] as const;
  const q = 60;

  test("even: q L^2 / 8 in the middle; q L^2 / 24 between clamps, q L^2 / 12 at them", () => {
    for (const way of [1, -1]) {
      expect(peaks(across(way * q, way * q), simple)).toEqual([
        near([0, 0], 100),
        near([L / 2, (-way * q * L * L) / 8], 100),
        near([L, 0], 100),
      ]);
      expect(peaks(across(way * q, way * q), [clamped, clamped])).toEqual([
        near([0, (way * q * L * L) / 12], 100),
        near([L / 2, (-way * q * L * L) / 24], 100),
        near([L, (way * q * L * L) / 12], 100),
      ]);
    }
  });

  test("rising from nought: q L^2 / (9 sqrt 3) at L / sqrt 3; clamped q L^2 / 30 and q L^2 / 20", () => {
    const at = L / Math.sqrt(3);
    const most = (q * L * L) / (9 * Math.sqrt(3));
    expect(peaks(across(0, q), simple)?.[1]).toEqual(near([at, -most], 100));
    expect(peaks(across(q, 0), simple)?.[1]).toEqual(near([L - at, -most], 100));
    const fixed = peaks(across(0, q), [clamped, clamped]);
    expect(fixed?.[0]).toEqual(near([0, (q * L * L) / 30], 100));
    expect(fixed?.at(-1)).toEqual(near([L, (q * L * L) / 20], 100));
  });

  test("from one side to the other: a peak in each half, in order", () => {
    // Shear q (L / 6 - x + x^2 / L) is nought at L / 2 (1 -+ 1 / sqrt 3).
    const moment = (x: number) => q * ((L * x) / 6 - (x * x) / 2 + x ** 3 / (3 * L));
    const [a, b] = [-1, 1].map((way) => (L / 2) * (1 + way / Math.sqrt(3))) as [number, number];
    for (const way of [1, -1]) {
      expect(peaks(across(-way * q, way * q), simple)).toEqual([
        near([0, 0], 100),
        near([a, way * moment(a)], 100),
        near([b, way * moment(b)], 100),
        near([L, 0], 100),
      ]);
    }
  });

  test("no load between the ends: no peak there", () => {
    expect(peaks(none, simple)).toEqual([near([0, 0]), near([L, 0])]);
    expect(peaks(onNode(1, 0, 0, 50), simple)).toHaveLength(2);
  });
});

describe("frames of several members", () => {
  test("two bars to one joint: P / (2 sin) in each, P l / (2 E A sin^2) down", () => {
    const nodes = [
      { x: 0, y: 3, held: { x: true, y: true } },
      { x: 8, y: 3, held: { x: true, y: true } },
      { x: 4, y: 0 },
    ];
    const { displacements, reactions, sections } = held(
      nodes,
      [bar(0, 2), bar(2, 1)],
      onNode(2, 0, -900),
    );
    expect(three(displacements, 2)).toEqual(near([0, (-900 * 5) / (2 * EA * 0.6 ** 2), 0]));
    expect(sections.map(([first]) => first?.axial)).toEqual(near([750, 750], 100));
    expect(three(reactions, 0)).toEqual(near([-600, 450, 0], 100));
    expect(three(reactions, 1)).toEqual(near([600, 450, 0], 100));
  });

  test("a portal on clamped feet, pushed at its top", () => {
    // Stiff along: feet P h / 2 (3 k + 1) / (6 k + 1), corners P h / 2 3 k / (6 k + 1).
    const [h, span, P] = [4, 6, 1000];
    const stiff = (from: number, to: number): FrameMember => ({
      from,
      to,
      axial: 1e10,
      bending: EI,
    });
    const nodes = [
      { x: 0, y: 0, held: clamped },
      { x: 0, y: h },
      { x: span, y: h },
      { x: span, y: 0, held: clamped },
    ];
    const { reactions, sections } = held(
      nodes,
      [stiff(0, 1), stiff(1, 2), stiff(2, 3)],
      onNode(1, P, 0),
    );
    const k = h / span;
    const [foot, corner] = [(3 * k + 1) / (6 * k + 1), (3 * k) / (6 * k + 1)].map(
      (part) => (part * P * h) / 2,
    ) as [number, number];
    const lift = (2 * corner) / span;
    const close = (...values: number[]) => values.map((value) => expect.closeTo(value, 1));
    expect(three(reactions, 0)).toEqual(close(-P / 2, -lift, foot));
    expect(three(reactions, 3)).toEqual(close(-P / 2, lift, foot));
    expect(sections[1]?.map(({ moment }) => Math.abs(moment))).toEqual(close(corner, corner));
  });

  test("loads on one place add up, on nodes and on members", () => {
    const nodes = [
      { x: 0, y: 0, held: clamped },
      { x: L, y: 0 },
    ];
    const [once, twice] = [1, 2].map((times) => {
      const each = { node: 1, x: 3, y: 40, couple: 5 };
      const line = { member: 0, along: 7, acrossFrom: 20, acrossTo: 30 };
      const loads = {
        nodes: Array.from({ length: times }, () => each),
        members: Array.from({ length: times }, () => line),
      };
      return three(held(nodes, [beam(0, 1)], loads).displacements, 1);
    });
    expect(twice).toEqual(near((once ?? []).map((one) => 2 * one)));
  });

  test("mechanisms are told as such", () => {
    const pinned = { x: true, y: true };
    const square = [
      { x: 0, y: 0, held: pinned },
      { x: 4, y: 0, held: pinned },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ];
    const sides = [bar(0, 3), bar(3, 2), bar(2, 1)];
    expect(solvePlanFrame(square, sides, none).outcome).toBe("not-held");
    expect(solvePlanFrame(square, [...sides, bar(0, 2)], none).outcome).toBe("held");
    const loose = [
      { x: 0, y: 0, held: { x: true, y: true } },
      { x: 1, y: 0 },
    ];
    expect(solvePlanFrame(loose, [beam(0, 1)], none).outcome).toBe("not-held");
    const turn = [
      { x: 0, y: 0, held: { x: true, y: true, turn: true } },
      { x: 1, y: 0 },
    ];
    expect(solvePlanFrame(turn, [beam(0, 1)], none).outcome).toBe("held");
  });
});

describe(`laws of plane frames (seed ${seed})`, () => {
  const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const size = (most: number) => fc.integer({ min: -most, max: most });
  const place = fc.record({ x: double(-0.4, 0.4), y: double(-0.4, 0.4) });
  /** Two by three joints, each off its own place, joined all round; two of them held. */
  const frames = fc
    .record({
      off: fc.array(place, { minLength: 6, maxLength: 6 }),
      bending: fc.array(double(1e4, 1e6), { minLength: 7, maxLength: 7 }),
      axial: fc.array(double(1e5, 1e7), { minLength: 9, maxLength: 9 }),
      loads: fc.array(
        fc.record({ node: fc.nat(5), x: size(900), y: size(900), couple: size(300) }),
        { maxLength: 4 },
      ),
      lines: fc.array(
        fc.record({ member: fc.nat(6), along: size(50), acrossFrom: size(90), acrossTo: size(90) }),
        { maxLength: 4 },
      ),
    })
    .map(({ off, bending, axial, loads, lines }) => {
      const nodes = off.map(({ x, y }, i): FrameNode => {
        const at = { x: 2 * (i % 2) + x, y: 2 * Math.floor(i / 2) + y };
        if (i === 0) return { ...at, held: { x: true, y: true } };
        return i === 5 ? { ...at, held: { x: true } } : at;
      });
      const beams = [
        [0, 1],
        [1, 3],
        [3, 5],
        [4, 5],
        [4, 2],
        [2, 0],
        [2, 3],
      ].map(([from, to], i) => ({
        from: from ?? NaN,
        to: to ?? NaN,
        axial: axial[i] ?? NaN,
        bending: bending[i] ?? NaN,
      }));
      const bars = [
        { from: 0, to: 3, axial: axial[7] ?? NaN, bending: 0 },
        { from: 5, to: 2, axial: axial[8] ?? NaN, bending: 0 },
      ];
      return { nodes, members: [...beams, ...bars], loads: { nodes: loads, members: lines } };
    });
  const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
    fc.assert(law, { seed, numRuns: 100 });
  const numbers = ({ displacements, reactions, sections }: HeldFrame) => ({
    displacements: [...displacements],
    reactions: [...reactions],
    ends: sections.flatMap((all) => [all[0], all.at(-1)]),
  });
  const expectAlike = (found: readonly number[], expected: readonly number[], most: number) => {
    const off = found.map((one, i) => Math.abs(one - (expected[i] ?? NaN)));
    expect(Math.max(0, ...off)).toBeLessThanOrEqual(1e-8 * most);
  };
  const greatest = (values: readonly number[]) => Math.max(1e-9, ...values.map(Math.abs));

  test("what holds it balances the loads, and gives where it holds only", () => {
    holds(
      fc.property(frames, ({ nodes, members, loads }) => {
        const { reactions } = held(nodes, members, loads);
        let [x, y, couple, most] = [0, 0, 0, 1];
        const add = (at: { x: number; y: number }, fx: number, fy: number, turning = 0) => {
          x += fx;
          y += fy;
          couple += at.x * fy - at.y * fx + turning;
          most += Math.abs(fx) + Math.abs(fy) + Math.abs(turning);
        };
        for (const [i, node] of nodes.entries()) {
          const [fx, fy, turning] = three(reactions, i) as [number, number, number];
          if (!node.held?.x) expect(fx).toBe(0);
          if (!node.held?.y) expect(fy).toBe(0);
          expect(turning).toBe(0);
          add(node, fx, fy, turning);
        }
        for (const load of loads.nodes)
          add(nodes[load.node] as FrameNode, load.x, load.y, load.couple);
        for (const { member, along, acrossFrom, acrossTo } of loads.members) {
          const { from, to } = members[member] as FrameMember;
          const [a, b] = [nodes[from] as FrameNode, nodes[to] as FrameNode];
          const [dx, dy] = [b.x - a.x, b.y - a.y];
          const at = (share: number) => ({ x: a.x + share * dx, y: a.y + share * dy });
          // An even load stands in the middle, one rising from nought at two thirds.
          add(at(1 / 2), along * dx - acrossFrom * dy, along * dy + acrossFrom * dx);
          const rise = (acrossTo - acrossFrom) / 2;
          add(at(2 / 3), -rise * dy, rise * dx);
        }
        expectAlike([x, y, couple], [0, 0, 0], 10 * most);
      }),
    );
  });

  test("turned as a whole, or its members run the other way, it carries the same", () => {
    holds(
      fc.property(frames, ({ nodes, members, loads }) => {
        const plain = numbers(held(nodes, members, loads));
        const back = numbers(
          held(
            nodes,
            members.map(({ from, to, ...own }) => ({ ...own, from: to, to: from })),
            {
              nodes: loads.nodes,
              members: loads.members.map(({ member, along, acrossFrom, acrossTo }) => ({
                member,
                along: -along,
                acrossFrom: -acrossTo,
                acrossTo: -acrossFrom,
              })),
            },
          ),
        );
        expectAlike(back.displacements, plain.displacements, greatest(plain.displacements));
        expectAlike(back.reactions, plain.reactions, greatest(plain.reactions) + 100);
        const axial = plain.ends.map((end) => end?.axial ?? NaN);
        const moments = plain.ends.map((end) => end?.moment ?? NaN);
        const swapped = (of: readonly number[]) =>
          of.map((_, i) => of[i % 2 === 0 ? i + 1 : i - 1] ?? NaN);
        const most = greatest([...axial, ...moments]) + 100;
        expectAlike(
          back.ends.map((end) => end?.axial ?? NaN),
          swapped(axial),
          most,
        );
        expectAlike(
          back.ends.map((end) => -(end?.moment ?? NaN)),
          swapped(moments),
          most,
        );
      }),
    );
  });

  test("one load works as much on the ways of another as that on the ways of the first", () => {
    const one = fc.record({ node: fc.nat(5), x: size(900), y: size(900), couple: size(300) });
    holds(
      fc.property(frames, one, one, ({ nodes, members }, a, b) => {
        const ways = [a, b].map((load) => held(nodes, members, { nodes: [load], members: [] }));
        const work = (load: typeof a, of: HeldFrame | undefined) => {
          const [x, y, turn] = three(of?.displacements ?? new Float64Array(), load.node) as [
            number,
            number,
            number,
          ];
          return load.x * x + load.y * y + load.couple * turn;
        };
        const [there, again] = [work(a, ways[1]), work(b, ways[0])];
        const most = Math.sqrt(Math.abs(work(a, ways[0]) * work(b, ways[1])));
        expectAlike([there], [again], most + 1e-9);
      }),
    );
  });
});

describe("frames and loads that cannot be computed", () => {
  const nodes = [
    { x: 0, y: 0, held: clamped },
    { x: 4, y: 0 },
    { x: 4, y: 3 },
  ];
  const members = [beam(0, 1), bar(1, 2), bar(2, 0)];
  const told = (of: {
    nodes?: readonly FrameNode[];
    members?: readonly FrameMember[];
    loads?: Partial<FrameLoads>;
  }) => {
    try {
      solvePlanFrame(of.nodes ?? nodes, of.members ?? members, { ...none, ...of.loads });
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      return error.complaints.map(({ code, key, given }) => `${code} ${key} ${given}`);
    }
    return [];
  };
  const load = (node: number, x = 1, y = 1, couple = 0) => ({ node, x, y, couple });
  const line = (member: number, along = 1, acrossFrom = 1, acrossTo = 1) => ({
    member,
    along,
    acrossFrom,
    acrossTo,
  });

  test("as they are", () => {
    expect(
      told({ loads: { nodes: [load(0), load(1, 1, 1, 5), load(2)], members: [line(0)] } }),
    ).toEqual([]);
  });

  test("joints nowhere", () => {
    const nowhere = [nodes[0], { x: Number.NaN, y: Infinity }, nodes[2]] as FrameNode[];
    expect(told({ nodes: nowhere, members: [bar(2, 0)] })).toEqual([
      "not-a-number nodes.1.x NaN",
      "not-a-number nodes.1.y Infinity",
    ]);
  });

  test("members of nothing, or between joints that there are not", () => {
    const bad = [
      { from: -1, to: 3, axial: 1, bending: 0 },
      { from: 0.5, to: 2, axial: 1, bending: 0 },
      { from: 0, to: 1, axial: 0, bending: -1 },
      { from: 2, to: 2, axial: EA, bending: EI },
    ];
    expect(told({ members: bad })).toEqual([
      "out-of-range members.0.from -1",
      "out-of-range members.0.to 3",
      "out-of-range members.1.from 0.5",
      "not-positive members.2.axial 0",
      "out-of-range members.2.bending -1",
      "not-positive members.3.length 0",
    ]);
  });

  test("loads on what there is not, of no number, or on what does not bend", () => {
    expect(
      told({
        loads: {
          nodes: [
            load(3),
            load(1, Number.NaN),
            load(1, 1, Infinity),
            load(1, 1, 1, NaN),
            load(2, 1, 1, 5),
          ],
          members: [
            line(3),
            line(-1),
            line(0, Number.NaN),
            line(0, 1, NaN),
            line(0, 1, 1, NaN),
            line(1),
          ],
        },
      }),
    ).toEqual([
      "out-of-range loads.nodes.0.node 3",
      "not-a-number loads.nodes.1 NaN",
      "not-a-number loads.nodes.2 Infinity",
      "not-a-number loads.nodes.3 NaN",
      "sizes-disagree loads.nodes.4 5",
      "out-of-range loads.members.0.member 3",
      "out-of-range loads.members.1.member -1",
      "not-a-number loads.members.2 NaN",
      "not-a-number loads.members.3 NaN",
      "not-a-number loads.members.4 NaN",
      "sizes-disagree loads.members.5 1",
    ]);
  });
});
