import { chainOf, firstFailure, type LinkRow, linkCombinations } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { evaluation, everyOf, rows } from "./example-chain.ts";

const { factors } = evaluation;
const { review } = chainOf(evaluation);
const most = factors.perSpeedSquared * 120 ** 2;
const methods = ["ASD", "LRFD"] as const;

/** The greater ratio of a method's combinations. */
const ratioOf = (row: LinkRow, method: "ASD" | "LRFD", q: number): number =>
  Math.max(
    ...linkCombinations.filter((one) => one.method === method).map((one) => row.ratio(q, one)),
  );

/** What a rail's ratio may rise above one between two looks and fall again, as contact changes. */
const bump = 0.02;

const links = [...new Set(rows.map(({ link }) => link))];

describe("a row's limit by search is the first wind it does not carry, by plain looking", () => {
  test.each(links)("%s", (link) => {
    let failing = 0;
    for (const row of everyOf(
      rows.filter((one) => one.link === link),
      60,
    )) {
      for (const method of methods) {
        const limit = firstFailure(row, method, most);
        const upTo = Number.isFinite(limit) ? limit * (1 - 1e-7) : most;
        for (let step = 0; step <= 25; step += 1) {
          expect(ratioOf(row, method, (upTo * step) / 25)).toBeLessThanOrEqual(
            row.touches ? 1 + bump : 1,
          );
        }
        if (Number.isFinite(limit)) {
          failing += 1;
          const beyond = ratioOf(row, method, limit * (1 + 1e-7));
          expect(beyond).toBeGreaterThan(1);
        }
      }
    }
    expect(failing).toBeGreaterThan(0);
  });
});

test("no row of the load path gives way below what its link is told to carry", () => {
  for (const { id, worst } of review.links) {
    const lowest = worst.check.codeSpeed.ASD ** 2 * factors.perSpeedSquared;
    for (const row of everyOf(
      rows.filter((one) => one.link === id),
      200,
    )) {
      for (const part of [0.3, 0.7, 1 - 1e-6]) {
        expect(ratioOf(row, "ASD", part * lowest), `${row.part}, ${row.place}`).toBeLessThanOrEqual(
          1,
        );
      }
    }
    const own = rows.filter(({ link, part }) => link === id && part === worst.check.part);
    const fails = own.some((row) => ratioOf(row, "ASD", lowest * (1 + 1e-6)) > 1);
    expect(fails || !Number.isFinite(lowest), id).toBe(true);
  }
});

test("demand over resistance of the check shown is its ratio", () => {
  for (const { worst } of review.links) {
    const { demand, resistance, ratio } = worst.check;
    if (!Number.isFinite(ratio.ASD)) continue;
    expect(demand.value / resistance.value).toBeCloseTo(ratio[evaluation.site.combination], 9);
  }
});
