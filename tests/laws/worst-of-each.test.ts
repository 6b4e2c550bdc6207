import { describe, expect, test, vi } from "vitest";
import { evaluated, type Farm, forFarms, readFarm, reviewOf, seed } from "./farms.ts";
import { near, outcomesOf, upTo } from "./outcomes.ts";

vi.setConfig({ testTimeout: 1_800_000 });

const readAs = ({ house, site }: Farm, reading?: "arc" | "span"): Farm => ({
  house,
  site: { ...site, quarter_reading: reading && { reading, reason: "asked for" } },
});

describe(`the worst is kept (seed ${seed})`, () => {
  test("of two readings of the quarters the worse governs every check", () => {
    forFarms(
      {},
      (farm) => {
        const [both, arc, span] = [undefined, "arc" as const, "span" as const].map((reading) =>
          outcomesOf(evaluated(readFarm(readAs(farm, reading)))),
        );
        for (const [key, one] of both ?? []) {
          const [a, b] = [arc?.get(key), span?.get(key)];
          const worse = Math.max(a?.ratio ?? NaN, b?.ratio ?? NaN);
          expect(near(one.ratio, worse), `${key} ${one.ratio} ${a?.ratio} ${b?.ratio}`).toBe(true);
          const lower = Math.min(a?.limit ?? NaN, b?.limit ?? NaN);
          expect(near(one.limit, lower), `${key} limit`).toBe(true);
        }
      },
      2,
    );
  });

  test("of all states the worst governs, and the house holds where every state does", () => {
    forFarms(
      {},
      (_, inputs) => {
        const review = reviewOf(evaluated(inputs), inputs);
        const hold = review.states.at(-1)?.hold;
        const mine = review.states.filter((state) => state.hold === hold);
        expect(review.holds).toBe(mine.every((state) => state.holds));
        for (const governs of review.governing) {
          const each = mine.flatMap(({ checks }) =>
            checks.filter(({ check }) => check === governs.check),
          );
          for (const combination of ["ASD", "LRFD"] as const) {
            if (governs.check === "together" && combination === "LRFD") continue;
            const worst = Math.max(...each.map(({ ratio }) => ratio[combination]));
            // Everything at once is left out of states where a single check gives way before it.
            const same =
              governs.check === "together"
                ? upTo(worst, governs.ratio[combination])
                : near(worst, governs.ratio[combination]);
            expect(
              same,
              `${governs.check} ${combination} ${worst} ${governs.ratio[combination]}`,
            ).toBe(true);
          }
          const lowest = Math.min(...each.map(({ workingGust }) => workingGust));
          expect(upTo(governs.workingGust, lowest), `${governs.check} gust`).toBe(true);
        }
      },
      10,
    );
  });
});
