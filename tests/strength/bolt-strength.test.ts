import { Chapter } from "@hoopstay/core";
import {
  type Bolt,
  type BoltGrade,
  type BoltStrength,
  boltGradeRows,
  boltStrength,
  combinedBoltTension,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { codeOf, inch, kip, ksi } from "./bolt-examples.ts";

const bolt: Bolt = {
  grade: "SAE 5",
  diameter: inch / 2,
  threads: "in the shear plane",
  grip: 2 * inch,
  planes: 2,
};

function covered(change: Partial<Bolt> = {}): BoltStrength {
  const strength = boltStrength({ ...bolt, ...change });
  if (!strength.covered) throw new Error(strength.reason);
  return strength;
}

describe("grade and size", () => {
  test("an unknown grade is the weakest of the table, and says so", () => {
    const unknown = covered({ grade: null });
    expect(unknown.grade).toBe("ISO 4.6");
    expect(unknown.shear.nominal).toBe(covered({ grade: "ISO 4.6" }).shear.nominal);
    expect(unknown.assumed.map(({ id }) => id)).toEqual(["bolt-grade"]);
    for (const grade of ["A307", "SAE 2", "SAE 5", "ISO 5.6"] as const) {
      const known = covered({ grade });
      expect(known.shear.ASD).toBeGreaterThan(unknown.shear.ASD);
      expect(known.tension.ASD).toBeGreaterThan(unknown.tension.ASD);
    }
  });

  test("an unknown grade is no stronger than any grade, in shear or tension, wherever its threads", () => {
    const grades = Object.keys(boltGradeRows) as BoltGrade[];
    for (const threads of ["in the shear plane", "excluded", "unknown"] as const) {
      for (const grip of [1, 3.4, 3.6, 6].map((inches) => inches * inch)) {
        const unknown = covered({ grade: null, threads, grip });
        for (const grade of grades) {
          const known = covered({ grade, threads, grip });
          const words = `${grade}, ${threads}, ${grip}`;
          expect(unknown.shear.ASD, words).toBeLessThanOrEqual(known.shear.ASD);
          expect(unknown.tension.ASD, words).toBeLessThanOrEqual(known.tension.ASD);
        }
      }
    }
  });

  test("of an unknown grade threads count as in the plane though they are clear of it, and it says so", () => {
    const clear = covered({ grade: null, threads: "excluded" });
    expect(clear.assumed.map(({ id }) => id)).toEqual(["bolt-grade", "bolt-threads"]);
    expect(clear.shear.nominal).toBe(covered({ grade: null }).shear.nominal);
    expect(covered({ threads: "excluded" }).assumed).toEqual([]);
  });

  test("only A307 loses strength over a long grip", () => {
    for (const grade of ["A325", "SAE 5", "ISO 4.6"] as const) {
      const [short, long] = [inch, 10 * inch].map((grip) => covered({ grade, grip }));
      expect(long?.shear.nominal, grade).toBe(short?.shear.nominal);
      expect(long?.tension.nominal, grade).toBe(short?.tension.nominal);
    }
    // Table J3.2: 54 and 90 ksi.
    const a325 = covered({ grade: "A325", grip: 10 * inch });
    expect([a325.shearStress / ksi, a325.tensileStress / ksi]).toEqual([
      expect.closeTo(54, 9),
      expect.closeTo(90, 9),
    ]);
  });

  test("shear and tension are told apart by name", () => {
    const { shear, tension } = covered();
    expect([shear.id, tension.id]).toEqual(["bolt-shear", "bolt-tension"]);
    expect([shear.name, tension.name]).toEqual(["shear of the bolt", "tension of the bolt"]);
  });

  test("over a long grip A307 is weaker than 4.6, and then it is the unknown grade", () => {
    const grip = 3.5 * inch;
    const unknown = covered({ grade: null, grip });
    expect(unknown.grade).toBe("A307");
    expect(unknown.shear.nominal).toBeLessThan(covered({ grade: "ISO 4.6", grip }).shear.nominal);
  });

  test("unknown threads count as in the plane, and say so", () => {
    const unknown = covered({ threads: "unknown" });
    expect(unknown.shear.nominal).toBe(covered().shear.nominal);
    expect(unknown.assumed.map(({ id }) => id)).toEqual(["bolt-threads"]);
    expect(covered({ threads: "excluded" }).shear.nominal).toBeGreaterThan(unknown.shear.nominal);
  });

  test.each([
    ["A325", 0.5, 1.5],
    ["SAE 2", 0.25, 0.75],
    ["SAE 5", 0.25, 1],
    ["SAE 8", 0.25, 1],
    ["A307", 0.25, 4],
  ] as const)("%s is covered from %d to %d in, edges included", (grade, from, to) => {
    const at = (inches: number) =>
      boltStrength({ ...bolt, grade, diameter: inches * inch }).covered;
    expect([at(from - 0.001), at(from), at(to), at(to + 0.001)]).toEqual([
      false,
      true,
      true,
      false,
    ]);
  });

  test("an A307 grip that leaves nothing is not covered", () => {
    const at = (grip: number) =>
      boltStrength({ ...bolt, grade: "A307", grip: grip * inch }).covered;
    expect([at(8.7), at(8.8)]).toEqual([true, false]);
  });

  test("no diameter, no grip: refused", () => {
    expect(codeOf(() => boltStrength({ ...bolt, diameter: 0 }))).toBe("not-positive");
    expect(codeOf(() => boltStrength({ ...bolt, diameter: Number.NaN }))).toBe("not-positive");
    expect(codeOf(() => boltStrength({ ...bolt, grip: 50 }))).toBe("out-of-range");
  });
});

describe("shear and tension together (J3.8)", () => {
  test("below 30 percent of the shear nothing changes", () => {
    const strength = covered();
    for (const method of ["ASD", "LRFD"] as const) {
      const at = (share: number) =>
        combinedBoltTension(strength, share * strength.shear[method], method);
      expect(at(0)).toBeCloseTo(strength.tension[method], 6);
      expect(at(0.3)).toBeCloseTo(strength.tension[method], 6);
      expect(at(0.31)).toBeLessThan(strength.tension[method]);
    }
  });

  test("at the whole shear 30 percent of the tension is left, beyond it none", () => {
    const strength = covered();
    for (const method of ["ASD", "LRFD"] as const) {
      const shear = strength.shear[method];
      const left = combinedBoltTension(strength, shear * (1 - 1e-12), method);
      expect(left / strength.tension[method]).toBeCloseTo(0.3, 9);
      expect(combinedBoltTension(strength, shear * 1.000001, method)).toBe(0);
    }
  });

  test("shear as great as the available shear is allowed, 0.3 F_nt is left", () => {
    const round = {
      ...covered(),
      planes: 1,
      area: 1,
      shearStress: 4e8,
      tensileStress: 8e8,
    } as const;
    // phi 0.75 of 4e8 is 3e8; 0.75 x 0.3 x 8e8.
    expect(combinedBoltTension(round, 3e8, "LRFD")).toBeCloseTo(1.8e8, 0);
    expect(combinedBoltTension(round, 2e8, "ASD")).toBeCloseTo(1.2e8, 0);
    expect(combinedBoltTension(round, 3.0001e8, "LRFD")).toBe(0);
  });

  test("by hand: 1/2 in A325-N, one plane, 3 kip of shear, LRFD", () => {
    // f_rv = 3/0.1963 = 15.28 ksi; F'nt = 117 - 90/(0.75 x 54) 15.28 = 83.05; 0.75 x 83.05 x 0.1963
    const strength = covered({ grade: "A325", planes: 1 });
    expect(combinedBoltTension(strength, 3 * kip, "LRFD") / kip).toBeCloseTo(12.23, 2);
    // ASD: F'nt = 117 - 2 x 90/54 x 15.28 = 66.07; 66.07 x 0.1963 / 2
    expect(combinedBoltTension(strength, -3 * kip, "ASD") / kip).toBeCloseTo(6.486, 2);
  });
});

test("a chapter gets the steps of the very strength", () => {
  const chapter = new Chapter("bolt", "a bolt");
  const worked = boltStrength({ ...bolt, grade: "A325" }, chapter);
  expect(worked).toEqual(boltStrength({ ...bolt, grade: "A325" }));
  const stress = chapter.steps.find(({ symbol }) => symbol === "F_nv");
  expect((stress?.value ?? 0) / ksi).toBeCloseTo(54, 9);
});
