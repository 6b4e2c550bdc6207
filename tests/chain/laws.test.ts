import type { LinkId } from "@hoopstay/core";
import { type House, type LinkRow, linkCombinations, type Site } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { chainOn, evaluation, everyOf, house, rows, site } from "./example-chain.ts";

const [asd] = linkCombinations;
if (!asd) throw new Error("no combination");

/** A pressure at which most rows are asked something, Pa. */
const q = 300;

const nameOf = ({ link, part, place, run, windCase }: LinkRow): string =>
  `${link}; ${part}; ${place}; ${run}; ${windCase.direction} ${windCase.form} ${[...windCase.sets.values()].join(" ")}`;

const worstOf = (list: readonly LinkRow[], link: LinkId, part?: string): number => {
  const own = list.filter((row) => row.link === link && (part === undefined || row.part === part));
  return own.reduce((most, row) => Math.max(most, row.ratio(q, asd)), 0);
};

const withHoopWall = (times: number): House => {
  const { hoop } = house.links;
  if (hoop.tube.kind !== "round") throw new Error("the example's hoops are round");
  const tube = { ...hoop.tube, wall: hoop.tube.wall * times };
  return { ...house, links: { ...house.links, hoop: { ...hoop, tube } } };
};

describe("a thicker part is never weaker", () => {
  const thicker = chainOn(withHoopWall(1.3)).rows;
  test("hoops of a thicker wall, weight as before", () => {
    expect(worstOf(thicker, "hoop", "bending with thrust")).toBeLessThan(
      worstOf(rows, "hoop", "bending with thrust"),
    );
    expect(worstOf(thicker, "bolts")).toBeLessThanOrEqual(worstOf(rows, "bolts") * (1 + 1e-9));
  });

  test("a stub weld of a longer leg", () => {
    const { stub } = house.links;
    if (!stub.weld) throw new Error("the example's stubs have a weld");
    const weld = { ...stub.weld, leg: stub.weld.leg * 1.2 };
    const made = chainOn({ ...house, links: { ...house.links, stub: { ...stub, weld } } }).rows;
    expect(worstOf(made, "weld")).toBeLessThanOrEqual(worstOf(rows, "weld"));
  });
});

test("demand by wind alone goes with the square of the speed", () => {
  const windOnly = { ...asd, dead: 0 };
  for (const row of everyOf(
    rows.filter(({ touches }) => !touches),
    400,
  )) {
    const small = row.asked(q, windOnly).demand;
    const large = row.asked(q * 1.21, windOnly).demand;
    // A share in which moments grow by thrust rises faster.
    if (row.measure !== "ratio") expect(large, nameOf(row)).toBeCloseTo(1.21 * small, 6);
    else expect(large, nameOf(row)).toBeGreaterThanOrEqual(small * (1 - 1e-12));
  }
});

test("a house and its place do not change each other: a faster design wind, the same limits", () => {
  const faster: Site = { ...site, mapSpeed: site.mapSpeed * 1.2 };
  const other = chainOn(house, faster);
  for (const link of new Set(rows.map((row) => row.link))) {
    expect(worstOf(other.rows, link) / worstOf(rows, link), link).toBeCloseTo(1, 9);
  }
});

test("wind from the left and from the right ask the same of hoops that each stand for themselves", () => {
  const own = rows.filter(({ link, run }) => link === "hoop" && run.startsWith("feet pinned"));
  const from = (direction: string): number[] =>
    own
      .filter(({ windCase }) => windCase.direction === direction)
      .map((row) => row.ratio(q, asd))
      .toSorted((a, b) => a - b);
  const [left, right] = [from("+x"), from("-x")];
  expect(left.length).toBeGreaterThan(10);
  expect(left.length).toBe(right.length);
  for (const [at, value] of left.entries()) expect(right[at]).toBeCloseTo(value, 8);
});

test("every state has rows of every link that is rated at all", () => {
  const links = new Set(rows.map(({ link }) => link));
  for (const set of new Set(evaluation.states.map((state) => state.set))) {
    const here = new Set(
      rows.filter(({ windCase }) => windCase.sets.has(set)).map(({ link }) => link),
    );
    const covered = set.covering !== "bare";
    for (const link of links) {
      if (!covered && (link === "boards" || link === "cover")) continue;
      if (link === "end-wall" && !set.ends.front && !set.ends.back) continue;
      expect(here.has(link), `${link} in ${set.covering}`).toBe(true);
    }
  }
});
