import {
  bendingStrength,
  compressionStrength,
  interaction,
  interactionReach,
  interactionWithTorsion,
  type MemberSection,
  type MemberStrength,
  memberSection,
  roundShearStress,
  type Steel,
  shearStrength,
  slendernessLimits,
  tensionStrength,
  torsionStrength,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import {
  box,
  covered,
  grade50,
  inch,
  ksi,
  ofKind,
  round,
  steelOfYield,
} from "./member-examples.ts";

const E = 29_000 * ksi;
const hair = 1e-9;

/** Yield strength at which a ratio stands on the border c sqrt(E/F_y). */
const onRoot = (ratio: number, c: number) => E * (c / ratio) ** 2;
/** Yield strength at which a ratio stands on the border c E/F_y. */
const onLine = (ratio: number, c: number) => (c * E) / ratio;

/** Strengths just inside and just outside a border, each over F_y, which differs by a hair. */
function across(fy: number, strength: (steel: Steel) => MemberStrength, apart = hair) {
  const inside = covered(strength(steelOfYield(fy * (1 - apart))));
  const outside = covered(strength(steelOfYield(fy * (1 + apart))));
  return { inside, outside, step: outside.nominal / inside.nominal - 1 };
}

const short = { bucklingX: 1e-3, bucklingY: 1e-3 };
const thin = box(0.2, 0.2, 0.0025);
const wideFlange = box(0.1, 0.15, 0.003);
const ratioOf = (side: number, wall: number) => side / wall - 3;

describe("borders between compact, noncompact and slender: which side, and the step", () => {
  test("F7 flange: compact to noncompact without a step", () => {
    const fy = onRoot(ratioOf(0.15, 0.003), 1.12);
    const { inside, outside, step } = across(fy, (steel) =>
      bendingStrength(wideFlange, "x", steel, 0.01),
    );
    expect([inside.id, outside.id]).toEqual(["bending-yield", "flange-buckling"]);
    expect(Math.abs(step)).toBeLessThan(1e-7);
  });

  test("F7 flange: noncompact to slender, F_y S, with less than 0.1 % of a step down", () => {
    const fy = onRoot(ratioOf(0.15, 0.003), 1.4);
    const { inside, outside, step } = across(fy, (steel) =>
      bendingStrength(wideFlange, "x", steel, 0.01),
    );
    expect([inside.id, outside.id]).toEqual(["flange-buckling", "flange-buckling"]);
    expect(inside.nominal / (fy * wideFlange.elasticModulusX)).toBeCloseTo(1, 7);
    expect(step).toBeLessThan(0);
    expect(step).toBeGreaterThan(-1e-3);
  });

  test("F7 web: compact to noncompact without a step, and F_y S at the end of the table", () => {
    const tall = box(0.3, 0.05, 0.005);
    const fy = onRoot(ratioOf(0.3, 0.005), 2.42);
    const { outside, step } = across(fy, (steel) => bendingStrength(tall, "x", steel, 0.01));
    expect(outside.id).toBe("web-buckling");
    expect(Math.abs(step)).toBeLessThan(1e-7);
    const last = onRoot(ratioOf(0.3, 0.005), 5.7) * (1 - hair);
    const end = covered(bendingStrength(tall, "x", steelOfYield(last), 1e-3));
    expect(end.id).toBe("web-buckling");
    expect(end.nominal / (last * tall.elasticModulusX)).toBeCloseTo(1, 7);
  });

  test("F7.4: turning out begins at L_p and turns elastic at L_r, both without a step", () => {
    const tall = box(0.15, 0.05, 0.004);
    const at = (length: number) => covered(bendingStrength(tall, "x", grade50, length));
    const root = Math.sqrt(tall.torsionConstant * tall.area);
    const plastic = grade50.yieldStrength * tall.plasticModulusX;
    const first = 0.7 * grade50.yieldStrength * tall.elasticModulusX;
    const short = (0.13 * E * tall.radiusY * root) / plastic;
    const long = (2 * E * tall.radiusY * root) / first;
    expect(at(short * (1 - hair)).id).toBe("bending-yield");
    expect(at(short * (1 + hair)).id).toBe("turning");
    expect(at(short * (1 + hair)).nominal / plastic).toBeCloseTo(1, 7);
    expect(at(long * (1 - hair)).nominal / first).toBeCloseTo(1, 7);
    expect(at(long * (1 + hair)).nominal / first).toBeCloseTo(1, 7);
    expect(at(2 * long).nominal / first).toBeCloseTo(0.5, 7);
    const lying = (length: number) => covered(bendingStrength(tall, "y", grade50, length));
    expect(lying(1).nominal).toBe(lying(99).nominal);
    const square = box(0.1, 0.1, 0.005);
    expect(covered(bendingStrength(square, "x", grade50, 99)).id).toBe("bending-yield");
  });

  test("F8: compact to noncompact, up to 0.5 % down, never up", () => {
    for (const ratio of [40, 45, 60, 80, 140]) {
      const tube = round(0.1, 0.1 / ratio);
      const { outside, step } = across(onLine(ratio, 0.07), (steel) =>
        bendingStrength(tube, "x", steel, 1),
      );
      expect(outside.id).toBe("local-buckling");
      expect(step, `D/t ${ratio}`).toBeLessThan(1e-7);
      expect(step, `D/t ${ratio}`).toBeGreaterThan(-0.006);
    }
  });

  test("F8: noncompact to slender, 0.3 % down", () => {
    const tube = round(0.3, 0.3 / 180);
    const { step } = across(onLine(180, 0.31), (steel) => bendingStrength(tube, "x", steel, 1));
    expect(step).toBeCloseTo(0.33 / 0.31 / (0.021 / 0.31 + 1) - 1, 6);
    expect(step).toBeLessThan(0);
  });

  test("E3: with yielding and without meet to 0.05 % at 4.71 sqrt(E/F_y), and step down", () => {
    const tube = round(0.05, 0.004);
    const border = slendernessLimits.inelasticBuckling.evaluate(E, grade50.yieldStrength);
    const at = (slenderness: number) => {
      const length = slenderness * tube.radiusX;
      const lengths = { bucklingX: length, bucklingY: length };
      return covered(compressionStrength(tube, grade50, lengths)).nominal;
    };
    const [inside, outside] = [at(border * (1 - hair)), at(border * (1 + hair))];
    expect(outside).toBeLessThan(inside);
    expect(outside / inside).toBeGreaterThan(1 - 5e-4);
    const ratio = 4.71 ** 2 / Math.PI ** 2;
    const gross = grade50.yieldStrength * tube.area;
    expect(inside / gross).toBeCloseTo(0.658 ** ratio, 6);
    expect(outside / gross).toBeCloseTo(0.877 / ratio, 6);
  });

  test("E7: walls of a rectangular tube lose their first part within 0.1 %", () => {
    // Even 1 mm of length moves the border by a millionth.
    const { inside, outside, step } = across(
      onRoot(ratioOf(0.2, 0.0025), 1.4),
      (steel) => compressionStrength(thin, steel, short),
      1e-5,
    );
    expect(inside.name).not.toContain("slender walls");
    expect(outside.name).toContain("slender walls");
    expect(step).toBeLessThan(0);
    expect(step).toBeGreaterThan(-1e-3);
  });

  test("E7: a round tube is whole up to 0.11 E/F_y and, by the cap, to 0.114 E/F_y", () => {
    const tube = round(0.2, 0.2 / 90);
    const { step } = across(onLine(90, 0.11), (steel) => compressionStrength(tube, steel, short));
    expect(Math.abs(step)).toBeLessThan(1e-7);
    const area = (c: number) => {
      const steel = steelOfYield(onLine(90, c));
      return covered(compressionStrength(tube, steel, short)).nominal / steel.yieldStrength;
    };
    expect(area(0.113) / tube.area).toBeCloseTo(1, 4);
    expect(area(0.2) / tube.area).toBeCloseTo(0.038 / 0.2 + 2 / 3, 4);
  });

  test("G4: webs stop yielding without a step, and buckle elastically 0.2 % higher", () => {
    const side = ratioOf(0.2, 0.0025);
    const shear = (steel: Steel) => shearStrength(thin, "x", steel, 1);
    expect(Math.abs(across(onRoot(side, 1.1 * Math.sqrt(5)), shear).step)).toBeLessThan(1e-7);
    const { step } = across(onRoot(side, 1.37 * Math.sqrt(5)), shear);
    expect(step).toBeCloseTo(1.51 / 1.37 ** 2 / (1.1 / 1.37) - 1, 6);
    expect(step).toBeLessThan(0.0021);
  });

  test("G5: yielding, the shorter and the longer form of buckling meet", () => {
    const [D, t] = [0.5, 0.5 / 150];
    const at = (length: number) =>
      roundShearStress.evaluate(E, Number.POSITIVE_INFINITY, length, D, t);
    const short = (0.78 * E) / 150 ** 1.5;
    const meet = D * ((1.6 / 0.78) * 150 ** 0.25) ** 2;
    expect(at(meet) / short).toBeCloseTo(1, 9);
    expect(at(2 * meet) / short).toBeCloseTo(1, 9);
    expect(at(meet / 4) / short).toBeCloseTo(2, 9);
    const yields = (fy: number) => roundShearStress.evaluate(E, fy, meet, D, t);
    expect(yields(short / 0.6 / 1.01)).toBeCloseTo(short / 1.01, 3);
    expect(yields(short / 0.6 / 0.99)).toBeCloseTo(short, 3);
  });

  test("H3.1: long sides stop yielding without a step, and buckle elastically 0.2 % higher", () => {
    const side = ratioOf(0.2, 0.0025);
    const torsion = (steel: Steel) => torsionStrength(thin, steel, 1);
    expect(Math.abs(across(onRoot(side, 2.45), torsion).step)).toBeLessThan(1e-7);
    const { step } = across(onRoot(side, 3.07), torsion);
    expect(step).toBeCloseTo((0.458 * Math.PI ** 2) / 3.07 ** 2 / ((0.6 * 2.45) / 3.07) - 1, 6);
    expect(step).toBeLessThan(0.0018);
  });

  test("F11: a bar on edge begins to turn out 0.2 % lower, and turns elastic 0.06 % higher", () => {
    const bar = ofKind(memberSection({ kind: "flat", width: 0.1, thickness: 0.01 }), "flat");
    const at = (c: number) => {
      const length = (((c * E) / grade50.yieldStrength) * bar.thickness ** 2) / bar.width;
      return covered(bendingStrength(bar, "x", grade50, length)).nominal;
    };
    const yieldMoment = grade50.yieldStrength * bar.elasticModulusX;
    expect(at(0.08 - hair) / yieldMoment).toBeCloseTo(1.5, 9);
    expect(at(0.08 + hair) / yieldMoment).toBeCloseTo(1.52 - 0.274 * 0.08, 6);
    expect(at(1.9 - hair) / yieldMoment).toBeCloseTo(1.52 - 0.274 * 1.9, 6);
    expect(at(1.9 + hair) / yieldMoment).toBeCloseTo(1, 6);
    expect(at(3.8) / yieldMoment).toBeCloseTo(0.5, 9);
  });

  test("D2: the lower of yielding and rupture, on both sides of F_y A_g/1.67 = F_u A_e/2", () => {
    const tube = round(0.05, 0.004);
    const { yieldStrength, tensileStrength } = grade50;
    const area = (2 * yieldStrength * tube.area) / 1.67 / tensileStrength;
    const at = (share: number) =>
      tensionStrength(tube, grade50, { area: share * area, shearLag: 1 });
    expect(at(1 + 1e-6).id).toBe("tension-yield");
    expect(at(1 - 1e-6).id).toBe("tension-rupture");
    expect(at(1 - 1e-6).ASD / at(1 + 1e-6).ASD).toBeCloseTo(1, 5);
  });
});

describe("H1-1 and H3-6 at a fifth", () => {
  test("at P_r/P_c 0.2 both forms are 1 with a moment of 0.9, and only there without a step", () => {
    const at = (p: number, m: number) => interaction(p, 1, m, 1, 0, 1);
    expect(at(0.2, 0.9)).toBeCloseTo(1, 12);
    expect(at(0.2 - 1e-12, 0.9)).toBeCloseTo(1, 10);
    expect(at(0.2, 0.45)).toBeCloseTo(0.6, 12);
    expect(at(0.2 - 1e-12, 0.45)).toBeCloseTo(0.55, 10);
    expect(at(0.2, 1.8)).toBeCloseTo(1.8, 12);
    expect(at(0.2 - 1e-12, 1.8)).toBeCloseTo(1.9, 10);
    expect(interactionReach(0.2, 0.45, 0)).toBeCloseTo(0.6, 12);
    expect(interactionReach(0.2 - 1e-12, 0.45, 0)).toBeCloseTo(0.6, 10);
  });

  test("torsion counts only above a fifth", () => {
    expect(interactionWithTorsion(0.3, 0.2, 0.1, 0.1, 0.2)).toBe(interactionReach(0.3, 0.2, 0.1));
    expect(interactionWithTorsion(0.3, 0.2, 0.1, 0.1, 0.2 + 1e-9)).toBeCloseTo(0.6 + 0.09, 7);
  });
});

describe("where the standard ends: covered just inside, said just outside", () => {
  const ends: readonly (readonly [string, number, (steel: Steel) => MemberStrength, string])[] = [
    [
      "round tube in bending, D/t 0.45 E/F_y",
      onLine(200, 0.45),
      (steel) => bendingStrength(round(0.2, 0.001), "x", steel, 1),
      "round-wall",
    ],
    [
      "round tube in compression, D/t 0.45 E/F_y",
      onLine(200, 0.45),
      (steel) => compressionStrength(round(0.2, 0.001), steel, short),
      "round-wall",
    ],
    [
      "slender web in bending, h/t 5.70 sqrt(E/F_y)",
      onRoot(197, 5.7),
      (steel) => bendingStrength(box(0.2, 0.1, 0.001), "x", steel, 1),
      "slender-web",
    ],
    [
      "flat bar in shear, b/t 1.10 sqrt(1.2 E/F_y)",
      onRoot(25, 1.1 * Math.sqrt(1.2)),
      (steel) => shearStrength(flat(0.1, 0.004), "x", steel, 1),
      "thin-flat",
    ],
  ];

  test.each(ends)("%s", (_, fy, strength, id) => {
    expect(strength(steelOfYield(fy * (1 - hair))).covered).toBe(true);
    const outside = strength(steelOfYield(fy * (1 + hair)));
    expect(outside.covered).toBe(false);
    expect(!outside.covered && outside.id).toBe(id);
  });

  test("webs and sides up to 260 walls", () => {
    const at = (ratio: number) => box(0.6, 0.6, 0.6 / (ratio + 3));
    expect(shearStrength(at(259.999), "x", grade50, 1).covered).toBe(true);
    expect(shearStrength(at(260.001), "x", grade50, 1).covered).toBe(false);
    expect(torsionStrength(at(259.999), grade50, 1).covered).toBe(true);
    expect(torsionStrength(at(260.001), grade50, 1).covered).toBe(false);
  });

  test("angles, torsion of bars, shear of rods: said, not guessed", () => {
    const angle = memberSection({ kind: "angle", legs: [2 * inch, 2 * inch], thickness: inch / 4 });
    const rod = memberSection({ kind: "bar", diameter: 0.02 });
    const results: readonly MemberStrength[] = [
      compressionStrength(angle, grade50, short),
      bendingStrength(angle, "x", grade50, 1),
      shearStrength(angle, "x", grade50, 1),
      torsionStrength(angle, grade50, 1),
      shearStrength(rod, "x", grade50, 1),
      torsionStrength(rod, grade50, 1),
      torsionStrength(flat(0.1, 0.01), grade50, 1),
    ];
    expect(results.map((result) => result.covered)).toEqual(results.map(() => false));
    expect(tensionStrength(angle, grade50).covered).toBe(true);
  });
});

const flat = (width: number, thickness: number): MemberSection =>
  memberSection({ kind: "flat", width, thickness });
