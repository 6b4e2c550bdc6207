import { Chapter } from "@hoopstay/core";
import {
  bendingStrength,
  compressionStrength,
  type MemberSection,
  roundShearStress,
  shearStrength,
  slendernessLimits,
  tensionStrength,
  torsionStrength,
} from "@hoopstay/strength";
import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { box, covered, round, steelOfYield } from "./member-examples.ts";
import { worthOf } from "./member-units.ts";

/** A number that a case gives, in SI. */
export function given(file: PublishedFile, one: PublishedCase, key: string): number {
  const value = one.given[key];
  if (typeof value !== "number") throw new Error(`${one.title}: ${key} is not given`);
  return value * worthOf(file.units[key] ?? "1");
}

const optional = (file: PublishedFile, one: PublishedCase, key: string, without: number): number =>
  key in one.given ? given(file, one, key) : without;

/** The section of a case by its design wall, with the table's own properties where it gives them. */
function sectionOf(file: PublishedFile, one: PublishedCase): MemberSection {
  const size = (key: string) => given(file, one, key);
  const computed =
    one.given.kind === "round"
      ? round(size("outside"), size("wall"))
      : box(size("depth"), size("width"), size("wall"));
  const take = (key: string, own: number) => optional(file, one, key, own);
  const radius = take("radius", computed.radiusX);
  return {
    ...computed,
    area: take("area", computed.area),
    radiusX: radius,
    radiusY: radius,
    secondMomentX: take("I", computed.secondMomentX),
    elasticModulusX: take("S", computed.elasticModulusX),
    plasticModulusX: take("Z", computed.plasticModulusX),
    torsionModulus: take("C", computed.torsionModulus),
  };
}

/** Value of the first step with one of these formulas, as a printed working would show it. */
function stepValue(chapter: Chapter, ids: readonly string[]): number {
  const step = chapter.steps.find(({ formula }) => ids.includes(formula.id));
  if (!step) throw new Error(`no step ${ids.join(", ")}`);
  return step.value;
}

const steps: Readonly<Record<string, readonly string[]>> = {
  lambda_c: ["member-slenderness"],
  lambda_e: ["inelastic-buckling-limit"],
  lambda_r: ["wall-in-compression"],
  F_e: ["elastic-buckling-stress"],
  F_cr: ["inelastic-buckling-stress", "slender-buckling-stress"],
  lambda_p: ["flange-compact", "round-compact"],
  b_e: ["effective-flange"],
  S_e: ["effective-modulus"],
  M_p: ["plastic-moment"],
  A_w: ["web-shear-area"],
};

const short = 1e-3;

/** The computed value of a printed column of a member, SI. */
export function memberColumn(file: PublishedFile, one: PublishedCase, column: string): number {
  const section = sectionOf(file, one);
  const steel = steelOfYield(given(file, one, "yield"));
  const buckling = optional(file, one, "buckling", short);
  const [shear, torsion] = [
    optional(file, one, "shear", short),
    optional(file, one, "torsion", short),
  ];
  const chapter = new Chapter("member", "a published member");
  const strengths = {
    N: tensionStrength(section, steel, null, chapter),
    P: compressionStrength(section, steel, { bucklingX: buckling, bucklingY: buckling }, chapter),
    M: bendingStrength(section, "x", steel, short, chapter),
    V: shearStrength(section, "x", steel, shear, chapter),
    T: torsionStrength(section, steel, torsion, chapter),
  };
  if (column === "lambda") return slendernessOf(section);
  if (column === "F_long" || column === "F_short") {
    const length = column === "F_long" ? shear : 1e30;
    const { outside, designWall } = section as Extract<MemberSection, { kind: "round" }>;
    // Without a yield strength only buckling is left; at endless length its second form.
    const unlimited = Number.POSITIVE_INFINITY;
    return roundShearStress.evaluate(steel.modulus, unlimited, length, outside, designWall);
  }
  const ids = steps[column];
  if (ids) return stepValue(chapter, ids);
  const [letter, method] = column.split("_") as [keyof typeof strengths, "n" | "ASD" | "LRFD"];
  return covered(strengths[letter])[method === "n" ? "nominal" : method];
}

function slendernessOf(section: MemberSection): number {
  if (section.kind === "round") return section.outside / section.designWall;
  if (section.kind === "rectangular") return section.width / section.designWall - 3;
  throw new Error("only tubes have a wall");
}

/** A limit of table B4.1 and its kin, by its name. */
export const limitColumn = (file: PublishedFile, one: PublishedCase, column: string): number =>
  slendernessLimits[column as keyof typeof slendernessLimits].evaluate(
    steelOfYield(1).modulus,
    given(file, one, "yield"),
  );
