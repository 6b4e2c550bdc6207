import { Refusal } from "@hoopstay/core";
import { RailSolver, type RailSupport, railReactions } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { railNodes } from "../../packages/frame/src/rail/rail-nodes.ts";
import { rigidAt } from "./held-rail.ts";

const rail = { length: 6, stiffness: 2e5 };
const none = { uniform: 0, forces: [], couples: [] };

const codesOf = (work: () => unknown): string[] => {
  try {
    work();
  } catch (error) {
    if (error instanceof Refusal) return error.complaints.map(({ code, key }) => `${code} ${key}`);
    throw error;
  }
  return [];
};

describe("refusals of a rail", () => {
  test("all complaints about rail and supports at once", () => {
    const supports: RailSupport[] = [
      { kind: "anchor", x: 7, stiffness: 0 },
      { kind: "two-way", x: 1, stiffness: 1e5, cap: 10 },
      { kind: "ground", x: Number.NaN, stiffness: 1e5, cap: -1 },
    ];
    const bad = { length: 6, stiffness: -1 };
    expect(codesOf(() => railReactions(bad, none, supports))).toEqual([
      "not-positive stiffness",
      "out-of-range supports.0.x",
      "not-positive supports.0.stiffness",
      "sizes-disagree supports.1.cap",
      "not-a-number supports.2.x",
      "not-positive supports.2.cap",
    ]);
  });

  test("two rigid supports at one place, but not a rigid anchor over rigid ground", () => {
    const two = [...rigidAt(0, 3, 3)];
    expect(codesOf(() => railReactions(rail, none, two))).toEqual(["sizes-disagree supports"]);
    const both: RailSupport[] = [0, 6].flatMap((x) => [
      { kind: "anchor", x, stiffness: "rigid" },
      { kind: "ground", x, stiffness: "rigid" },
    ]);
    const up = railReactions(rail, { ...none, uniform: 100 }, both);
    const down = railReactions(rail, { ...none, uniform: -100 }, both);
    const forces = (of: typeof up) => of.outcome === "held" && of.supports.map((s) => s.reaction);
    const near = (values: number[]) => values.map((value) => expect.closeTo(value, 9));
    expect(forces(up)).toEqual(near([-300, 0, -300, 0]));
    expect(forces(down)).toEqual(near([0, 300, 0, 300]));
  });

  test("of two rigid supports at one place none may do both, or the same", () => {
    const pair = (one: RailSupport["kind"], other: RailSupport["kind"], gap: number) =>
      codesOf(() =>
        railReactions(rail, none, [
          { kind: one, x: 3, stiffness: "rigid" },
          { kind: other, x: 3 + gap, stiffness: "rigid" },
        ]),
      );
    const refused = ["sizes-disagree supports"];
    const kinds = ["anchor", "ground", "two-way"] as const;
    for (const one of kinds) {
      for (const other of kinds) {
        const shared = one !== other && one !== "two-way" && other !== "two-way";
        expect(pair(one, other, 0), `${one} and ${other}`).toEqual(shared ? [] : refused);
        expect(pair(one, other, 0.1), `${one} beside ${other}`).toEqual([]);
      }
    }
    const soft: RailSupport[] = [
      { kind: "ground", x: 3, stiffness: "rigid" },
      { kind: "ground", x: 3, stiffness: 1e5 },
    ];
    expect(codesOf(() => railReactions(rail, none, soft))).toEqual([]);
    expect(codesOf(() => railReactions({ ...rail, length: Number.NaN }, none, []))).toEqual([
      "not-a-number length",
    ]);
    expect(codesOf(() => railReactions({ ...rail, length: Infinity }, none, []))).toEqual([
      "not-a-number length",
    ]);
  });

  test("rigid supports within a millionth of the length are at one place, and make one node", () => {
    const near = (length: number, gap: number) => ({
      codes: codesOf(() => railReactions({ ...rail, length }, none, rigidAt(0, gap))),
      nodes: railNodes({ ...rail, length }, [0, gap, gap], [...rigidAt(length)]).x.length,
    });
    const apart = { codes: [], nodes: 3 };
    const together = { codes: ["sizes-disagree supports"], nodes: 2 };
    expect(near(30, 2.9e-5)).toEqual(together);
    expect(near(30, 3.1e-5)).toEqual(apart);
    expect(near(1, 1e-6)).toEqual(together);
    expect(near(1, 1.1e-6)).toEqual(apart);
  });

  test("rigid supports apart by a millionth and a rounding are at two places, and each holds", () => {
    const places = [0.1, 0.1 + 1e-6, 0.9];
    expect((places[1] ?? NaN) - 0.1).toBeGreaterThan(1e-6);
    const { ofSupport } = railNodes({ ...rail, length: 1 }, [], rigidAt(...places));
    expect([...ofSupport]).toEqual([1, 2, 3]);
    const loads = { ...none, forces: [{ x: 0.5, force: 900 }] };
    expect(railReactions({ ...rail, length: 1 }, loads, rigidAt(...places)).outcome).toBe("held");
  });

  test("a place just before the right end is at that end", () => {
    const nodes = railNodes({ ...rail, length: 1 }, [1 - 5e-7], rigidAt(0, 1));
    expect([...nodes.x]).toEqual([0, 1]);
    expect([...nodes.ofPlace, ...nodes.ofSupport]).toEqual([1, 0, 1]);
  });

  test("loads whose sizes add up to no number", () => {
    const great = (length: number, loads: object) =>
      codesOf(() => railReactions({ ...rail, length }, { ...none, ...loads }, rigidAt(0, length)));
    expect(great(30, { uniform: 1e308 })).toEqual(["not-a-number loads"]);
    expect(great(0.1, { couples: [{ x: 0, couple: 1e308 }] })).toEqual(["not-a-number loads"]);
  });

  test("loads beside the rail, or no numbers", () => {
    const loads = {
      uniform: Number.NaN,
      forces: [{ x: -1, force: Number.POSITIVE_INFINITY }],
      couples: [{ x: 6.1, couple: 1 }],
    };
    expect(codesOf(() => railReactions(rail, loads, rigidAt(0, 6)))).toEqual([
      "not-a-number uniform",
      "out-of-range forces.0.x",
      "not-a-number forces.0.force",
      "out-of-range couples.0.x",
    ]);
  });

  test("a solver refuses places beside the rail, and fewer loads than places", () => {
    expect(codesOf(() => new RailSolver(rail, [7], rigidAt(0, 6)))).toEqual([
      "out-of-range places.0",
    ]);
    const solver = new RailSolver(rail, [1, 2], rigidAt(0, 6));
    expect(codesOf(() => solver.solve(0, [1]))).toEqual(["not-a-number loads"]);
  });
});

describe("a rail that is not held", () => {
  const anchor = (x: number): RailSupport => ({ kind: "anchor", x, stiffness: 2e5 });
  const ground = (x: number, cap?: number): RailSupport => ({
    kind: "ground",
    x,
    stiffness: 4e5,
    ...(cap === undefined ? {} : { cap }),
  });
  const cases: readonly [string, number, readonly RailSupport[], string][] = [
    ["lifted off ground alone", 100, [ground(0), ground(6)], "not-held"],
    ["pressed on anchors alone", -100, [anchor(0), anchor(6)], "not-held"],
    ["turning about its only anchor", 100, [anchor(0), ground(6)], "not-held"],
    ["an anchor beyond the middle, ground before it", 100, [ground(0), anchor(3.5)], "not-held"],
    ["an anchor beyond the middle, ground behind it", 100, [ground(6), anchor(3.5)], "held"],
    ["pressed into ground that gives", -100, [ground(0, 290), ground(6, 290)], "not-held"],
    ["pressed on ground just strong enough", -100, [ground(0, 310), ground(6, 310)], "held"],
    ["no supports", 0, [], "not-held"],
    ["nothing to hold", 0, [anchor(1), ground(5)], "held"],
  ];
  test.each(cases)("%s", (_, uniform, supports, outcome) => {
    expect(railReactions(rail, { ...none, uniform }, supports).outcome).toBe(outcome);
  });

  test("an anchor and ground without force have none, and no minus before it", () => {
    const found = railReactions(rail, none, [anchor(1), ground(5)]);
    expect(found.outcome === "held" && found.supports.map((s) => s.reaction)).toEqual([0, 0]);
  });

  test("leaves no forces behind, and the next case starts afresh", () => {
    const solver = new RailSolver(rail, [3], [anchor(0), anchor(6), ground(0), ground(6)]);
    expect(solver.solve(0, [1000])).toBe("held");
    const first = [...solver.reactions];
    const bare = new RailSolver(rail, [3], [ground(0), ground(6)]);
    expect(bare.solve(0, [1000])).toBe("not-held");
    expect([...bare.reactions]).toEqual([Number.NaN, Number.NaN]);
    expect(bare.solve(0, [-1000])).toBe("held");
    expect([...bare.reactions]).toEqual([500, 500].map((value) => expect.closeTo(value, 9)));
    expect(first).toEqual([-500, -500, 0, 0].map((value) => expect.closeTo(value, 9)));
  });
});
