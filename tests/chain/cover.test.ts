import { componentRatioOf } from "@hoopstay/load";
import { describe, expect, test } from "vitest";
import { fitted, fittedWith, house } from "./fitted-house.ts";
import { demandOf, design, evaluation, light, linkOf, ratioOf } from "./made-links.ts";

const { shell, site } = evaluation;
const { rows } = linkOf(fitted, "cover");
const film = "film pulled out of the lock channel";
const screws = "screws of the lock channel";

describe("the cover's edge", () => {
  test("a ring under even suction pulls with p R: closed form, the standard's least coefficients", () => {
    const r = shell.f / shell.b;
    const field = 0.87 * Math.min(-0.7 - r, -0.9, -0.5);
    const outward = Math.min(1.5 * field, -1.4);
    const ratio = componentRatioOf(site.place, shell.h);
    const pull = ratio * (0.55 - outward) * shell.arc.radius;
    expect(demandOf(rows, film)).toBeCloseTo(pull, 9);
  });

  test("one screw holds the film of its spacing", () => {
    const perMetre = demandOf(rows, film);
    expect(demandOf(rows, screws) / perMetre).toBeCloseTo(0.3, 12);
  });

  test("the ratio grows with the wind and falls with what the channel holds", () => {
    const twice = linkOf(
      fittedWith({ channel: { allowable: 6000, screwSpacing: 0.3, screwAllowable: 900 } }),
      "cover",
    );
    expect(ratioOf(twice.rows, film)).toBeCloseTo(ratioOf(rows, film) / 2, 12);
    expect(ratioOf(twice.rows, screws)).toBeCloseTo(ratioOf(rows, screws), 12);
    for (const row of rows) {
      if (!light) throw new Error("a combination");
      expect(row.ratio(2 * design, light)).toBeCloseTo(2 * row.ratio(design, light), 9);
    }
  });

  test("what is not entered is told with what it would have to hold", () => {
    const none = linkOf(house, "cover");
    expect(none.rows).toEqual([]);
    expect(none.notChecked.map(({ words }) => words)).toEqual([film, screws]);
    for (const { demand } of none.notChecked) expect(demand?.value).toBeGreaterThan(0);
  });
});
