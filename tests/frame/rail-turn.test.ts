import type { RailSupport } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { giving, holding, idle } from "../../packages/frame/src/rail/support-set.ts";
import { turnUntilHeld } from "../../packages/frame/src/rail/turn.ts";
import { seed } from "./arbitrary-rail.ts";
import { heldRail, reactionsOf } from "./held-rail.ts";
import { lyingAt, supportAtEach } from "./shaped-rail.ts";

/** Springs of 1/2 N/m with a cap of 1 N: beyond a way of 2 m they give. */
const support = fc.record({
  kind: fc.constantFrom("anchor" as const, "ground" as const),
  part: fc.constantFrom(idle, giving),
  start: fc.integer({ min: -16, max: 16 }).map((quarters) => quarters / 4),
  end: fc.integer({ min: -16, max: 16 }).map((quarters) => quarters / 4),
});

/** Where the rail must come to be held, and from which side: 1 rising, -1 sinking. */
const stops = (kind: "anchor" | "ground", part: number) => {
  const up = kind === "anchor" ? 1 : -1;
  return part === idle ? { place: 0, from: up } : { place: 2 * up, from: -up };
};

describe(`a rail held at one node (seed ${seed})`, () => {
  test("turns until the support that the turn comes to first", () => {
    let caught = 0;
    fc.assert(
      fc.property(
        fc.array(support, { minLength: 3, maxLength: 7 }),
        fc.nat(6),
        fc.nat(6),
        fc.integer({ min: 0, max: 4 }).map((quarters) => quarters / 4),
        (given, atPivot, atLeaver, t) => {
          const pivot = atPivot % given.length;
          const leaver = atLeaver % given.length;
          if (pivot === leaver) return;
          const one = supportAtEach(
            given.map(({ kind }): Omit<RailSupport, "x"> => ({ kind, stiffness: 1 / 2, cap: 1 })),
          );
          one.set.set(given.map(({ part }) => part));
          one.set[pivot] = holding;
          one.held.count = 1;
          one.held.nodes[0] = pivot;
          one.bent.deflection.set(given.map(({ end }) => end));
          const start = lyingAt(
            one,
            given.map((each) => each.start),
          );
          const found = turnUntilHeld(one, start, { at: t, support: leaver });
          // The leaver goes away from where it would be held again.
          const gone = given[leaver] ?? { kind: "ground", part: idle };
          const sense = -stops(gone.kind, gone.part).from * Math.sign(leaver - pivot);
          const angles = given.map((each, i) => {
            const { place, from } = stops(each.kind, each.part);
            const rise = sense * (i - pivot);
            if (i === pivot || Math.sign(rise) !== from) return Number.POSITIVE_INFINITY;
            const lies = (1 - t) * each.start + t * each.end;
            return Math.max(0, (place - lies) * from) / Math.abs(rise);
          });
          const least = Math.min(...angles);
          expect(found === -1).toBe(least === Infinity);
          if (found === -1) return;
          caught += 1;
          expect(angles[found]).toBeCloseTo(least, 12);
        },
      ),
      { seed, numRuns: 400 },
    );
    expect(caught).toBeGreaterThan(5);
  });

  // Held at 1 m, rising at 0 m: the ground at 2 m and at 3 m is met after a turn by the way left over
  // 1 m and 2 m. A quarter of the path is gone.
  test.each([
    ["0.3 + 0.3 over 1 or 0.75 + 0.25 over 2", [0.4, 1], [1.2, 1], 3],
    ["0.3 + 0.1 over 1 or 1.5 + 0.1 over 2", [0.4, 2], [0.4, 0.4], 2],
    ["0.75 + 0 over 1 or 0 + 2 over 2", [1, 0], [0, 8], 2],
    ["none left over 1 or 1 over 2", [-1, 1], [-1, 1], 2],
  ])("ways left at its place on the path: %s", (_, atStart, atEnd, stop) => {
    const spring = { kind: "ground", stiffness: 1 } as const;
    const one = supportAtEach([spring, spring, spring, spring]);
    one.set.set([idle, holding, idle, idle]);
    one.held.count = 1;
    one.held.nodes[0] = 1;
    one.bent.deflection.set([1, 0, ...atEnd]);
    const start = lyingAt(one, [1, 0, ...atStart]);
    expect(turnUntilHeld(one, start, { at: 0.25, support: 0 })).toBe(stop);
  });

  test("of two that the turn comes to at once the first stops it", () => {
    const spring = { kind: "ground", stiffness: 1 } as const;
    const one = supportAtEach([spring, spring, spring, spring]);
    one.set.set([idle, holding, idle, idle]);
    one.held.count = 1;
    one.held.nodes[0] = 1;
    one.bent.deflection.set([1, 0, 1, 2]);
    expect(turnUntilHeld(one, one.bent, { at: 1, support: 0 })).toBe(2);
  });

  test("what stands at that node and is idle stops nothing", () => {
    const spring = { kind: "ground", stiffness: 1 } as const;
    const one = supportAtEach([spring, spring, spring]);
    one.table.node.set([0, 1, 0]);
    one.set.set([holding, idle, idle]);
    one.held.count = 1;
    one.bent.deflection.set([3, 3, 3]);
    expect(turnUntilHeld(one, one.bent, { at: 1, support: 1 })).toBe(-1);
  });

  test("lifted all along, then caught by ground at its near end: two reactions by statics", () => {
    // 1200 N at 3 m, an anchor at 2 m, ground at 1 m: moments about the anchor give 1200 N of push.
    const solution = heldRail({ length: 6, stiffness: 1e5 }, { uniform: 200 }, [
      { kind: "ground", x: 1, stiffness: 1e6 },
      { kind: "anchor", x: 2, stiffness: 1e4 },
      { kind: "ground", x: 6, stiffness: 1e6, cap: 1500 },
    ]);
    expect(reactionsOf(solution)).toEqual(
      [1200, -2400, 0].map((force) => expect.closeTo(force, 6)),
    );
  });
});
