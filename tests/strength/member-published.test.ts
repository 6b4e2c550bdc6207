import {
  archBucklingLength,
  compressionStrength,
  eulerLoad,
  interaction,
  lumberRows,
  lumberStrength,
  memberFactors,
  memberSection,
  panelBendingStrength,
  plasticMoment,
  type SteelClaim,
  type Strength,
  steelOf,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { readPublished } from "../published/read-published.ts";
import { covered, steelOfYield } from "./member-examples.ts";
import { given, limitColumn, memberColumn } from "./member-published.ts";
import { worthOf } from "./member-units.ts";

type Compute = (file: PublishedFile, one: PublishedCase, column: string) => number;

/** Strength of one square metre at a slenderness: a stress. */
function criticalStress(yieldStrength: number, slenderness: number): Strength {
  const bar = memberSection({ kind: "bar", diameter: 0.02 });
  const unit = { ...bar, area: 1, radiusX: 0.1, radiusY: 0.1 };
  const lengths = { bucklingX: 0.1 * slenderness, bucklingY: 0.1 * slenderness };
  return covered(compressionStrength(unit, steelOfYield(yieldStrength), lengths));
}

const pairOf = (one: PublishedCase, key: string) => one.given[key] as [number, number];

/** How each quantity of a published file is computed, SI. */
const computations: Readonly<Record<string, Compute>> = {
  member: memberColumn,
  "slenderness limits": limitColumn,
  "load in the middle of a span": (file, one) => {
    const moment = plasticMoment.evaluate(given(file, one, "yield"), given(file, one, "Z"));
    const available = memberFactors.flexure.design.evaluate(moment);
    return (4 * available) / given(file, one, "span") / given(file, one, "factor");
  },
  interaction: (_, one) =>
    interaction(...pairOf(one, "P"), ...pairOf(one, "M_x"), ...pairOf(one, "M_y")),
  "available critical stress": (file, one, column) => {
    const strength = criticalStress(given(file, one, "yield"), given(file, one, "lambda_c"));
    return column === "phiF_cr" ? strength.LRFD : strength.ASD;
  },
  "elastic buckling load": (file, one) =>
    eulerLoad.evaluate(
      given(file, one, "modulus"),
      given(file, one, "I"),
      given(file, one, "length"),
    ),
  "arch buckling": (file, one) => {
    const half = given(file, one, "half");
    return eulerLoad.evaluate(1, 1, archBucklingLength(2 * half, half));
  },
  "arch length": (file, one) => {
    const half = given(file, one, "half");
    return archBucklingLength(2 * half, half) / half;
  },
  "resistance factors": (_, one, column) => {
    const pair = memberFactors[one.given.of as keyof typeof memberFactors];
    return column === "phi" ? pair.phi.value : pair.omega.value;
  },
  "steel strength": (_, one, column) => {
    const steel = steelOf({ yield: null, tensile: null, ...one.given } as unknown as SteelClaim);
    return column === "F_y" ? steel.yieldStrength : steel.tensileStrength;
  },
  "lumber reference values": (_, { given: { wood, grade, width } }, column) => {
    const row = lumberRows.find(
      (one) => one.wood === wood && one.grade === grade && (width as number) <= one.widest,
    );
    const values = { F_b: row?.bending, F_v: row?.shear, E: row?.modulus };
    return (values[column as keyof typeof values] ?? Number.NaN) * worthOf("psi");
  },
  "board strength": (file, one, column) => {
    const sizes = {
      thickness: given(file, one, "thickness"),
      width: given(file, one, "width"),
    };
    const strength = lumberStrength({ ...one.given, ...sizes } as Parameters<
      typeof lumberStrength
    >[0]);
    if (!strength.covered) throw new Error(strength.reason);
    return (column === "M_ASD" ? strength.moment : strength.shear).ASD;
  },
  "panel bending": (_, one, column) => {
    const rating = one.given.rating as Parameters<typeof panelBendingStrength>[0]["rating"];
    const alongStrength = column === "along";
    return covered(panelBendingStrength({ rating, alongStrength, wet: false })).nominal;
  },
};

const folders = [
  "mccormac-5",
  "quimby",
  "aisc-design-examples",
  "aisc-manual-15",
  "aisc-360-22",
  "astm-a500-old",
  "astm-a513",
  "astm-a36",
  "astm-a1065",
  "en-10210-1",
  "en-10219-1",
  "steel-buildings-europe",
  "timoshenko-gere-2",
  "nds-supplement-2018",
  "nds-2018",
  "apa-d510",
  "statics",
] as const;

const files = folders.flatMap((folder) => readPublished(folder));
const cases = files.filter((file) => file.quantity in computations).flatMap((file) => file.cases);

for (const file of files) {
  const compute = computations[file.quantity];
  if (!compute) continue;
  describe(file.file, () => {
    for (const one of file.cases) {
      for (const value of one.values) {
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}`, () => {
          const computed = compute(file, one, value.quantity);
          expectPublished(computed / worthOf(value.unit), value);
        });
      }
    }
  });
}

test("at least 45 published cases on members, steel and wood", () => {
  expect(cases.length).toBeGreaterThanOrEqual(45);
});
