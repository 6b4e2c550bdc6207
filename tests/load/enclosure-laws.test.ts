import { type EnvelopeAreas, enclosureOf, wallNames } from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, holds, seed } from "./arbitrary-house.ts";

const fourSquareFeet = 4 * 0.3048 ** 2;

const envelope = fc
  .record({
    gross: fc.tuple(...Array.from({ length: 5 }, () => between(1, 80))),
    shares: fc.tuple(
      ...Array.from({ length: 5 }, () => fc.oneof(between(0, 0.02), between(0, 1), fc.constant(1))),
    ),
  })
  .map(({ gross, shares }) => ({
    gross: areas(gross),
    openings: areas(gross.map((one, place) => one * (shares[place] ?? 0))),
  }));

function areas([left = 0, right = 0, front = 0, back = 0, roof = 0]: number[]): EnvelopeAreas {
  return { left, right, front, back, roof };
}

const kinds = {
  open: [0],
  "partially enclosed": [0.55, -0.55],
  "partially open": [0.18, -0.18],
  enclosed: [0.18, -0.18],
} as const;

describe(`laws of enclosure (seed ${seed})`, () => {
  test("every envelope has one class, with both signs of its inside pressure", () => {
    holds(
      fc.property(envelope, ({ openings, gross }) => {
        const { kind, walls, insideCoefficients } = enclosureOf(openings, gross);
        expect(insideCoefficients.slice(0, kinds[kind].length)).toEqual([...kinds[kind]]);
        const near = kind !== "open" && walls.some((wall) => wall.nearlyDominant);
        const more = near && kind !== "partially enclosed" ? 2 : 0;
        expect(insideCoefficients.length).toBe(kinds[kind].length + more);
        const sum = insideCoefficients.reduce((total, one) => total + one, 0);
        expect(Math.abs(sum)).toBeLessThan(1e-12);
      }),
      1000,
    );
  });

  test("the class by the definitions, wall by wall", () => {
    holds(
      fc.property(envelope, ({ openings, gross }) => {
        const open = wallNames.every((wall) => openings[wall] >= 0.8 * gross[wall]);
        const total = (of: EnvelopeAreas) => of.left + of.right + of.front + of.back + of.roof;
        const dominant = wallNames.some((wall) => {
          const [inside, outside] = [openings[wall], total(openings) - openings[wall]];
          const limit = Math.min(fourSquareFeet, 0.01 * gross[wall]);
          const share = outside / (total(gross) - gross[wall]);
          return inside > 1.1 * outside && inside > limit && share <= 0.2;
        });
        const shut = wallNames.every(
          (wall) => openings[wall] <= Math.min(fourSquareFeet, 0.01 * gross[wall]),
        );
        const other = shut ? "enclosed" : "partially open";
        const expected = open ? "open" : dominant ? "partially enclosed" : other;
        expect(enclosureOf(openings, gross).kind).toBe(expected);
      }),
      1000,
    );
  });

  test("a dominant wall stays so when it opens further or the roof closes", () => {
    holds(
      fc.property(envelope, between(0, 1), ({ openings, gross }, share) => {
        const before = enclosureOf(openings, gross);
        fc.pre(before.kind === "partially enclosed");
        const wall = before.walls.find(({ dominant }) => dominant)?.wall ?? "front";
        const wider = openings[wall] + share * (gross[wall] - openings[wall]);
        const after = enclosureOf({ ...openings, [wall]: wider }, gross);
        expect(after.walls.find((one) => one.wall === wall)?.dominant).toBe(true);
        const closed = enclosureOf({ ...openings, roof: share * openings.roof }, gross);
        expect(closed.kind).toBe("partially enclosed");
      }),
      2000,
    );
  });

  test("walls may change places; all shut is enclosed; all walls open is open", () => {
    holds(
      fc.property(envelope, ({ openings, gross }) => {
        const turned = ({ left, right, front, back, roof }: EnvelopeAreas) =>
          areas([front, back, right, left, roof]);
        const { kind } = enclosureOf(openings, gross);
        expect(enclosureOf(turned(openings), turned(gross)).kind).toBe(kind);
        expect(enclosureOf(areas([]), gross).kind).toBe("enclosed");
        expect(enclosureOf({ ...gross, roof: openings.roof }, gross).kind).toBe("open");
      }),
    );
  });
});
