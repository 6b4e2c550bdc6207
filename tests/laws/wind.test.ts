import { describe, expect, test, vi } from "vitest";
import type { Tree } from "./entry.ts";
import { evaluated, type Farm, forFarms, readFarm, seed } from "./farms.ts";
import { near, outcomesOf, standsAt } from "./outcomes.ts";
import type { Size } from "./size.ts";

vi.setConfig({ testTimeout: 1_800_000 });

/** A factor that differs from house to house: from just above 1 to 2. */
const factorFor = ({ house }: Farm): number => 1.01 + (JSON.stringify(house).length % 100) / 100;

const windier = ({ house, site }: Farm, factor: number): Farm => {
  const wind = site.wind as Tree;
  return { house, site: { ...site, wind: { ...wind, speed: (wind.speed as Size).times(factor) } } };
};

describe(`wind on whole houses (seed ${seed})`, () => {
  test("loads grow with the speed squared, what resists and the limits do not change", () => {
    forFarms({ level: true }, (farm, inputs) => {
      const factor = factorFor(farm);
      const [before, after] = [evaluated(inputs), evaluated(readFarm(windier(farm, factor)))];
      expect(near(after.pressure, factor ** 2 * before.pressure, 1e-12)).toBe(true);
      const grown = outcomesOf(after);
      for (const [key, one] of outcomesOf(before)) {
        const other = grown.get(key);
        expect(near(other?.limit ?? NaN, one.limit), `${key} limit`).toBe(true);
        if (one.check === "slide") continue;
        expect(near(other?.demand ?? NaN, factor ** 2 * one.demand), `${key} demand`).toBe(true);
        expect(near(other?.ratio ?? NaN, factor ** 2 * one.ratio), `${key} ratio`).toBe(true);
      }
    });
  });

  test("on level ground and on slopes more wind never turns what fails into what holds", () => {
    forFarms({}, (farm, inputs) => {
      if (standsAt(evaluated(inputs))) return;
      expect(standsAt(evaluated(readFarm(windier(farm, factorFor(farm)))))).toBe(false);
    });
  });
});
