import { describe, expect, test, vi } from "vitest";
import { evaluated, forFarms, readFarm, seed } from "./farms.ts";
import { type Mirror, mirrored, mirroredName } from "./mirrored.ts";
import { near, outcomesOf } from "./outcomes.ts";

vi.setConfig({ testTimeout: 1_800_000 });

const mirrors: readonly Mirror[] = ["left and right", "front and back"];

describe(`mirror images of whole houses and sites (seed ${seed})`, () => {
  test.each(mirrors)("%s", (mirror) => {
    forFarms({}, (farm, inputs) => {
      const image = outcomesOf(evaluated(readFarm(mirrored(farm, mirror))));
      const own = outcomesOf(evaluated(inputs));
      expect(image.size).toBe(own.size);
      for (const [key, one] of own) {
        const other = image.get(mirroredName(key, mirror));
        expect(near(other?.ratio ?? NaN, one.ratio), `${key} ${one.ratio} ${other?.ratio}`).toBe(
          true,
        );
        expect(near(other?.limit ?? NaN, one.limit), `${key} limit`).toBe(true);
      }
    });
  });
});
