import { readQuantity, show } from "@hoopstay/core";
import { makeReview } from "@hoopstay/house";
import { renderReport } from "@hoopstay/report";
import { describe, expect, test, vi } from "vitest";
import { Random } from "../fuzz/random.ts";
import { reordered, type Tree, withSizes, written } from "./entry.ts";
import { evaluated, forFarms, readFarm, readTexts, seed } from "./farms.ts";
import { near, outcomesOf } from "./outcomes.ts";
import type { Size } from "./size.ts";

vi.setConfig({ testTimeout: 1_800_000 });

/** Keys in an order of chance, and a comment here and there. */
function otherwise(tree: Tree, random: Random): string {
  const order = (count: number): number[] => {
    const places = Array.from({ length: count }, (_, at) => at);
    return places
      .map((at) => ({ at, by: random.next() }))
      .sort((a, b) => a.by - b.by)
      .map(({ at }) => at);
  };
  const comment = (key: string): string =>
    random.chance(0.3) ? `   # about ${key}: 3 ft, [x` : "";
  return `# by another hand\n\n${written(reordered(tree, order) as Tree, comment)}\n`;
}

describe(`the same house written otherwise (seed ${seed})`, () => {
  test.each(["us", "si"] as const)("in units of the other family: %s", (system) => {
    forFarms(
      {},
      ({ house, site }, inputs) => {
        const units = (size: Size) => size.in(system);
        const other = {
          house: withSizes(house, units) as Tree,
          site: withSizes(site, units) as Tree,
        };
        const found = outcomesOf(evaluated(readFarm(other)));
        for (const [key, one] of outcomesOf(evaluated(inputs))) {
          const same = found.get(key);
          expect(near(same?.ratio ?? NaN, one.ratio), `${key} ${one.ratio} ${same?.ratio}`).toBe(
            true,
          );
          expect(near(same?.limit ?? NaN, one.limit), `${key} limit`).toBe(true);
        }
      },
      2,
    );
  });

  test("keys in any order and comments change no number", () => {
    let place = 0;
    forFarms({}, ({ house, site }, inputs) => {
      const random = new Random(seed, place++);
      const other = readTexts(otherwise(house, random), otherwise(site, random));
      expect(outcomesOf(evaluated(other))).toEqual(outcomesOf(evaluated(inputs)));
    });
  });

  test("nor a byte of the report, beside its digest and the files that it carries", () => {
    let place = 0;
    forFarms(
      {},
      ({ house, site }, inputs) => {
        const random = new Random(seed, place++);
        const other = readTexts(otherwise(house, random), otherwise(site, random));
        const [one, same] = [inputs, other].map((read) => {
          const { digest, date, rows } = read;
          const files = { house: "", site: "" };
          const meta = { version: "0", digest, date, files, inputs: rows };
          return renderReport(makeReview(evaluated(read), meta, { full: true }), { system: "us" })
            .html;
        });
        expect(same === one).toBe(true);
      },
      50,
    );
  });

  test("a size shown and read again is the size, to the figures shown", () => {
    forFarms({}, ({ house, site }) => {
      withSizes({ house, site }, (size) => {
        const { dimension } = size;
        for (const system of ["us", "si"] as const) {
          const read = readQuantity(show(size.read, dimension, system, 12), dimension);
          expect(read.ok && near(read.value, size.read, 1e-11), `${size}`).toBe(true);
        }
        return size;
      });
    });
  });
});
