import { FOOT } from "@hoopstay/core";
import type { DesignRange } from "@hoopstay/house";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { designAt, stepThrough } from "../../packages/house/src/design-search/design/design.ts";
import { designsIn } from "../../packages/house/src/design-search/range/design-range.ts";
import { holds } from "../hold-down/example-house.ts";
import { rangeOf, wide } from "./searched-house.ts";

const sized = (hoops: number, counts: number, rails: number, layouts: number): DesignRange => {
  const names = (many: number) =>
    Array.from({ length: many }, (_, place) => ({ name: String(place) })) as never[];
  return {
    assumed: false,
    hoops: names(hoops),
    counts: Array.from({ length: counts }, (_, place) => place + 2),
    rails: names(rails),
    anchors: { kind: "any", perRail: Array.from({ length: layouts }, (_, place) => place + 2) },
    findings: [],
  };
};
const few = fc.integer({ min: 1, max: 9 });

test("every design of a range is looked at, and none twice", () => {
  holds(
    fc.property(few, few, few, few, (...sizes) => {
      const range = sized(...sizes);
      const all = designsIn(range);
      const step = stepThrough(range);
      const layouts = range.anchors?.perRail.map((perRail) => ({ perRail })) as never[];
      const seen = new Set<string>();
      for (let looked = 0; looked < all; looked += 1) {
        const { hoop, count, rail, layout } = designAt(range, layouts, (looked * step) % all);
        seen.add(`${hoop.name} ${count} ${rail.name} ${layout.perRail}`);
      }
      expect(seen.size).toBe(all);
    }),
    150,
  );
});

test("the first part of a range that is looked at has something of every number of hoops", () => {
  const range = sized(8, 7, 9, 3);
  const [all, step] = [designsIn(range), stepThrough(range)];
  const layouts = [{}, {}, {}] as never[];
  const counts = Array.from(
    { length: 40 },
    (_, looked) => designAt(range, layouts, (looked * step) % all).count,
  );
  expect(new Set(counts).size).toBe(7);
});

describe("the range of a house file", () => {
  test("is read as it stands there", () => {
    const { range, complaints } = rangeOf(wide);
    expect(complaints).toEqual([]);
    expect(range.assumed).toBe(false);
    expect(designsIn(range)).toBe(3 * 3 * 3 * 2);
  });

  test("spacings are bays: 40 ft at 5 ft have nine hoops, at 4 ft eleven", () => {
    expect(rangeOf({ hoops: { spacing: ["5 ft", "4 ft"] } }).range.counts).toEqual([9, 11]);
  });

  test("what it leaves out stays as it is today", () => {
    const { range, today } = rangeOf({ hoops: { counts: [9] } });
    expect(designsIn(range)).toBe(1);
    expect(range.hoops[0]?.tube).toEqual(today.house.links.hoop.tube);
    expect(range.rails[0]?.tube).toEqual(today.house.links.rail.tube);
    expect(range.anchors).toBeNull();
  });

  test("without one, sizes round today's are looked at, today's first, and that is said", () => {
    const { range, today } = rangeOf(undefined);
    expect(range.assumed).toBe(true);
    expect(range.findings.flat().join()).toMatch(/No range is asked for/);
    expect(range.counts).toContain(today.house.lines.hoopCount);
    expect(range.hoops[0]?.tube).toEqual(today.house.links.hoop.tube);
    for (const { tube } of range.hoops) {
      if (tube.kind !== "round") throw new Error("a hoop that is not round");
      expect(tube.outside / (2.375 * (FOOT / 12))).toBeGreaterThan(0.69);
      expect(tube.outside / (2.375 * (FOOT / 12))).toBeLessThan(1.41);
    }
  });

  test("a tube that does not go with the stubs is left out, and that is said", () => {
    const { range } = rangeOf({ hoops: { tubes: ["HSS2.375X0.125", "HSS1.660X0.140"] } });
    expect(range.hoops.map(({ name }) => name)).toEqual(["HSS2.375X0.125"]);
    expect(range.findings.flat().join()).toMatch(/do not stand on the stubs.*HSS1\.660X0\.140/);
  });

  test.each([
    [
      "unknown anchor kind",
      { anchors: { kind: "scrwe", per_rail: [4] } },
      "wrong-kind",
      "anchors.kind",
    ],
    [
      "both spacing and counts",
      { hoops: { spacing: ["5 ft"], counts: [9] } },
      "sizes-disagree",
      "hoops.counts",
    ],
    [
      "a spacing that leaves a part of a bay",
      { hoops: { spacing: ["7 ft"] } },
      "sizes-disagree",
      "hoops.spacing.0",
    ],
    [
      "a hoop that is no round tube",
      { hoops: { tubes: ["HSS4X3X3/16"] } },
      "wrong-kind",
      "hoops.tubes.0",
    ],
    [
      "rails narrower than the stubs only",
      { rails: { tubes: ["HSS1.660X0.140"] } },
      "out-of-range",
      "rails.tubes",
    ],
    [
      "a size that is not in the catalogue",
      { rails: { tubes: ["HSS9X9X9"] } },
      "size-unknown",
      "rails.tubes.0.size",
    ],
  ])("%s is refused at its place", (_, search, code, place) => {
    const { complaints } = rangeOf(search);
    expect(complaints.map(({ code: mine, path }) => [mine, path.join(".")])).toContainEqual([
      code,
      `search.${place}`,
    ]);
  });
});
