import { cite, formula, power } from "@hoopstay/core";

const read = (place: string) => cite("aisc-360-22", place, "read");

export const memberSlenderness = formula({
  id: "member-slenderness",
  symbol: "lambda_c",
  name: "effective length over radius of gyration",
  measure: "ratio",
  arguments: [
    ["L_c", "effective length", "length"],
    ["r", "radius of gyration", "length"],
  ],
  expression: "L_c / r",
  citation: read("E2"),
  evaluate: (length, radius) => length / radius,
});

export const elasticBucklingStress = formula({
  id: "elastic-buckling-stress",
  symbol: "F_e",
  name: "elastic buckling stress",
  measure: "pressure",
  arguments: [
    ["E", "modulus of elasticity", "pressure"],
    ["lambda_c", "effective length over radius of gyration", "ratio"],
  ],
  expression: "3.141592653589793^2 * E / lambda_c^2",
  citation: read("equation E3-4"),
  evaluate: (E, slenderness) => (Math.PI * Math.PI * E) / (slenderness * slenderness),
});

export const inelasticBucklingStress = formula({
  id: "inelastic-buckling-stress",
  symbol: "F_cr",
  name: "buckling stress with yielding",
  measure: "pressure",
  arguments: [
    ["F_y", "yield strength", "pressure"],
    ["F_e", "elastic buckling stress", "pressure"],
  ],
  expression: "0.658^(F_y / F_e) * F_y",
  citation: read("equation E3-2"),
  range: "L_c/r up to 4.71 sqrt(E/F_y)",
  evaluate: (fy, elastic) => power(0.658, fy / elastic) * fy,
});

export const slenderBucklingStress = formula({
  id: "slender-buckling-stress",
  symbol: "F_cr",
  name: "buckling stress of a slender member",
  measure: "pressure",
  arguments: [["F_e", "elastic buckling stress", "pressure"]],
  expression: "0.877 * F_e",
  citation: read("equation E3-3"),
  range: "L_c/r above 4.71 sqrt(E/F_y)",
  evaluate: (elastic) => 0.877 * elastic,
});

export const bucklingForce = formula({
  id: "buckling-force",
  symbol: "P_n",
  name: "strength in compression",
  measure: "force",
  arguments: [
    ["F_cr", "buckling stress", "pressure"],
    ["A_e", "effective area", "area"],
  ],
  expression: "F_cr * A_e",
  citation: read("equations E3-1 and E7-1"),
  evaluate: (stress, area) => stress * area,
});
