import { type CompareReview, FOOT, POUND_FORCE, Refusal, type System } from "@hoopstay/core";
import { compareReview, takeOff } from "@hoopstay/house";
import { renderCompare } from "@hoopstay/report";
import { beforeAll, describe, expect, test } from "vitest";
import { showCompare } from "../../packages/cli/src/show/compare.ts";
import { unbalanced } from "../report/unbalanced.ts";
import { exampleWith, paddock, variantOf } from "./today.ts";

/** Three hoops in one state, so that the load path is soon worked. */
const small = exampleWith({
  hoops: {
    shape: "round",
    span: "18 ft",
    rise: "8 ft 6 in",
    leg: "6 in",
    length: "10 ft",
    spacing: "5 ft",
    tube: { outside: "2.375 in", wall: "0.083 in", standard: "A500", grade: "A500 B" },
  },
  rails: { tube: { size: "HSS4X3X3/16", grade: "A500 C" }, length: "11 ft" },
  cross_members: { tube: { size: "HSS3X2X1/8" }, count: 2 },
  collar_ties: undefined,
  roll_up_sides: undefined,
  bins: undefined,
  fittings: undefined,
  anchors: [
    { name: "L1", side: "left", along: "5 ft", pull: "900 lb", angle: "60 deg", toward: "front" },
    { name: "L2", side: "left", along: "-5 ft", pull: "900 lb", angle: "60 deg", toward: "back" },
    { name: "R1", side: "right", along: "5 ft", pull: "900 lb", angle: "60 deg", toward: "front" },
    { name: "R2", side: "right", along: "-5 ft", pull: "900 lb", angle: "60 deg", toward: "back" },
  ],
  only_these_states: true,
  states: [{ id: "shut", words: "all shut", openings: {} }],
});
const site = { ...paddock, now: "shut" };
const lighter = variantOf({ "hoops.tube.wall": "0.065 in" }, small);
const apart = variantOf({ "hoops.spacing": "10 ft" }, small);

let review: CompareReview;
beforeAll(() => {
  review = compareReview(small, [lighter, apart], site);
});

/** Every place in a record where a value is missing or is no number. */
function holes(value: unknown, path = ""): string[] {
  if (value === undefined || Number.isNaN(value)) return [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => holes(one, `${path}.${key}`));
}

describe("a comparison", () => {
  test("has the weights of the take-off, and steel that is less for the thinner tube", () => {
    for (const [one, house] of [
      [review.today, small.house],
      [review.variants[0], lighter.house],
    ] as const)
      expect(one?.weight).toEqual({ low: takeOff(house).low.W, high: takeOff(house).high.W });
    const [thin] = review.variants;
    // By hand: pi (d - t) t of steel at 490 pcf, by the outside of three hoops as they stand.
    const area = (wall: number): number => (Math.PI * (2.375 - wall) * wall) / 144;
    const hoops = small.house.parts.find(({ what }) => what === "hoops");
    const length = hoops?.kind === "bar" ? (3 * hoops.length) / FOOT : Number.NaN;
    const less = 490 * (area(0.083) - area(0.065)) * length * POUND_FORCE;
    const steel = (house: typeof review.today) => (house.steel.low + house.steel.high) / 2;
    expect(steel(review.today) - steel(thin as typeof review.today)).toBeCloseTo(less, -2);
  });

  test("a thinner hoop is never good for more at a link, hoops twice as far apart neither", () => {
    for (const { first } of review.variants)
      expect(first.check.workingGust).toBeLessThanOrEqual(review.today.first.check.workingGust);
  });

  test("names as first to go the lowest link of all states", () => {
    for (const { first, states } of [review.today, ...review.variants])
      expect(first.check.workingGust).toBe(Math.min(...states.map(({ link }) => link.gust)));
  });

  test("of a house with itself tells no difference", () => {
    const renamed = { ...lighter, changes: [], input: small.input, house: small.house };
    const same = compareReview(small, [renamed], site);
    const { name: _, ...today } = same.today;
    expect(same.variants[0]).toMatchObject(today);
    expect(same.sentences).toEqual([["1: no difference in what is compared here."]]);
  });

  test("refuses a variant that is outside scope by its name, with every other complaint", () => {
    const { links } = lighter.house;
    const steel = { ...links.hoop.steel, standard: "other" as const };
    const hoop = { ...links.hoop, steel };
    const house = { ...lighter.house, links: { ...links, hoop } };
    const ungraded = (name: string) => ({ ...lighter, name, house });
    const refused = () => compareReview(small, [ungraded("one"), lighter, ungraded("two")], site);
    expect(refused).toThrow(Refusal);
    try {
      refused();
    } catch (error) {
      const { complaints } = error as Refusal;
      expect(complaints.map(({ key, code }) => `${key} ${code}`)).toEqual([
        "one sizes-disagree",
        "two sizes-disagree",
      ]);
    }
  });

  test("has no hole in its record", () => {
    expect(holes(review)).toEqual([]);
  });

  test.each(["us", "si"] as const)("is shown in %s on a screen of 80, and as a page", (system) => {
    const shown = showCompare(review, ["Small", "Paddock"], system, undefined);
    for (const line of shown.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    const stamp = { date: null, digest: "0".repeat(16), version: "0" };
    const of: { system: System } = { system };
    const page = renderCompare(review, { house: "Small", site: "Paddock", stamp, ...of });
    expect(unbalanced(page)).toEqual([]);
    for (const text of [shown, page]) {
      expect(/undefined|NaN|Infinity|\[object/.exec(text)?.[0]).toBeUndefined();
      const units = text.replace(/<style>[\s\S]*?<\/style>/, "");
      expect(units).not.toMatch(system === "us" ? / m\/s| kN\b/ : / mph| psf\b/);
    }
  });
});
