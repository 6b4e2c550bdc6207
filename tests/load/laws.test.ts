import {
  alongStretches,
  archedAcross,
  asce716,
  asce722,
  freeRoofAcross,
  freeRoofAngle,
  fromGust,
  type HillShape,
  hillRows,
  leewardWall,
  mapSpeed,
  pressureFactors,
  shellOf,
  windwardRows,
  workingGust,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, centreLines, holds, seed } from "./arbitrary-house.ts";

const exposure = fc.constantFrom("B" as const, "C" as const, "D" as const);
const hill = fc.record({
  shape: fc.constantFrom(...(Object.keys(hillRows) as HillShape[])),
  height: between(2, 60),
  halfLength: between(10, 200),
  distance: between(-300, 300),
});
const place = fc.record({ exposure, elevation: between(0, 3000), hill });

describe(`laws of wind pressure (seed ${seed})`, () => {
  test("pressure goes with the square of the speed, whatever its basis", () => {
    const basis = fc.constantFrom("design" as const, "service" as const, "gust" as const);
    holds(
      fc.property(place, basis, between(5, 60), between(1, 3), (at, kind, speed, k) => {
        const { kz, kzt, kd, ke, perSpeedSquared } = pressureFactors(
          { ...at, edition: asce716 },
          4,
        );
        const pressure = (v: number) =>
          asce716.velocityPressure.evaluate(kz, kzt, kd, ke, mapSpeed(v, kind));
        expect(pressure(k * speed) / pressure(speed)).toBeCloseTo(k * k, 9);
        const square = perSpeedSquared * mapSpeed(speed, kind) ** 2;
        expect(square / pressure(speed)).toBeCloseTo(1, 12);
      }),
    );
  });

  test("both editions give the same pressure up to K_z, for every bracket", () => {
    holds(
      fc.property(
        place,
        between(0, 30),
        between(-2, 2),
        between(-1, 1),
        (at, height, outside, inside) => {
          const [old, young] = [asce716, asce722].map((edition) => {
            const { kz, kzt, kd, ke } = pressureFactors({ ...at, edition }, height);
            const q = edition.velocityPressure.evaluate(kz, kzt, kd, ke, 40);
            return edition.pressure.evaluate(q, kd, outside, inside) / kz;
          });
          expect(Math.abs((old ?? NaN) - (young ?? NaN))).toBeLessThan(1e-9);
        },
      ),
    );
  });

  test("a gust is checked where its working gust is itself; service is the map speed's 0.6", () => {
    holds(
      fc.property(between(1, 80), (speed) => {
        expect(workingGust.evaluate(fromGust.evaluate(speed, 0.85), 0.85)).toBeCloseTo(speed, 10);
        expect(mapSpeed(speed, "service") ** 2 * 0.6).toBeCloseTo(speed ** 2, 8);
        const gust = pressureFactors({ edition: asce716, exposure: "C" }, 3);
        const real = 0.613 * gust.kz * speed ** 2;
        const mapped = gust.perSpeedSquared * mapSpeed(speed, "gust") ** 2;
        expect((0.6 * mapped) / real).toBeCloseTo(1, 12);
      }),
    );
  });

  test("a hill never lowers the pressure, and least of all where its place is unknown", () => {
    holds(
      fc.property(exposure, hill, between(0, 30), (of, { distance, ...visible }, height) => {
        const factor = (on?: typeof visible & { distance?: number }) =>
          pressureFactors({ edition: asce722, exposure: of, ...(on ? { hill: on } : {}) }, height)
            .kzt;
        expect(factor()).toBe(1);
        expect(factor({ ...visible, distance })).toBeGreaterThanOrEqual(1);
        expect(factor(visible)).toBeGreaterThanOrEqual(factor({ ...visible, distance }));
      }),
    );
  });

  test("K_z never falls with height, nor from B to C to D, and stands still below 15 ft", () => {
    holds(
      fc.property(between(0, 30), between(0, 30), (one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        for (const edition of [asce716, asce722]) {
          const kz = (of: "B" | "C" | "D", z: number) =>
            pressureFactors({ edition, exposure: of }, z).kz;
          for (const of of ["B", "C", "D"] as const) {
            expect(kz(of, high)).toBeGreaterThanOrEqual(kz(of, low));
            expect(kz(of, 4.5)).toBe(kz(of, 0));
          }
          expect(kz("C", low)).toBeGreaterThan(kz("B", low));
          expect(kz("D", low)).toBeGreaterThan(kz("C", low));
        }
      }),
    );
  });
});

describe(`laws of coefficients (seed ${seed})`, () => {
  test("rows are linear between their ends and are kept beyond them", () => {
    holds(
      fc.property(between(0, 8), between(0, 3), between(0.01, 3), (ratio, heights, r) => {
        const wall = leewardWall.evaluate(ratio);
        expect(wall).toBeGreaterThanOrEqual(-0.5);
        expect(wall).toBeLessThanOrEqual(-0.2 + 1e-15);
        const share = Math.min(1, Math.max(0, 2 * heights - 1));
        const [first] = alongStretches(heights);
        expect(first?.coefficient).toBeCloseTo(-0.9 - 0.4 * share, 12);
        const angle = freeRoofAngle(r);
        expect(angle).toBeGreaterThanOrEqual(7.5);
        expect(angle).toBeLessThanOrEqual(37.5);
        for (const set of [0, 1, 2, 3]) {
          const { windward, leeward } = freeRoofAcross(r, set);
          expect(Math.abs(windward)).toBeLessThanOrEqual(1.6);
          expect(Math.abs(leeward)).toBeLessThanOrEqual(1.7);
        }
      }),
    );
  });

  test("rows that run: by springing height and rise; outside the table an error", () => {
    holds(
      fc.property(between(0.01, 0.6), between(0, 1), (r, springing) => {
        const rows = windwardRows(r, springing).map(({ id }) => id);
        const [flat, middle] = [["walls-flat"], ["walls-middle", "walls-alternate"]];
        const walls = r < 0.2 ? flat : r < 0.3 ? middle : ["walls-high"];
        fc.pre([0.2, 0.3].every((edge) => Math.abs(r - edge) > 1e-8));
        const ground = springing <= 0.5 ? ["ground"] : [];
        expect(rows).toEqual(springing <= 0.1 ? ["ground"] : [...ground, ...walls]);
        expect(() => windwardRows(0.61 + r, springing)).toThrow(RangeError);
      }),
    );
  });

  test("a fixed reading leaves the other out and changes nothing else", () => {
    holds(
      fc.property(centreLines, (lines) => {
        const shell = shellOf(lines);
        const both = archedAcross(shell);
        for (const reading of ["arc", "span"] as const) {
          const only = both.filter((one) => one.reading === reading);
          expect(archedAcross(shell, reading)).toEqual(only);
        }
      }),
    );
  });
});
