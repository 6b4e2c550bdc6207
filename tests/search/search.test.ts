import type { SearchReview } from "@hoopstay/core";
import { type SearchProgress, searchDesigns } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { level } from "../hold-down/example-house.ts";
import { rangeOf } from "./searched-house.ts";

/** Forty-two designs, today's among them. */
const search = {
  hoops: {
    tubes: ["HSS2.375X0.125", "HSS2.375X0.154", "HSS2.375X0.188"],
    counts: [7, 8, 9, 10, 11, 12, 13],
  },
  rails: { tubes: ["HSS4X3X1/8", "HSS4X3X3/16"] },
};

interface Ran {
  readonly review: SearchReview;
  readonly told: readonly SearchProgress[];
}

function ran(stopAfter: number): Ran {
  const { today, range } = rangeOf(search);
  const { input, house } = today;
  const run = searchDesigns({ input, house, site: level.site, range });
  const told: SearchProgress[] = [];
  let step = run.next(false);
  while (!step.done) {
    told.push(step.value);
    step = run.next(told.length >= stopAfter);
  }
  return { review: step.value, told };
}

describe("a search that is let run", () => {
  const { review, told } = ran(Number.POSITIVE_INFINITY);

  test("looks at every design of the range and says so", () => {
    expect(review).toMatchObject({ looked: 42, asked: 42, complete: true });
    expect(told.filter(({ worked }) => worked === null).map(({ looked }) => looked)).toEqual([
      0, 20, 40, 42,
    ]);
  });

  test("tells of designs lightest first, each with less steel or more gust than the others", () => {
    expect(review.unbeaten.length).toBeGreaterThan(0);
    for (const [place, { steel, gust }] of review.unbeaten.entries()) {
      const before = review.unbeaten[place - 1];
      if (!before) continue;
      expect(steel.value).toBeGreaterThan(before.steel.value);
      expect(gust).toBeGreaterThan(before.gust);
    }
  });

  test("tells of each the gust as a whole and that of the first link; the lower one counts", () => {
    for (const { gust, whole, link } of [review.today, ...review.unbeaten]) {
      expect(gust).toBe(Math.min(whole.gust, link.gust));
      expect(whole.words).toMatch(/^it would /);
      expect(link.words).toMatch(/^[a-z].*: .*; /);
    }
  });

  test("names what is worth a look among them", () => {
    expect(review.worthALook.length).toBeGreaterThan(0);
    expect(review.worthALook.length).toBeLessThanOrEqual(3);
    for (const { place } of review.worthALook) expect(review.unbeaten[place]).toBeDefined();
  });

  test("says how many were worked in full, and how many may be as good", () => {
    const said = review.findings.map((words) => words.join("")).join(" ");
    const { length } = told.filter(({ worked }) => worked !== null);
    expect(review.worked).toBe(length);
    expect(said).toMatch(new RegExp(`\\b${length} designs? (was|were) worked in full`));
  });
});

describe("a search that is stopped after its first designs", () => {
  const stopped = ran(2);

  test("is not complete, and keeps what it found", () => {
    expect(stopped.review).toMatchObject({ looked: 20, asked: 42, complete: false });
    expect(stopped.review.unbeaten.length).toBeGreaterThan(0);
  });

  test("gives the same answer twice", () => {
    expect(ran(2)).toEqual(stopped);
  });
});
