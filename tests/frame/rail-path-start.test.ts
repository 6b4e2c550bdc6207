import type { RailSupport } from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bentRail } from "../../packages/frame/src/rail/bent-rail.ts";
import { effort } from "../../packages/frame/src/rail/margins.ts";
import { pressSupports } from "../../packages/frame/src/rail/press-supports.ts";
import { holding, holdNodes, idle } from "../../packages/frame/src/rail/support-set.ts";
import { bendRail } from "../../packages/frame/src/rail/three-moment.ts";
import { contactRail, seed } from "./arbitrary-rail.ts";
import { prepared } from "./prepared-rail.ts";
import { supportAtEach } from "./shaped-rail.ts";

const counts = Array.from({ length: 40 }, (_, i) => i + 1);
const size = 1000;

/** What `count` equal supports are pressed by, each in its own direction. */
function pressed(count: number, support: Omit<RailSupport, "x">): number[] {
  const one = supportAtEach(Array.from({ length: count }, () => support));
  one.size = size;
  pressSupports(one, new Float64Array(count));
  const side = support.kind === "anchor" ? -1 : 1;
  return Array.from(one.preload, (force) => side * force);
}

describe(`the start of the sure search (seed ${seed})`, () => {
  test.each(["anchor", "ground"] as const)(
    "each %s has one to two even shares of the loads, no two nearly alike",
    (kind) => {
      for (const count of counts) {
        const parts = pressed(count, { kind, stiffness: 1 }).map((press) => (press * count) / size);
        for (const part of parts) expect(part).toBeGreaterThan(1);
        for (const part of parts) expect(part).toBeLessThan(2);
        // k times the distance of k golden sections from a whole number is least for k = 1.
        const apart = (3 - Math.sqrt(5)) / 2 / count;
        const sorted = parts.toSorted((a, b) => a - b);
        for (const [i, part] of sorted.slice(1).entries()) {
          expect(part - (sorted[i] ?? NaN)).toBeGreaterThan(apart);
        }
      }
    },
  );

  test("a cap leaves a quarter to a half of it", () => {
    for (const press of pressed(30, { kind: "anchor", stiffness: "rigid", cap: 8 })) {
      expect(press).toBeGreaterThan(2);
      expect(press).toBeLessThan(4);
    }
  });

  test("what is idle and what works both ways is not pressed", () => {
    const kinds = ["ground", "two-way", "anchor", "ground"] as const;
    const one = supportAtEach(kinds.map((kind) => ({ kind, stiffness: 1 })));
    one.set[2] = idle;
    one.size = size;
    const start = new Float64Array(4);
    pressSupports(one, start);
    expect(Array.from(one.preload, Math.sign)).toEqual([1, 0, 0, 1]);
    expect([...start]).toEqual(Array.from(one.preload, (force) => 0 - force));
  });

  test("the rail lies straight, and each one-way support has just what it is pressed by", () => {
    let many = 0;
    fc.assert(
      fc.property(contactRail, (loaded) => {
        const one = prepared(loaded);
        const { table, set, preload, held, space } = one;
        const force = new Float64Array(space.x.length);
        pressSupports(one, force);
        if (holdNodes(table, set, preload, held) < 2) return;
        many += 1;
        const start = { ...space, force, couple: new Float64Array(space.x.length), uniform: 0 };
        const bent = bendRail(start, held, 1, bentRail(space.x, loaded.rail.stiffness));
        const reach = (one.size * loaded.rail.length ** 3) / loaded.rail.stiffness;
        for (const way of bent.deflection) expect(Math.abs(way)).toBeLessThanOrEqual(1e-9 * reach);
        for (const [i, part] of set.entries()) {
          if (part !== holding || table.side[i] === 0) continue;
          const given = Math.abs(preload[i] ?? NaN);
          expect(Math.abs(effort(one, i, bent, 1) - given)).toBeLessThanOrEqual(1e-8 * one.size);
        }
      }),
      { seed, numRuns: 200 },
    );
    expect(many).toBeGreaterThan(5);
  });
});
