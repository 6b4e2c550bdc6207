import { Refusal } from "@hoopstay/core";
import {
  bendingStrength,
  flangeHolesStrength,
  type HolePlace,
  holedRoundSection,
  holedRoundStrength,
  type RoundSection,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anySteel, between, boxTube, roundTube, seed } from "./member-arbitrary.ts";
import { box, covered, grade50, inch, ksi, round, steelOfYield } from "./member-examples.ts";

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 400 });

const damage = inch / 16;
const places = ["extreme fibres", "neutral axis"] as const satisfies readonly HolePlace[];

/** Area, second moment and first moment of both halves of a ring less a strip, cell by cell. */
function byCells(D: number, t: number, w: number, place: HolePlace) {
  const cells = 1200;
  const side = D / cells;
  let [area, second, first] = [0, 0, 0];
  for (let column = 0; column < cells; column++) {
    for (let line = 0; line < cells; line++) {
      const x = (column + 0.5) * side - D / 2;
      const y = (line + 0.5) * side - D / 2;
      const radius = Math.hypot(x, y);
      if (radius > D / 2 || radius < D / 2 - t) continue;
      if (Math.abs(place === "extreme fibres" ? x : y) < w / 2) continue;
      area += side * side;
      second += y * y * side * side;
      first += Math.abs(y) * side * side;
    }
  }
  return { area, second, first };
}

const farthestFibre = (D: number, w: number, place: HolePlace) =>
  place === "extreme fibres" ? Math.sqrt(D * D - w * w) / 2 : D / 2;

describe("a bolt hole right through a round tube", () => {
  test.each(places)("%s: the closed form is the sum over a million cells", (place) => {
    for (const [D, t, hole] of [
      [0.05, 0.004, 0.01],
      [0.0483, 0.0015, 0.0095],
      [0.0334, 0.0083, 0.012],
    ] as const) {
      const net = holedRoundSection(round(D, t), hole, place);
      const w = hole + damage;
      const cells = byCells(D, t, w, place);
      expect(net.area / cells.area).toBeCloseTo(1, 2);
      expect(net.plasticModulus / cells.first).toBeCloseTo(1, 2);
      expect(net.elasticModulus / (cells.second / farthestFibre(D, w, place))).toBeCloseTo(1, 2);
    }
  });

  test("5/16 in bolt in 2-3/8 in tube: 19 % of Z; in 1.9 in tube 24 %, in 1.315 in tube 35 %", () => {
    const loss = (outside: number) => {
      const tube = round(outside * inch, 0.06045 * inch);
      const net = holedRoundSection(tube, (3 / 8) * inch, "extreme fibres");
      return 1 - net.plasticModulus / tube.plasticModulusX;
    };
    // By hand: w t (D - t) over (D3 - d3)/6, w 7/16 in.
    expect(loss(2.375)).toBeCloseTo(0.189, 3);
    expect(loss(1.9)).toBeCloseTo(0.238, 3);
    expect(loss(1.315)).toBeCloseTo(0.348, 3);
  });

  test("a hole on the neutral axis takes little of Z, and hardly any of S", () => {
    const tube = round(0.05, 0.002);
    const net = holedRoundSection(tube, 0.01, "neutral axis");
    expect(net.plasticModulus / tube.plasticModulusX).toBeGreaterThan(0.97);
    expect(net.elasticModulus / tube.elasticModulusX).toBeGreaterThan(0.98);
  });

  const strengthAt = (tube: RoundSection, hole: number, place: HolePlace) => {
    const strength = holedRoundStrength(tube, grade50, hole, place);
    if ("covered" in strength) throw new Error(strength.reason);
    return strength;
  };

  test("never stronger than the tube; a wider hole is never stronger; across is the weaker way", () => {
    holds(
      fc.property(roundTube, between(0.05, 0.5), between(0.3, 1), (tube, share, less) => {
        fc.pre(tube.outside / tube.wall < 200 && tube.outside / tube.wall > 6);
        const section = round(tube.outside, tube.wall);
        const hole = share * (tube.outside - 2 * tube.wall - damage);
        fc.pre(hole > 1e-4);
        const whole = covered(bendingStrength(section, "x", grade50, 1));
        const [across, along] = places.map((place) => strengthAt(section, hole, place)) as [
          ReturnType<typeof strengthAt>,
          ReturnType<typeof strengthAt>,
        ];
        expect(across.moment.nominal).toBeLessThan(whole.nominal);
        expect(along.moment.nominal).toBeLessThanOrEqual(whole.nominal);
        expect(across.moment.ASD).toBeLessThanOrEqual(along.moment.ASD);
        expect(across.tension).toEqual(along.tension);
        const narrower = strengthAt(section, less * hole, "extreme fibres");
        expect(narrower.moment.ASD).toBeGreaterThanOrEqual(across.moment.ASD * (1 - 1e-12));
        expect(narrower.tension.ASD).toBeGreaterThanOrEqual(across.tension.ASD * (1 - 1e-12));
      }),
    );
  });

  test("yielding governs where F_u is far above F_y, rupture where it is near", () => {
    const tube = round(0.05, 0.004);
    const state = (tensile: number) => {
      const steel = steelOfYield(36 * ksi, tensile * ksi);
      const strength = holedRoundStrength(tube, steel, 0.01, "extreme fibres");
      if ("covered" in strength) throw new Error(strength.reason);
      return strength.moment;
    };
    const net = holedRoundSection(tube, 0.01, "extreme fibres");
    const [yielding, rupture] = [state(58), state(40)];
    expect([yielding.id, rupture.id]).toEqual(["hole-yield", "hole-rupture"]);
    expect(yielding.nominal / (36 * ksi * net.plasticModulus)).toBeCloseTo(1, 12);
    expect(rupture.nominal / (40 * ksi * net.elasticModulus)).toBeCloseTo(1, 12);
  });

  test("a tube that is not covered stays so, and a hole wider than the inside is refused", () => {
    const tin = round(0.2, 0.0002);
    expect(holedRoundStrength(tin, grade50, 0.01, "extreme fibres")).toMatchObject({
      covered: false,
    });
    const tube = round(0.03, 0.005);
    const inside = 0.02 - damage;
    expect(() => holedRoundSection(tube, inside * 0.999, "extreme fibres")).not.toThrow();
    expect(() => holedRoundSection(tube, inside * 1.001, "extreme fibres")).toThrow(Refusal);
    expect(() => holedRoundSection(tube, 0, "extreme fibres")).toThrow(Refusal);
    expect(() => holedRoundSection(tube, Number.NaN, "neutral axis")).toThrow(Refusal);
  });
});

describe("holes in the flange of a rectangular tube, F13.1", () => {
  test("count from F_u A_fn below Y_t F_y A_fg, Y_t 1.0 to F_y/F_u 0.8 and 1.1 above", () => {
    const tube = box(0.1, 0.1, 0.006);
    const whole = covered(bendingStrength(tube, "x", steelOfYield(46 * ksi), 1)).nominal;
    for (const [fy, fu, share] of [
      [46, 58, 46 / 58],
      [50, 62, (1.1 * 50) / 62],
      [40, 50, 40 / 50],
    ] as const) {
      const steel = steelOfYield(fy * ksi, fu * ksi);
      const at = (left: number) => {
        const diameter = (1 - left) * 0.1 - damage;
        return covered(flangeHolesStrength(tube, "x", steel, { diameter, count: 1 }, 1));
      };
      expect(at(share + 1e-6).nominal / whole).toBeCloseTo(fy / 46, 9);
      const ruptured = at(share - 1e-6);
      expect(ruptured.id).toBe("flange-rupture");
      const expected = fu * ksi * (share - 1e-6) * tube.elasticModulusX;
      expect(ruptured.nominal / expected).toBeCloseTo(1, 9);
    }
  });

  test("never stronger than without, and two holes never stronger than one", () => {
    holds(
      fc.property(boxTube, anySteel, between(0.05, 0.4), (tube, steel, share) => {
        const section = box(tube.depth, tube.width, tube.wall);
        const diameter = share * tube.width - damage;
        fc.pre(diameter > 1e-4 && share < 0.45);
        const whole = bendingStrength(section, "x", steel, 1);
        const one = flangeHolesStrength(section, "x", steel, { diameter, count: 1 }, 1);
        const two = flangeHolesStrength(section, "x", steel, { diameter, count: 2 }, 1);
        expect(one.covered).toBe(whole.covered);
        if (!whole.covered || !one.covered || !two.covered) return;
        expect(one.ASD).toBeLessThanOrEqual(whole.ASD);
        expect(two.ASD).toBeLessThanOrEqual(one.ASD);
      }),
    );
  });

  test("holes that take the flange, and a broken count, are refused", () => {
    const tube = box(0.1, 0.1, 0.006);
    const at = (diameter: number, count: number) => () =>
      flangeHolesStrength(tube, "x", grade50, { diameter, count }, 1);
    expect(at(0.1 - damage - 1e-6, 1)).not.toThrow();
    expect(at(0.1 - damage + 1e-6, 1)).toThrow(Refusal);
    expect(at(0.05, 2)).toThrow(Refusal);
    expect(at(0.01, 0)).toThrow(Refusal);
    expect(at(0.01, 1.5)).toThrow(Refusal);
  });
});
