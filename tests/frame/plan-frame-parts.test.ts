import { type FrameNode, solvePlanFrame } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { balanceOf } from "../../packages/frame/src/plan/racking/frame-balance.ts";
import { frameElements } from "../../packages/frame/src/plan/racking/frame-element.ts";
import {
  heldUnknowns,
  reachOf,
  unknownsOf,
} from "../../packages/frame/src/plan/racking/frame-equations.ts";
import { sectionsOf } from "../../packages/frame/src/plan/racking/frame-sections.ts";
import { refusalOf } from "./plan-codes.ts";

const beam = (from: number, to: number) => ({ from, to, axial: 1e6, bending: 1e5 });
const bar = (from: number, to: number, axial = 1e6) => ({ from, to, axial, bending: 0 });
const none = { nodes: [], members: [] };

describe("the equations of a frame", () => {
  const nodes: FrameNode[] = [
    { x: 4, y: 3 },
    { x: -5, y: 0, held: { y: true } },
    { x: 0, y: 3 },
    { x: 2, y: -6 },
    { x: -9, y: 3 },
  ];

  test("nodes follow each other along y, and along x where y is the same", () => {
    expect([...unknownsOf(nodes)]).toEqual([12, 3, 9, 0, 6]);
    expect([...unknownsOf(nodes.slice(0, 3))]).toEqual([6, 0, 3]);
  });

  test("the band reaches as far as a member's last unknown is from its first", () => {
    const unknowns = unknownsOf(nodes);
    expect(reachOf([beam(0, 2), beam(4, 2)], unknowns)).toBe(5);
    expect(reachOf([beam(0, 2), beam(0, 1)], unknowns)).toBe(11);
    expect(reachOf([], unknowns)).toBe(2);
  });

  test("held are what is held, and turns where bars alone meet", () => {
    const unknowns = unknownsOf(nodes);
    const members = [beam(0, 2), bar(2, 1)];
    expect(heldUnknowns(nodes.slice(0, 3), members, unknowns)).toEqual(new Set([3 + 1, 3 + 2]));
  });
});

test("the greatest force is among the loads or at a member's end, of either sense", () => {
  const greatest = (applied: readonly number[], way: number) => {
    const nodes = [
      { x: 0, y: 0 },
      { x: 2, y: 0 },
    ];
    const solved = Float64Array.from([0, 0, 0, way, 0, 0]);
    const elements = frameElements(nodes, [bar(0, 1, 400)], []);
    return balanceOf(elements, unknownsOf(nodes), Float64Array.from(applied), solved).greatest;
  };
  expect(greatest([0, 0, 0, -500, 300, 0], 2)).toBe(500);
  expect(greatest([0, 0, 0, 500, 0, 0], -3)).toBe(600);
});

describe("sections of a beam", () => {
  /** Places of the sections of a beam of 4 m, by its line load and the shear at its first end. */
  const places = (from: number, to: number, shear: number) => {
    const nodes = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
    ];
    const line = { member: 0, along: 0, acrossFrom: from, acrossTo: to };
    const [element] = frameElements(nodes, [beam(0, 1)], [line]);
    if (!element) throw new Error("no element");
    return sectionsOf(element, [0, shear, 0]).map(({ at }) => at);
  };

  test("the shear is nought at an end: it is told once", () => {
    expect(places(2, 2, 0)).toEqual([0, 4]);
    expect(places(2, 2, -8)).toEqual([0, 4]);
    expect(places(2, 2, -4)).toEqual([0, 2, 4]);
  });

  test("they rise along the beam, where the shear only comes near to nought, too", () => {
    // Shear 3 - 2 x + x^2 / 2 is 1 at least.
    const near = places(-2, 2, 3);
    expect(near).toEqual([...near].sort((a, b) => a - b));
    // Shear 3 - 4 x + x^2 is nought at 1 and at 3.
    expect(places(-4, 4, 3)).toEqual([0, 1, 3, 4]);
  });
});

describe("outcomes", () => {
  /** A stiff bar behind a soft one, pulled along. */
  const inSeries = (soft: number, stiff: number, load = 700 / 3) =>
    solvePlanFrame(
      [
        { x: 0, y: 0, held: { y: true } },
        { x: 1, y: 0, held: { y: true } },
        { x: 2, y: 0, held: { x: true, y: true } },
      ],
      [bar(0, 1, stiff), bar(1, 2, soft)],
      { ...none, nodes: [{ node: 0, x: load, y: 0, couple: 0 }] },
    ).outcome;

  test("a stiffness that is a hundred-billionth of what meets it holds nothing", () => {
    expect(inSeries(1, 1e11 - 1, 0)).toBe("not-held");
    expect(inSeries(2, 1e11 - 2, 0)).toBe("held");
  });

  test("where ways are too great to tell the stretch of a bar there is no result", () => {
    // It goes 0.23 m, counted in steps of 2^-55 m: one step more is 0.0003 N in the stiff bar.
    expect(inSeries(1000, 1e13)).toBe("unsettled");
    expect(inSeries(1e7, 1e13)).toBe("held");
  });
});

describe("refusals tell what was given and what is expected", () => {
  const nodes = [
    { x: 0, y: 0, held: { x: true, y: true, turn: true } },
    { x: 2, y: 0 },
  ];
  const complaints = (loads: Parameters<typeof solvePlanFrame>[2], members = [beam(0, 1)]) =>
    refusalOf(() => solvePlanFrame(nodes, members, loads)).complaints;
  const infinite = Number.POSITIVE_INFINITY;

  test("loads that are no finite numbers", () => {
    const onNode = { node: 1, x: 0, y: 0, couple: 0 };
    for (const part of [{ x: infinite }, { y: infinite }, { couple: infinite }]) {
      const found = complaints({ ...none, nodes: [{ ...onNode, ...part }] });
      expect(found).toMatchObject([{ key: "loads.nodes.0", given: "Infinity" }]);
    }
    const onMember = { member: 0, along: 0, acrossFrom: 0, acrossTo: 0 };
    for (const part of [{ along: infinite }, { acrossFrom: infinite }, { acrossTo: infinite }]) {
      const found = complaints({ ...none, members: [{ ...onMember, ...part }] });
      expect(found).toMatchObject([{ key: "loads.members.0", given: "Infinity" }]);
    }
  });

  test("a node that is not there", () => {
    expect(complaints(none, [beam(0, 2)])).toMatchObject([
      { key: "members.0.to", given: "2", expected: "a whole number from 0 to 1" },
    ]);
  });
});
