import { showWords } from "@hoopstay/core";
import { expect, test } from "vitest";
import { fitFindings } from "../../packages/house/src/compare/fit-findings.ts";
import { shortStickWords } from "../../packages/house/src/compare/stock/short-sticks.ts";
import { today, variantOf } from "./today.ts";

const footOf = (change: Record<string, unknown>): string[] =>
  fitFindings(variantOf(change).house, today.house).map((words) => showWords(words, "us"));

test("a hoop narrower than the stub is told with its play: bore of the stub less the hoop", () => {
  // 1.9 in less two walls of 0.12 in is a bore of 1.66 in; 0.66 in round a hoop of 1 in.
  expect(footOf({ "hoops.tube.outside": "1 in" })).toEqual([
    "The hoop now goes into the stub, not as today, with 0.66 in of play: whether that is too loose is not checked.",
  ]);
  expect(footOf({ "hoops.tube.outside": "1.9 in" })).toEqual([
    "The hoop fits neither over the stub nor into it: the stubs must change too.",
  ]);
});

test("a hoop much wider than its stub is told with its play beside today's", () => {
  const [said = "", ...more] = footOf({ "hoops.tube.outside": "3 in" });
  expect(more).toEqual([]);
  // 3 in, 2.375 in less two walls of 14 gauge (0.083 in) and the stub of 1.9 in.
  expect(said).toContain("with 0.93 in of play, today 0.31 in");
  expect(footOf({ "rails.tube.size": "HSS4X3X1/8" })).toEqual([]);
});

test("hoops cut from sticks much shorter than they are told; long enough ones are not", () => {
  const group = {
    tube: { ...today.house.links.hoop, id: "tube", name: "tube" },
    members: [{ what: "hoops", length: 9, count: 9, joints: null, bends: "hoop" as const }],
  };
  const cut = { tube: "tube", sticks: [], waste: 0, price: null, fewest: true, findings: [] };
  const said = (stock: number): string[] =>
    shortStickWords(group, { ...cut, stock }).map((words) => showWords(words, "si"));
  expect(said(0.3)).toHaveLength(1);
  expect(said(0.3)[0]).toMatch(/joined of 30 pieces/);
  for (const stock of [2.25, 6, 10]) expect(said(stock)).toEqual([]);
});
