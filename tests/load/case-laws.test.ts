import {
  insideLoad,
  outline,
  shellOf,
  singleCheckCases,
  sumAcross,
  torsionCases,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  between,
  body,
  centreLines,
  componentsOf,
  covering,
  ends,
  holds,
  insideCoefficients,
  nameOf,
  seed,
  surfacesOf,
} from "./arbitrary-house.ts";

const both = { front: true, back: true };

describe(`laws of load cases (seed ${seed})`, () => {
  test("uniform inside pressure lifts b L and nothing else, by the sum over panels", () => {
    holds(
      fc.property(centreLines, fc.constantFrom("arc" as const, "span" as const), (lines, by) => {
        const shell = shellOf(lines);
        const at = Object.values(outline(shell, by));
        const half = shell.L / 2;
        const zones = at.slice(1).map((b, index) => {
          const a = at[index] ?? b;
          const plain = { name: "", part: "arch" as const, a, b, from: -half, to: half };
          return { ...plain, shapeCoefficient: -1, coefficient: -1 };
        });
        const { drag, uplift, dragMoment, upliftMoment } = sumAcross(zones);
        const size = shell.b * shell.L;
        const inside = insideLoad(shell, both);
        expect(uplift / size).toBeCloseTo(1, 12);
        expect(inside.fz).toBeCloseTo(uplift, 9);
        for (const none of [drag, dragMoment, upliftMoment, inside.fy, inside.mx]) {
          expect(Math.abs(none)).toBeLessThan(1e-10 * size * shell.b);
        }
        expect(insideLoad(shell, { front: true, back: false }).fy).toBe(shell.endArea);
        expect(insideLoad(shell, { front: false, back: true }).fy).toBe(-shell.endArea);
      }),
    );
  });

  test("case counts: 2 a + 2 b + 4 diagonals x parents x a b, by each inside coefficient", () => {
    holds(
      fc.property(body, covering, ends, insideCoefficients, (house, over, present, inside) => {
        const surfaces = surfacesOf(house, over, present);
        const [a, b] = [surfaces.across[0]?.length ?? 0, surfaces.along[0]?.length ?? 0];
        const parents = over === "bare" ? 1 : 2;
        const { count, cases } = singleCheckCases(surfaces, inside);
        expect(count).toBe(inside.length * (2 * a + 2 * b + 4 * parents * a * b));
        expect(cases.length).toBe(count);
        expect(new Set(cases.map((one) => nameOf(one))).size).toBe(count);
        const { L, b: across } = house.shell;
        const twisted = torsionCases(surfaces, inside, { across: L, along: across });
        expect(twisted.count).toBe(2 * count);
        for (const value of twisted.components) expect(Number.isFinite(value)).toBe(true);
      }),
    );
  });

  test("lengths k times as large at equal pressure give k2 forces and k3 moments", () => {
    holds(
      fc.property(centreLines, covering, ends, between(0.5, 2), (lines, over, present, k) => {
        const table = (scale: number) => {
          const { span, rise, length, springing, hoopDiameter } = lines;
          const shell = shellOf({
            ...lines,
            span: scale * span,
            rise: scale * rise,
            length: scale * length,
            springing: scale * springing,
            hoopDiameter: scale * hoopDiameter,
          });
          const spot = { x: scale, y: 2 * scale, z: scale / 2, outside: true };
          const box = { ...spot, areaAcross: scale ** 2, areaAlong: 2 * scale ** 2 };
          const frame = { dragArea: 9 * scale ** 2, x: 0, y: scale / 4, z: scale };
          const surfaces = surfacesOf({ shell, obstacles: [box], frame }, over, present);
          const sizes = { across: shell.L, along: shell.b };
          return torsionCases(surfaces, [0.55, -0.55], sizes);
        };
        const [before, after] = [table(1), table(k)];
        expect(after.count).toBe(before.count);
        for (let index = 0; index < before.count; index += 1) {
          const larger = componentsOf(after, index);
          for (const [place, value] of componentsOf(before, index).entries()) {
            const power = place >= 3 && place <= 5 ? 3 : 2;
            const size = (lines.span + lines.length) ** power * k ** power;
            const off = (larger[place] ?? NaN) - value * k ** power;
            expect(Math.abs(off)).toBeLessThan(1e-11 * size);
          }
        }
      }),
      60,
    );
  });

  test("inside pressure superposes: half of two signs, and any share between", () => {
    holds(
      fc.property(body, ends, between(-1, 1), (house, present, inside) => {
        const surfaces = surfacesOf(house, "covered", present);
        const [none, one, some] = [0, 1, inside].map((c) => singleCheckCases(surfaces, [c]));
        if (!none || !one || !some) throw new Error("three tables");
        for (const [place, value] of some.components.entries()) {
          const [base, full] = [none.components[place] ?? NaN, one.components[place] ?? NaN];
          const size = Math.abs(base) + Math.abs(full) + 1;
          expect(Math.abs(value - base - inside * (full - base))).toBeLessThan(1e-12 * size);
        }
      }),
      60,
    );
  });

  test("mirror images across and along", () => {
    holds(
      fc.property(body, covering, ends, insideCoefficients, (house, over, present, inside) => {
        const sizes = { across: house.shell.L, along: house.shell.b };
        const table = torsionCases(surfacesOf(house, over, present), inside, sizes);
        for (const axis of ["across", "along"] as const) {
          const across = axis === "across";
          const flip = ({ x, y }: { x: number; y: number }) =>
            across ? { x: -x, y } : { x, y: -y };
          const mirrored = {
            ...house,
            obstacles: house.obstacles.map((one) => ({ ...one, ...flip(one) })),
            frame: { ...house.frame, ...flip(house.frame) },
          };
          const turned = across ? present : { front: present.back, back: present.front };
          const other = torsionCases(surfacesOf(mirrored, over, turned), inside, sizes);
          const signs = across ? [-1, 1, 1, 1, -1, -1, -1] : [1, -1, 1, -1, 1, -1, 1];
          const places = new Map(other.cases.map((one, index) => [nameOf(one), index]));
          for (const [index, one] of table.cases.entries()) {
            const twin = places.get(nameOf(one, { [axis]: true })) ?? -1;
            const image = componentsOf(other, twin);
            for (const [place, value] of componentsOf(table, index).entries()) {
              const off = value - (signs[place] ?? NaN) * (image[place] ?? NaN);
              expect(Math.abs(off), `${nameOf(one)} ${place}`).toBeLessThan(1e-9);
            }
          }
        }
      }),
      40,
    );
  });
});
