import { asPrinted, type Citation, cite, derived, formula } from "@hoopstay/core";

const depth = ["H", "depth", "length"] as const;
const width = ["B", "width", "length"] as const;
const wall = ["t", "wall", "length"] as const;
const cornerRadius = ["R_c", "mid-line corner radius", "length"] as const;
const enclosed = ["A_m", "area enclosed by the mid-line", "area"] as const;
const midLine = ["p", "length of the mid-line", "length"] as const;

/** 4 - pi: four square corners of side 1 less the circle they hold. */
const fourCorners = 4 - Math.PI;

export const midLineLength = formula({
  id: "mid-line-length",
  symbol: "p",
  name: "length of the mid-line of a rectangular tube",
  measure: "length",
  arguments: [depth, width, wall, cornerRadius],
  expression: `2 * (B - t + H - t) - ${asPrinted(2 * fourCorners)} * R_c`,
  citation: derived("rounded rectangle"),
  evaluate: (H, B, t, R) => 2 * (B - t + H - t) - 2 * fourCorners * R,
});

export const midLineArea = formula({
  id: "mid-line-area",
  symbol: "A_m",
  name: "area enclosed by the mid-line of a rectangular tube",
  measure: "area",
  arguments: [depth, width, wall, cornerRadius],
  expression: `(B - t) * (H - t) - ${asPrinted(fourCorners)} * R_c^2`,
  citation: derived("rounded rectangle"),
  evaluate: (H, B, t, R) => (B - t) * (H - t) - fourCorners * R * R,
});

export const bredtTorsionConstant = formula({
  id: "bredt-torsion-constant",
  symbol: "J",
  name: "torsion constant of a rectangular tube",
  measure: "second-moment",
  arguments: [enclosed, wall, midLine],
  expression: "4 * A_m^2 * t / p",
  citation: cite("aisc-shapes-15", "rectangular HSS, column J (Bredt)", "read"),
  evaluate: (Am, t, p) => (4 * Am * Am * t) / p,
});

export const aiscTorsionModulus = formula({
  id: "aisc-torsion-modulus",
  symbol: "C",
  name: "torsion modulus of a rectangular tube",
  measure: "section-modulus",
  arguments: [depth, width, wall],
  expression: `2 * (B - t) * (H - t) * t - ${asPrinted(4.5 * fourCorners)} * t^3`,
  citation: cite("aisc-360-22", "section H3.1, user note", "read"),
  evaluate: (H, B, t) => 2 * (B - t) * (H - t) * t - 4.5 * fourCorners * t * t * t,
});

/** I_t = t^3 p / 3 + 2 K A_m with K = 2 A_m t / p. */
const annexTorsionConstant = (citation: Citation) =>
  formula({
    id: "annex-b-torsion-constant",
    symbol: "I_t",
    name: "torsion constant of a rectangular tube",
    measure: "second-moment",
    arguments: [enclosed, wall, midLine],
    expression: "t^3 * p / 3 + 4 * A_m^2 * t / p",
    citation,
    evaluate: (Am, t, p) => (t * t * t * p) / 3 + (4 * Am * Am * t) / p,
  });

const annexTorsionModulus = (citation: Citation) =>
  formula({
    id: "annex-b-torsion-modulus",
    symbol: "C_t",
    name: "torsion modulus of a rectangular tube",
    measure: "section-modulus",
    arguments: [["I_t", "torsion constant", "second-moment"], enclosed, wall, midLine],
    expression: "I_t / (t + 2 * A_m / p)",
    citation,
    evaluate: (It, Am, t, p) => It / (t + (2 * Am) / p),
  });

const coldFormed = cite("en-10219-2", "annex B", "memory");
const hotFinished = cite("en-10210-2", "annex B", "memory");

export const coldFormedTorsionConstant = annexTorsionConstant(coldFormed);
export const coldFormedTorsionModulus = annexTorsionModulus(coldFormed);
export const hotFinishedTorsionConstant = annexTorsionConstant(hotFinished);
export const hotFinishedTorsionModulus = annexTorsionModulus(hotFinished);
