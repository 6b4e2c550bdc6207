import { Refusal } from "@hoopstay/core";
import {
  formOf,
  gradeFits,
  type Steel,
  type SteelClaim,
  type SteelForm,
  type SteelRow,
  steelGrades,
  steelOf,
  steelRows,
  steelStandards,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, seed } from "./member-arbitrary.ts";
import { ksi } from "./member-examples.ts";

const unknown: SteelClaim = {
  standard: "other",
  grade: null,
  form: "round",
  yield: null,
  tensile: null,
};
const claim = (part: Partial<SteelClaim>): SteelClaim => ({ ...unknown, ...part });
const inKsi = (part: Partial<SteelClaim>) => {
  const steel = steelOf(claim(part));
  return [steel.yieldStrength / ksi, steel.tensileStrength / ksi].map((value) =>
    Number(value.toFixed(6)),
  );
};
const forms: readonly SteelForm[] = ["round", "shaped", "solid"];

const codesOf = (part: Partial<SteelClaim>): readonly string[] => {
  try {
    steelOf(claim(part));
  } catch (error) {
    if (error instanceof Refusal) return error.complaints.map((complaint) => complaint.code);
    throw error;
  }
  return [];
};

describe("the strength of a steel", () => {
  test("no standard, no mill value: 32/45 ksi, not listed, and said", () => {
    const steel = steelOf(unknown);
    expect(inKsi({})).toEqual([32, 45]);
    expect(steel.listed).toBe(false);
    expect(steel.words).toContain("no strength standard and no mill value");
    expect(steel.citation.grade).toBe("judgement");
  });

  test("the lower edition of A500 counts unless one is named", () => {
    const round = { standard: "A500", grade: "A500 C", form: "round" } as const;
    expect(inKsi(round)).toEqual([46, 62]);
    expect(inKsi({ ...round, edition: "A500-21" })).toEqual([50, 62]);
    expect(inKsi({ ...round, edition: "A500 before 2021" })).toEqual([46, 62]);
    expect(inKsi({ ...round, form: "shaped" })).toEqual([50, 62]);
  });

  test("where both editions of A500 give the same, the newer one is cited", () => {
    const shaped = { standard: "A500", grade: "A500 C", form: "shaped" } as const;
    const cited = ({ citation, words }: Steel) => ({ citation, words });
    const newer = cited(steelOf(claim({ ...shaped, edition: "A500-21" })));
    expect(cited(steelOf(claim(shaped)))).toEqual(newer);
    expect(cited(steelOf(claim({ ...shaped, edition: "A500 before 2021" })))).not.toEqual(newer);
  });

  test("an edition of A500 is no matter to another standard", () => {
    for (const standard of ["A53", "A1085", "EN 10219"] as const) {
      const plain = steelOf(claim({ standard }));
      expect(steelOf(claim({ standard, edition: "A500-21" }))).toEqual(plain);
      expect(steelOf(claim({ standard, edition: "A500 before 2021" }))).toEqual(plain);
    }
  });

  test("less yield never goes with more tensile strength, among editions of a grade and among grades", () => {
    const comparable = (one: SteelRow, other: SteelRow) =>
      one.unit === other.unit &&
      one.standards.some(
        (standard) => standard !== "other" && other.standards.includes(standard),
      ) &&
      one.forms.some((form) => other.forms.includes(form)) &&
      (one.grade === other.grade || one.edition === other.edition);
    const compared = steelRows.flatMap((one) =>
      steelRows
        .filter((other) => other !== one && comparable(one, other))
        .map((other) => [one, other] as const),
    );
    expect(compared.length).toBeGreaterThan(10);
    for (const [one, other] of compared) {
      const words = `${one.grade}, ${other.grade}`;
      if (one.yield < other.yield) expect(one.tensile, words).toBeLessThanOrEqual(other.tensile);
      if (one.yield === other.yield) expect(one.tensile, words).toBe(other.tensile);
    }
  });

  test("a standard without a grade counts by its lowest grade, and says so", () => {
    expect(inKsi({ standard: "A500" })).toEqual([33, 45]);
    expect(inKsi({ standard: "A500", form: "shaped" })).toEqual([39, 45]);
    expect(inKsi({ standard: "A53" })).toEqual([35, 60]);
    expect(inKsi({ standard: "A1085" })).toEqual([50, 65]);
    expect(steelOf(claim({ standard: "A500" })).words).toContain("grade not named");
    expect(steelOf(claim({ standard: "EN 10219" })).yieldStrength).toBe(235e6);
  });

  test("A513 is not listed, whatever its grade", () => {
    const steel = steelOf(claim({ grade: "A513 1020" }));
    expect(steel.listed).toBe(false);
    expect(steel.words).toContain("outside listed materials");
  });

  test("elastic constants by the family of the standard", () => {
    const american = steelOf(claim({ standard: "A500" }));
    expect(american.modulus / ksi).toBeCloseTo(29_000, 6);
    expect(american.shearModulus / ksi).toBeCloseTo(11_200, 6);
    for (const part of [
      { standard: "EN 10210", grade: "S355" },
      { standard: "EN 10210" },
      { standard: "EN 10219", form: "shaped" },
      { standard: "other", grade: "S355" },
      { standard: "other", grade: "S235", form: "solid" },
    ] as const) {
      const european = steelOf(claim(part));
      expect([european.modulus, european.shearModulus]).toEqual([210e9, 81e9]);
    }
  });
});

describe("values of a mill certificate", () => {
  const mill = (yieldKsi: number | null, tensileKsi: number | null) => ({
    yield: yieldKsi === null ? null : yieldKsi * ksi,
    tensile: tensileKsi === null ? null : tensileKsi * ksi,
  });

  test("count as entered where no listed standard stands behind the steel", () => {
    expect(inKsi(mill(52, 60))).toEqual([52, 60]);
    expect(inKsi({ grade: "A513 1010", ...mill(52, 60) })).toEqual([52, 60]);
    expect(inKsi(mill(28, 40))).toEqual([28, 40]);
    const steel = steelOf(claim(mill(52, 60)));
    expect(steel.listed).toBe(false);
    expect(steel.words).toContain("mill certificate");
  });

  test("one of them alone: the other is no better than what counts without, or F_u is F_y", () => {
    expect(inKsi(mill(50, null))).toEqual([50, 50]);
    expect(inKsi(mill(40, null))).toEqual([40, 45]);
    expect(inKsi(mill(null, 60))).toEqual([32, 60]);
    expect(inKsi(mill(null, 31))).toEqual([31, 31]);
  });

  test("never lift a named grade, and lower it where they are lower", () => {
    const grade = { standard: "A500", grade: "A500 C", form: "shaped" } as const;
    expect(inKsi({ ...grade, ...mill(60, 75) })).toEqual([50, 62]);
    expect(steelOf(claim({ ...grade, ...mill(60, 75) })).words).toContain("do not lower");
    expect(inKsi({ ...grade, ...mill(48, 75) })).toEqual([48, 62]);
    expect(inKsi({ ...grade, ...mill(60, 61) })).toEqual([50, 61]);
  });

  test("without a grade: as entered, up to the standard's highest grade", () => {
    expect(inKsi({ standard: "A500", ...mill(40, 55) })).toEqual([40, 55]);
    expect(inKsi({ standard: "A500", ...mill(60, 75) })).toEqual([46, 62]);
    expect(inKsi({ standard: "A500", form: "shaped", ...mill(60, 75) })).toEqual([50, 62]);
  });

  test("refused where no steel has them: just outside, not just inside", () => {
    expect(codesOf(mill(20, 30))).toEqual([]);
    expect(codesOf(mill(19.99, 40))).toEqual(["out-of-range"]);
    expect(codesOf(mill(110, 150))).toEqual([]);
    expect(codesOf(mill(110.01, 150))).toEqual(["out-of-range"]);
    expect(codesOf(mill(30, 29.99))).toEqual(["out-of-range"]);
    expect(codesOf(mill(100, 150.1))).toEqual(["out-of-range"]);
    expect(codesOf(mill(0, 60))).toEqual(["not-positive"]);
    expect(codesOf(mill(-50, null))).toEqual(["not-positive"]);
    expect(codesOf(mill(Number.NaN, null))).toEqual(["not-positive"]);
    expect(codesOf(mill(60, 59))).toEqual(["sizes-disagree"]);
    expect(codesOf(mill(60, 60))).toEqual([]);
  });
});

describe("standards, grades and forms that do not go together", () => {
  test("are refused, and gradeFits tells it beforehand", () => {
    expect(codesOf({ standard: "A53", grade: "A500 C" })).toEqual(["sizes-disagree"]);
    expect(codesOf({ standard: "A53", form: "shaped" })).toEqual(["sizes-disagree"]);
    expect(codesOf({ standard: "A500", form: "solid" })).toEqual(["sizes-disagree"]);
    expect(codesOf({ standard: "A500", grade: "A500 A", edition: "A500-21" })).toEqual([
      "sizes-disagree",
    ]);
    for (const standard of steelStandards) {
      for (const grade of steelGrades) {
        for (const form of forms) {
          const fits = gradeFits(grade, standard, form);
          expect(codesOf({ standard, grade, form }).length === 0, `${standard} ${grade}`).toBe(
            fits,
          );
        }
      }
    }
  });

  test("the refusal names what was given, and the standard or the edition that was asked", () => {
    const told = (part: Partial<SteelClaim>) => {
      try {
        steelOf(claim(part));
      } catch (error) {
        if (error instanceof Refusal) return error.complaints[0];
      }
      throw new Error("not refused");
    };
    expect(told({ standard: "A53", grade: "A500 C" })).toMatchObject({
      given: "A500 C",
      expected: "a grade of A53 for round sections",
    });
    expect(told({ standard: "A53", form: "shaped" })).toMatchObject({
      given: "shaped",
      expected: "a grade of A53 for shaped sections",
    });
    expect(told({ standard: "A500", grade: "A500 A", edition: "A500-21" })).toMatchObject({
      given: "A500 A",
      expected: "a grade of A500-21 for round sections",
    });
  });

  test("every row has F_y below F_u and is reached by some claim", () => {
    for (const row of steelRows) {
      expect(row.yield).toBeLessThan(row.tensile);
      const [standard, form] = [row.standards[0], row.forms[0]];
      if (!standard || !form) throw new Error("a row of nothing");
      const part = { standard, form, grade: row.grade };
      const steel = steelOf(claim(row.edition ? { ...part, edition: row.edition } : part));
      const unit = row.unit === "ksi" ? ksi : 1e6;
      expect(steel.yieldStrength / unit).toBeCloseTo(row.yield, 9);
      expect(steel.citation).toEqual(row.citation);
    }
  });

  test("the form of a section", () => {
    const tube = { wall: 0.003, convention: "AISC", galvanized: false } as const;
    expect(formOf({ ...tube, kind: "round", outside: 0.05 })).toBe("round");
    expect(formOf({ ...tube, kind: "rectangular", depth: 0.05, width: 0.05 })).toBe("shaped");
    expect(formOf({ kind: "bar", diameter: 0.02 })).toBe("solid");
  });
});

test("law: whatever is entered, strengths are steel's, F_y up to F_u, and no grade is exceeded", () => {
  const entered = fc.oneof(fc.constant(null), between(20, 110));
  const grades = fc.constantFrom(null, ...steelGrades);
  fc.assert(
    fc.property(
      fc.constantFrom(...steelStandards),
      grades,
      fc.constantFrom(...forms),
      entered,
      entered,
      (standard, grade, form, fy, fu) => {
        const part = {
          standard,
          grade,
          form,
          yield: fy === null ? null : fy * ksi,
          tensile: fu === null ? null : Math.max(30, fu) * ksi,
        };
        if (codesOf(part).length > 0) return;
        const steel = steelOf(part);
        expect(steel.yieldStrength).toBeLessThanOrEqual(steel.tensileStrength);
        expect(steel.yieldStrength).toBeGreaterThanOrEqual(20 * ksi * (1 - 1e-9));
        if (grade === null) return;
        const plain = steelOf({ ...part, yield: null, tensile: null });
        if (!plain.listed) return;
        expect(steel.yieldStrength).toBeLessThanOrEqual(plain.yieldStrength);
        expect(steel.tensileStrength).toBeLessThanOrEqual(plain.tensileStrength);
      },
    ),
    { seed, numRuns: 2000 },
  );
});
