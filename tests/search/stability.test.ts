import { evaluate } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { PreparedShells } from "../../packages/house/src/design-search/design/prepared-shell.ts";
import { knownSlides } from "../../packages/house/src/design-search/stability/known-slides.ts";
import { governingOf } from "../../packages/house/src/review/summaries.ts";
import { takeOff } from "../../packages/house/src/take-off/take-off.ts";
import { level, sloping } from "../hold-down/example-house.ts";
import { rangeOf, someDesigns, wide } from "./searched-house.ts";

describe.each([
  ["on the level", level.site, 1e-9],
  ["on a slope, tethers slanted", sloping.site, Number.POSITIVE_INFINITY],
])("lift off, turning and sliding of designs %s", (_, site, near) => {
  const { today, range } = rangeOf(wide);
  const slides = knownSlides(evaluate(today.house, site));
  const shells = new PreparedShells(today.input, today.house, site, slides);

  test.each(someDesigns(range, site, 7).map((design) => [design] as const))(
    "are promised no less than each check alone gives, and just that on the level",
    (design) => {
      const shell = shells.of(design);
      if (!shell) throw new Error("a design that cannot be computed");
      const house = shells.house(shell, design);
      const { states } = evaluate(house, site);
      const alone = Math.min(
        ...states.flatMap(({ set }) =>
          governingOf(set, set.holds.at(-1)?.id ?? "bare", "ASD").map(
            ({ byLimit }) => byLimit.limit,
          ),
        ),
      );
      const quick = shell.stability.lowest(takeOff(house), design.layout.rated).limit;
      expect(quick).toBeGreaterThanOrEqual(alone * (1 - 1e-9));
      expect(quick / alone - 1).toBeLessThanOrEqual(near);
    },
  );
});
