import { describe, expect, test } from "vitest";
import { fitted, fittedWith, house } from "./fitted-house.ts";
import { demandOf, linkOf, ratioOf } from "./made-links.ts";

const { rows } = linkOf(fitted, "boards");
const { spacing } = fitted;
const lifted = "film lifted off its hoops";
const lying = "film lying on its hoops";

describe("base and hip boards from hoop to hoop", () => {
  test.each([
    ["base boards", 0.14, 1],
    ["hip boards", 0.089, 2],
  ] as const)(
    "%s, simple span: V = t s / 2 beside suction on its face; M = p b s^2 / 8 with a triangle's p (s / 2) s^2 / 12",
    (board, width, sides) => {
      const pull = demandOf(rows, `shear of the ${board}`, lifted);
      const onHoop = demandOf(rows, `fixing of the ${board} to a hoop`, lifted);
      expect(onHoop).toBeGreaterThan(2 * pull);
      const pressed = demandOf(rows, `fixing of the ${board} to a hoop`, lying);
      const moment = demandOf(rows, `bending of the ${board}`, lying);
      const pressure = pressed / (width * spacing + (sides * spacing ** 2) / 4);
      const triangles = (sides * (spacing / 2) * spacing ** 2) / 12;
      expect(moment).toBeCloseTo(pressure * ((width * spacing ** 2) / 8 + triangles), 9);
      const shear = demandOf(rows, `shear of the ${board}`, lying);
      expect(shear).toBeCloseTo(pressed / 2, 9);
    },
  );

  test("with the film lifted a fixing holds its pull and the suction on the board's width", () => {
    const { baseBoards } = fitted.links;
    if (!baseBoards) throw new Error("a base board");
    const suction = (width: number): number => {
      const made = linkOf(fittedWith({ baseBoards: { ...baseBoards, width } }), "boards");
      const onHoop = demandOf(made.rows, "fixing of the base boards to a hoop", lifted);
      return onHoop / spacing - (2 * demandOf(rows, "shear of the base boards", lifted)) / spacing;
    };
    // Both widths lie within one effective area: the coefficient is the same.
    expect(suction(0.12) / suction(0.06)).toBeCloseTo(2, 9);
  });

  test("a thicker board is never weaker", () => {
    const thicknesses = [0.038, 0.05, 0.064, 0.089];
    const ratios = thicknesses.map((thickness) => {
      const { baseBoards } = fitted.links;
      if (!baseBoards) throw new Error("a base board");
      const changed = linkOf(fittedWith({ baseBoards: { ...baseBoards, thickness } }), "boards");
      return ["bending of the base boards", "shear of the base boards"].map((part) =>
        ratioOf(changed.rows, part),
      );
    });
    ratios.slice(1).forEach((own, at) => {
      own.forEach((ratio, part) => {
        expect(ratio).toBeLessThanOrEqual((ratios[at]?.[part] ?? 0) * (1 + 1e-12));
      });
    });
  });

  test("a board too deep for its thickness is told, with the moment it would have to take", () => {
    const { notChecked } = linkOf(house, "boards");
    const deep = notChecked.find(({ words }) => words === "bending of the base boards");
    expect(deep?.why).toContain("NDS 4.4.1");
    expect(deep?.demand?.value).toBeGreaterThan(0);
  });

  test("no boards: not checked, and said", () => {
    const none = linkOf(fittedWith({ baseBoards: null, hipBoards: null }), "boards");
    expect(none.rows).toEqual([]);
    expect(none.notChecked).toHaveLength(1);
  });
});
