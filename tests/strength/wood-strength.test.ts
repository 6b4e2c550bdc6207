import { Refusal } from "@hoopstay/core";
import {
  type Lumber,
  type LumberStrength,
  lumberGrades,
  lumberStrength,
  nominalWidth,
  panelBendingStrength,
  panelRows,
  woodKinds,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, seed } from "./member-arbitrary.ts";
import { covered, inch } from "./member-examples.ts";
import { worthOf } from "./member-units.ts";

const psi = worthOf("psi");
const stud: Lumber = {
  wood: "spruce-pine-fir",
  grade: "stud",
  thickness: 1.5 * inch,
  width: 3.5 * inch,
  loaded: "edge",
  wet: false,
};
const board = (part: Partial<Lumber>) => lumberStrength({ ...stud, ...part });
function strong(part: Partial<Lumber>): LumberStrength {
  const strength = board(part);
  if (!strength.covered) throw new Error(strength.reason);
  return strength;
}
const dressed = [3.5, 4.5, 5.5, 7.25, 9.25, 11.25] as const;

describe("boards and studs under wind", () => {
  test("nominal widths by dressed inches, whole millimetres, and the next size for sawn full", () => {
    expect(dressed.map((width) => nominalWidth(width * inch))).toEqual([4, 5, 6, 8, 10, 12]);
    expect([0.089, 0.14, 0.184, 0.235, 0.286].map(nominalWidth)).toEqual([4, 6, 8, 10, 12]);
    expect(nominalWidth(4 * inch)).toBe(5);
    expect(nominalWidth(11.3 * inch)).toBeNull();
  });

  test("LRFD is 2.159 over 1.6 of ASD in bending, 2.16 over 1.6 in shear", () => {
    for (const wood of woodKinds) {
      for (const grade of lumberGrades) {
        const { moment, shear } = strong({ wood, grade });
        expect(moment.LRFD / moment.ASD).toBeCloseTo((2.54 * 0.85) / 1.6, 9);
        expect(shear.LRFD / shear.ASD).toBeCloseTo((2.88 * 0.75) / 1.6, 9);
        expect(moment.ASD / moment.nominal).toBeCloseTo(1.6, 12);
      }
    }
  });

  test("wet service: 0.85 above 1150 psi of F_b C_F and nothing below, shear 0.97, E 0.9", () => {
    const ratio = (part: Partial<Lumber>) =>
      strong({ ...part, wet: true }).moment.ASD / strong(part).moment.ASD;
    // 675 x 1.1 = 743 psi; 875 x 1.5 = 1313; 900 x 1.3 = 1170; 900 x 1.2 = 1080.
    expect(ratio({})).toBe(1);
    expect(ratio({ grade: "No. 2" })).toBeCloseTo(0.85, 12);
    const fir = { wood: "douglas-fir-larch", grade: "No. 2" } as const;
    expect(ratio({ ...fir, width: 5.5 * inch })).toBeCloseTo(0.85, 12);
    expect(ratio({ ...fir, width: 7.25 * inch })).toBe(1);
    const [dry, wet] = [strong({}), strong({ wet: true })];
    expect(wet.shear.ASD / dry.shear.ASD).toBeCloseTo(0.97, 12);
    expect(dry.modulus / psi).toBeCloseTo(1_200_000, 3);
    expect(wet.modulus / dry.modulus).toBeCloseTo(0.9, 12);
  });

  test("stud grade is never stronger than No. 2", () => {
    for (const wood of woodKinds) {
      for (const width of [3.5, 5.5]) {
        for (const wet of [true, false]) {
          const part = { wood, width: width * inch, wet };
          const two = strong({ ...part, grade: "No. 2" });
          expect(strong({ ...part, grade: "stud" }).moment.ASD).toBeLessThan(two.moment.ASD);
        }
      }
    }
  });

  test("a wider dressed size is never weaker, on edge or flat", () => {
    for (const wood of woodKinds) {
      for (const loaded of ["edge", "face"] as const) {
        const moments = dressed.slice(0, 4).map((width) => {
          const part = { wood, grade: "No. 2", loaded, width: width * inch, wet: true } as const;
          return strong(part).moment.ASD;
        });
        expect([...moments].sort((one, other) => one - other)).toEqual(moments);
      }
    }
  });

  test("laws: thicker is never weaker; k3 with the size within one row", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...woodKinds),
        between(0.0381, 0.06),
        between(1, 1.03),
        fc.boolean(),
        (wood, thickness, more, wet) => {
          const part = { wood, grade: "No. 2", wet, width: 0.12, thickness } as const;
          const thick = strong({ ...part, thickness: more * thickness });
          expect(thick.moment.ASD).toBeGreaterThanOrEqual(strong(part).moment.ASD);
          const larger = strong({ ...part, thickness: more * thickness, width: more * 0.12 });
          const expected = more ** 3 * strong(part).moment.ASD;
          expect(larger.moment.ASD / expected).toBeCloseTo(1, 9);
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  test("outside dimension lumber it says so: just outside, not just inside", () => {
    const state = (part: Partial<Lumber>) => {
      const strength = board(part);
      return strength.covered ? "covered" : strength.id;
    };
    expect(state({ thickness: 0.038 })).toBe("covered");
    expect(state({ thickness: 0.0378 })).toBe("lumber-thickness");
    expect(state({ thickness: 0.75 * inch })).toBe("lumber-thickness");
    expect(state({ thickness: 4 * inch, width: 5.5 * inch })).toBe("covered");
    expect(state({ thickness: 4.1 * inch, width: 5.5 * inch })).toBe("lumber-thickness");
    for (const wood of woodKinds) {
      expect(state({ wood, width: 7.25 * inch }), wood).toBe("lumber-width");
    }
    expect(state({ width: 7.25 * inch, grade: "No. 2" })).toBe("covered");
    expect(state({ width: 9.25 * inch, grade: "No. 2" })).toBe("lumber-slender");
    expect(state({ width: 9.25 * inch, grade: "No. 2", loaded: "face" })).toBe("covered");
    expect(state({ width: 11.8 * inch, grade: "No. 2", loaded: "face" })).toBe("lumber-width");
    expect(state({ width: 1.25 * inch })).toBe("lumber-turned");
    expect(() => board({ thickness: 0 })).toThrow(Refusal);
    expect(() => board({ width: Number.NaN })).toThrow(Refusal);
  });
});

describe("panels", () => {
  test("across the strength axis is weaker, wet keeps 0.75, wind gives 1.6", () => {
    for (const { rating } of panelRows) {
      const at = (alongStrength: boolean, wet: boolean) =>
        covered(panelBendingStrength({ rating, alongStrength, wet }));
      expect(at(false, false).ASD).toBeLessThan(at(true, false).ASD);
      expect(at(true, true).ASD / at(true, false).ASD).toBeCloseTo(0.75, 12);
      expect(at(true, false).ASD / at(true, false).nominal).toBeCloseTo(1.6, 12);
    }
  });

  test("a panel without a span rating has no number", () => {
    const panel = { rating: null, alongStrength: true, wet: true } as const;
    expect(panelBendingStrength(panel)).toMatchObject({ covered: false, id: "panel-rating" });
  });
});
