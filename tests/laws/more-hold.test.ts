import { type Evaluation, takeOff } from "@hoopstay/house";
import { describe, expect, test, vi } from "vitest";
import type { Entry, Tree } from "./entry.ts";
import {
  evaluated,
  evaluatedOrRefused,
  type Farm,
  forFarms,
  readOrRefused,
  seed,
} from "./farms.ts";
import { type Outcome, outcomesOf, upTo } from "./outcomes.ts";
import { Size } from "./size.ts";

vi.setConfig({ testTimeout: 1_800_000 });

const withMore = ({ house, site }: Farm, key: string, entry: Tree): Farm => ({
  house: { ...house, [key]: [...((house[key] ?? []) as Entry[]), entry] },
  site,
});

const lastHold = ({ holds }: Evaluation): string => holds.at(-1)?.id ?? "";

/** Outcomes as held, by state, combination and check. */
function held(evaluation: Evaluation): Map<string, Outcome> {
  const hold = lastHold(evaluation);
  const mine = [...outcomesOf(evaluation).values()].filter((one) => one.hold === hold);
  return new Map(mine.map((one) => [`${one.state} ${one.combination} ${one.check}`, one]));
}

function expectNoWorse(before: Evaluation, after: Evaluation, but: readonly string[] = []): void {
  const found = held(after);
  for (const [key, one] of held(before)) {
    if (but.includes(one.check)) continue;
    const other = found.get(key);
    expect(upTo(other?.ratio ?? NaN, one.ratio), `${key} ${one.ratio} ${other?.ratio}`).toBe(true);
    expect(upTo(one.limit, other?.limit ?? NaN), `${key} limit ${one.limit} ${other?.limit}`).toBe(
      true,
    );
  }
}

const railOf = ({ house }: Farm, right: boolean): Size =>
  ((house.hoops as Tree).span as Size).times(right ? 0.5 : -0.5);
const isRight = ({ house }: Farm): boolean => JSON.stringify(house).length % 2 === 0;

/** A thicker wall, or the next thicker gauge, for every tube of a file; catalogue sizes stay. */
function thicker(entry: Entry): Entry {
  if (Array.isArray(entry)) return entry.map(thicker);
  if (typeof entry !== "object" || entry instanceof Size) return entry;
  const made = Object.fromEntries(Object.entries(entry).map(([key, one]) => [key, thicker(one)]));
  if (made.wall instanceof Size) made.wall = made.wall.times(1.15);
  if (typeof made.gauge === "number") made.gauge -= 1;
  return made;
}

describe(`what is added to whole houses (seed ${seed})`, () => {
  test("on level ground ballast tied down on a rail, amidships, never worsens any check", () => {
    forFarms({ level: true }, (farm, inputs) => {
      const before = evaluated(inputs);
      const at = { across: railOf(farm, isRight(farm)), along: new Size(0, "m") };
      const block = { what: "more", weight: new Size(400, "kg"), at, fixed: "yes" };
      const after = evaluatedOrRefused(withMore(farm, "ballast", block));
      if (!after) return;
      // More weight moves the ends' base lines inward: where it presses the rail in over more than half,
      // and where anchors lose lever arm by it, the ends turn sooner (0.031 to 0.034 in one house).
      const { rail } = before.house;
      const weight = Math.max(...(after.holds.at(-1)?.holdings ?? []).map((one) => one.weight.W));
      const inset = weight / (4 * rail.width * before.site.bearing);
      expectNoWorse(
        before,
        after,
        2 * inset < rail.front && before.house.anchors.length === 0
          ? []
          : ["tip-front", "tip-back"],
      );
    });
  });

  test("one more upright anchor never worsens any check", () => {
    forFarms({}, (farm, inputs) => {
      const before = evaluated(inputs);
      const one = {
        name: "one more",
        side: isRight(farm) ? "right" : "left",
        along: new Size(0.31, "m"),
      };
      const more = { ...one, pull: new Size(5, "kN") };
      const after = evaluatedOrRefused(withMore(farm, "anchors", more));
      if (!after) return;
      // The first anchor brings the ends' unmoved lines with it.
      const first = before.house.anchors.length === 0;
      expectNoWorse(before, after, first ? ["tip-front", "tip-back"] : []);
    });
  });

  test("thicker walls never lower a weight", () => {
    forFarms({}, ({ house, site }, inputs) => {
      const other = readOrRefused({ house: thicker(house) as Tree, site });
      if (!other) return;
      const [thin, thick] = [inputs, other].map(({ house: built }) => takeOff(built).items);
      thin?.forEach(({ what, low, high }, place) => {
        const found = thick?.[place];
        expect(found?.what).toBe(what);
        expect(upTo(low, found?.low ?? NaN) && upTo(high, found?.high ?? NaN), what).toBe(true);
      });
    });
  });
});
