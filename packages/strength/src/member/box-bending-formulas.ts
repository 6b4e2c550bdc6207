import { cite, formula } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");
const plastic = ["M_p", "plastic moment", "moment"] as const;
const yieldStrength = ["F_y", "yield strength", "pressure"] as const;
const modulus = ["E", "modulus of elasticity", "pressure"] as const;

const noncompactMoment = (part: "flange" | "web", place: string) =>
  formula({
    id: `noncompact-${part}-moment`,
    symbol: "M_n",
    name: `bending strength with a noncompact ${part}`,
    measure: "moment",
    arguments: [
      plastic,
      yieldStrength,
      ["S", "elastic section modulus", "section-modulus"],
      ["lambda", `flat over wall of the ${part}`, "ratio"],
      ["lambda_p", "limit of compact", "ratio"],
      ["lambda_r", "limit of noncompact", "ratio"],
    ],
    expression: "M_p - (M_p - F_y * S) * (lambda - lambda_p) / (lambda_r - lambda_p)",
    citation: read(place),
    range: "lambda from lambda_p to lambda_r",
    evaluate: (Mp, fy, S, slenderness, compact, noncompact) =>
      Mp - ((Mp - fy * S) * (slenderness - compact)) / (noncompact - compact),
  });

/** 360-16 prints the same straight line as 3.57 lambda sqrt(F_y/E) - 4.0. */
export const noncompactFlangeMoment = noncompactMoment("flange", "equation F7-2");
/** 360-16 prints the same straight line as 0.305 lambda sqrt(F_y/E) - 0.738. */
export const noncompactWebMoment = noncompactMoment("web", "equation F7-6");

export const effectiveFlange = formula({
  id: "effective-flange",
  symbol: "b_e",
  name: "effective width of a slender compression flange",
  measure: "length",
  arguments: [
    ["b", "flat width of the flange", "length"],
    ["t", "wall", "length"],
    modulus,
    yieldStrength,
  ],
  expression: "min(b, 1.92 * t * sqrt(E / F_y) * (1 - 0.38 / (b / t) * sqrt(E / F_y)))",
  citation: read("equation F7-4"),
  range: "b/t above 1.40 sqrt(E/F_y)",
  evaluate: (b, t, E, fy) => {
    const root = Math.sqrt(E / fy);
    return Math.min(b, 1.92 * t * root * (1 - (0.38 / (b / t)) * root));
  },
});

/**
 * Both flanges lose the same strip, which keeps the axis in the middle. Taken from the compression
 * flange alone, the modulus is 1 to 3 % larger.
 */
export const effectiveModulus = formula({
  id: "effective-modulus",
  symbol: "S_e",
  name: "elastic section modulus without what both flanges lose",
  measure: "section-modulus",
  arguments: [
    ["I", "second moment of area", "second-moment"],
    ["b", "flat width of the flange", "length"],
    ["b_e", "its effective part", "length"],
    ["t", "wall", "length"],
    ["H", "outside depth", "length"],
  ],
  expression: "2 * (I - 2 * (b - b_e) * (t * ((H - t) / 2)^2 + t^3 / 12)) / H",
  citation: cite("aisc-design-examples", "example F.8: strip off both flanges, cautious", "memory"),
  evaluate: (I, b, be, t, H) => {
    const lever = (H - t) / 2;
    return (2 * (I - 2 * (b - be) * (t * lever * lever + (t * t * t) / 12))) / H;
  },
});

export const slenderFlangeMoment = formula({
  id: "slender-flange-moment",
  symbol: "M_n",
  name: "bending strength with a slender flange",
  measure: "moment",
  arguments: [yieldStrength, ["S_e", "effective section modulus", "section-modulus"]],
  expression: "F_y * S_e",
  citation: read("equation F7-3"),
  evaluate: (fy, Se) => fy * Se,
});
