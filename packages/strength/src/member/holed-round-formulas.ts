import { derived, formula, power } from "@hoopstay/core";

const outside = ["D", "outside diameter", "length"] as const;
const wall = ["t", "wall", "length"] as const;
const width = ["w_h", "width of the hole in the net section", "length"] as const;
const plastic = ["Z", "plastic section modulus without holes", "section-modulus"] as const;
const citation = derived("round tube less a straight hole through both walls, exact");

const less = (id: string, symbol: string, name: string, measure: "area" | "second-moment") =>
  formula({
    id,
    symbol,
    name,
    measure,
    arguments: [
      ["g", "without holes", measure],
      ["s_o", "strip of the outside disc", measure],
      ["s_i", "strip of the inside disc", measure],
    ],
    expression: "g - (s_o - s_i)",
    citation,
    evaluate: (gross, outer, inner) => gross - (outer - inner),
  });

export const holedArea = less("holed-area", "A_n", "area at the holes", "area");
export const holedSecondMoment = less(
  "holed-second-moment",
  "I_n",
  "second moment of area at the holes",
  "second-moment",
);

export const holedElasticModulus = formula({
  id: "holed-elastic-modulus",
  symbol: "S_n",
  name: "elastic section modulus at the holes",
  measure: "section-modulus",
  arguments: [
    ["I_n", "second moment of area at the holes", "second-moment"],
    ["y_e", "distance of the farthest fibre left", "length"],
  ],
  expression: "I_n / y_e",
  citation,
  evaluate: (I, fibre) => I / fibre,
});

/** Farthest fibre beside a hole through the extreme fibres. */
export const fibreBesideHole = formula({
  id: "fibre-beside-hole",
  symbol: "y_e",
  name: "distance of the farthest fibre left beside the hole",
  measure: "length",
  arguments: [outside, width],
  expression: "sqrt(D^2 - w_h^2) / 2",
  citation,
  evaluate: (D, w) => Math.sqrt(D * D - w * w) / 2,
});

export const holedExtremeModulus = formula({
  id: "holed-extreme-modulus",
  symbol: "Z_n",
  name: "plastic section modulus, holes through the extreme fibres",
  measure: "section-modulus",
  arguments: [plastic, outside, wall, width],
  expression: "Z - w_h * t * (D - t)",
  citation,
  evaluate: (Z, D, t, w) => Z - w * t * (D - t),
});

export const holedNeutralModulus = formula({
  id: "holed-neutral-modulus",
  symbol: "Z_n",
  name: "plastic section modulus, holes on the neutral axis",
  measure: "section-modulus",
  arguments: [plastic, outside, wall, width],
  expression: "Z - (D^3 - (D^2 - w_h^2)^1.5 - (D - 2 * t)^3 + ((D - 2 * t)^2 - w_h^2)^1.5) / 6",
  citation,
  evaluate: (Z, D, t, w) => {
    const d = D - 2 * t;
    const lost = power(D, 3) - power(D * D - w * w, 1.5) - power(d, 3) + power(d * d - w * w, 1.5);
    return Z - lost / 6;
  },
});

/** A noncompact wall keeps its share; a compact one has F_y Z_n. */
export const holedMoment = formula({
  id: "holed-moment",
  symbol: "M_n",
  name: "bending strength at the holes, yielding",
  measure: "moment",
  arguments: [
    ["M_g", "bending strength without holes", "moment"],
    ["Z_n", "plastic section modulus at the holes", "section-modulus"],
    plastic,
  ],
  expression: "M_g * Z_n / Z",
  citation: derived("F8 in proportion to the plastic modulus; F_y Z_n where compact"),
  evaluate: (gross, net, whole) => (gross * net) / whole,
});

export const holedRupture = formula({
  id: "holed-rupture",
  symbol: "M_n",
  name: "bending strength at the holes, rupture of the farthest fibre",
  measure: "moment",
  arguments: [
    ["F_u", "tensile strength", "pressure"],
    ["S_n", "elastic section modulus at the holes", "section-modulus"],
  ],
  expression: "F_u * S_n",
  citation: derived("as F13-1 of AISC 360-22 for flanges, carried over to a round tube"),
  evaluate: (fu, S) => fu * S,
});
