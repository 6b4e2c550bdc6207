import { cite, formula } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");
const elasticModulus = ["S", "elastic section modulus", "section-modulus"] as const;
const ratio = ["lambda", "diameter over wall", "ratio"] as const;
const modulus = ["E", "modulus of elasticity", "pressure"] as const;

export const plasticMoment = formula({
  id: "plastic-moment",
  symbol: "M_p",
  name: "plastic moment",
  measure: "moment",
  arguments: [
    ["F_y", "yield strength", "pressure"],
    ["Z", "plastic section modulus", "section-modulus"],
  ],
  expression: "F_y * Z",
  citation: read("equations F7-1, F8-1 and F11-1"),
  evaluate: (fy, Z) => fy * Z,
});

export const noncompactRoundMoment = formula({
  id: "noncompact-round-moment",
  symbol: "M_n",
  name: "bending strength of a noncompact round tube, no more than its plastic moment",
  measure: "moment",
  arguments: [
    modulus,
    ratio,
    ["F_y", "yield strength", "pressure"],
    elasticModulus,
    ["M_p", "plastic moment", "moment"],
  ],
  expression: "min(M_p, (0.021 * E / lambda + F_y) * S)",
  citation: read("equation F8-2"),
  range: "D/t from 0.07 to 0.31 E/F_y",
  evaluate: (E, slenderness, fy, S, plastic) =>
    Math.min(plastic, ((0.021 * E) / slenderness + fy) * S),
});

export const slenderRoundStress = formula({
  id: "slender-round-stress",
  symbol: "F_cr",
  name: "local buckling stress of a slender round tube in bending",
  measure: "pressure",
  arguments: [modulus, ratio],
  expression: "0.33 * E / lambda",
  citation: read("equation F8-4"),
  range: "D/t from 0.31 to 0.45 E/F_y",
  evaluate: (E, slenderness) => (0.33 * E) / slenderness,
});

export const slenderRoundMoment = formula({
  id: "slender-round-moment",
  symbol: "M_n",
  name: "bending strength of a slender round tube",
  measure: "moment",
  arguments: [["F_cr", "local buckling stress", "pressure"], elasticModulus],
  expression: "F_cr * S",
  citation: read("equation F8-3"),
  evaluate: (stress, S) => stress * S,
});
