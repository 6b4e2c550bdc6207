import { Chapter } from "@hoopstay/core";
import {
  bendingStrength,
  compressionStrength,
  type MemberSection,
  type MemberStrength,
  memberSection,
  roundShearStress,
  type Steel,
  type Strength,
  shearStrength,
  tensionStrength,
  torsionStrength,
} from "@hoopstay/strength";
import type { Given } from "../published/given.ts";
import { worthOf } from "../published/units.ts";

/** AISC's steel of a yield strength, Pa; tensile strength 1.25 of it, where nothing else is told. */
export const steelOfYield = (yieldStrength: number): Steel => ({
  yieldStrength,
  tensileStrength: 1.25 * yieldStrength,
  modulus: worthOf("ksi") * 29_000,
  shearModulus: worthOf("ksi") * 11_200,
  citation: { source: "judgement", place: "a published case", grade: "judgement" },
  words: "steel of a published case",
  listed: true,
});

/** A strength that must be covered. */
export function covered(strength: MemberStrength): Strength {
  if (!strength.covered) throw new Error(`not covered: ${strength.reason}`);
  return strength;
}

/** The section of a case by its design wall, with the table's own properties where it gives them. */
function sectionOf(given: Given): MemberSection {
  const wall = given.number("wall");
  const tube = { wall, convention: "ASTM A1065", galvanized: false } as const;
  const computed = memberSection(
    given.text("kind") === "round"
      ? { kind: "round", outside: given.number("outside"), ...tube }
      : {
          kind: "rectangular",
          depth: given.number("depth"),
          width: given.number("width"),
          ...tube,
        },
  );
  const radius = given.numberOr("radius", computed.radiusX);
  return {
    ...computed,
    area: given.numberOr("area", computed.area),
    radiusX: radius,
    radiusY: radius,
    secondMomentX: given.numberOr("I", computed.secondMomentX),
    elasticModulusX: given.numberOr("S", computed.elasticModulusX),
    plasticModulusX: given.numberOr("Z", computed.plasticModulusX),
    torsionModulus: given.numberOr("C", computed.torsionModulus),
  };
}

const short = 1e-3;

/** Tension, compression, bending, shear and torsion of a case's member. */
const strengths = {
  N: (section: MemberSection, steel: Steel, _: Given, chapter: Chapter) =>
    tensionStrength(section, steel, null, chapter),
  P: (section: MemberSection, steel: Steel, given: Given, chapter: Chapter) => {
    const buckling = given.numberOr("buckling", short);
    const lengths = { bucklingX: buckling, bucklingY: buckling };
    return compressionStrength(section, steel, lengths, chapter);
  },
  M: (section: MemberSection, steel: Steel, _: Given, chapter: Chapter) =>
    bendingStrength(section, "x", steel, short, chapter),
  V: (section: MemberSection, steel: Steel, given: Given, chapter: Chapter) =>
    shearStrength(section, "x", steel, given.numberOr("shear", short), chapter),
  T: (section: MemberSection, steel: Steel, given: Given, chapter: Chapter) =>
    torsionStrength(section, steel, given.numberOr("torsion", short), chapter),
};

/** Columns that are steps of a working: of which strength, and the formulas that may stand there. */
const steps: Readonly<Record<string, readonly [keyof typeof strengths, ...string[]]>> = {
  lambda_c: ["P", "member-slenderness"],
  lambda_e: ["P", "inelastic-buckling-limit"],
  lambda_r: ["P", "wall-in-compression"],
  F_e: ["P", "elastic-buckling-stress"],
  F_cr: ["P", "inelastic-buckling-stress", "slender-buckling-stress"],
  lambda_p: ["M", "flange-compact", "round-compact"],
  b_e: ["M", "effective-flange"],
  S_e: ["M", "effective-modulus"],
  M_p: ["M", "plastic-moment"],
  A_w: ["V", "web-shear-area"],
};

function slendernessOf(section: MemberSection): number {
  if (section.kind === "round") return section.outside / section.designWall;
  if (section.kind === "rectangular") return section.width / section.designWall - 3;
  throw new Error("only tubes have a wall");
}

/** Critical stress of a round tube in shear by buckling alone: at its length, or at endless length. */
function shearBuckling(section: MemberSection, steel: Steel, length: number): number {
  const { outside, designWall } = section as Extract<MemberSection, { kind: "round" }>;
  return roundShearStress.evaluate(
    steel.modulus,
    Number.POSITIVE_INFINITY,
    length,
    outside,
    designWall,
  );
}

/** The computed value of a printed column of a member, SI. */
export function memberColumn(given: Given, column: string): number | undefined {
  const section = sectionOf(given);
  const steel = steelOfYield(given.number("yield"));
  if (column === "lambda") return slendernessOf(section);
  if (column === "F_long") return shearBuckling(section, steel, given.numberOr("shear", short));
  if (column === "F_short") return shearBuckling(section, steel, 1e30);
  const chapter = new Chapter("member", "a published member");
  const [letter, ...ids] = steps[column] ?? [column[0] as keyof typeof strengths];
  const strength = strengths[letter](section, steel, given, chapter);
  if (ids.length > 0) return chapter.steps.find(({ formula }) => ids.includes(formula.id))?.value;
  const { nominal, ASD, LRFD } = covered(strength);
  return { n: nominal, ASD, LRFD }[column.slice(2)];
}
