import { derived, formula, judged } from "@hoopstay/core";

const evenly = judged(
  "no anchor holds the base sideways: the ground takes the net side force and its turning along both rails alike, in a line load that varies linearly; a real ground holds where it grips, so the report says that there is no lateral hold",
);

export const lineLoadAtMiddle = formula({
  id: "even-side-hold",
  symbol: "q_s",
  name: "side force that the ground takes from each rail, at mid-length",
  measure: "force-per-length",
  arguments: [
    ["H_net", "net side force on all feet", "force"],
    ["L", "length of the rails", "length"],
  ],
  expression: "H_net / (2 * L)",
  citation: evenly,
  evaluate: (net, length) => net / (2 * length),
});

export const lineLoadRise = formula({
  id: "even-side-hold-rise",
  symbol: "q_r",
  name: "rise of the side force along each rail, per length",
  measure: "pressure",
  arguments: [
    ["T_z", "turning of the side forces about mid-length, force times place", "moment"],
    ["L", "length of the rails", "length"],
  ],
  expression: "6 * T_z / L^3",
  citation: evenly,
  evaluate: (turning, length) => (6 * turning) / (length * length * length),
});

const youngs = ["E", "modulus of elasticity", "pressure"] as const;
const span = ["b", "distance between the rails", "length"] as const;

export const crossMemberTension = formula({
  id: "cross-member-tension",
  symbol: "N_c",
  name: "axial force of a cross member, tension positive",
  measure: "force",
  arguments: [
    youngs,
    ["A", "area of the cross member", "area"],
    ["u_r", "way of the right rail there", "length"],
    ["u_l", "way of the left rail there", "length"],
    span,
  ],
  expression: "E * A * (u_r - u_l) / b",
  citation: derived("stretch of a bar"),
  evaluate: (modulus, area, right, left, length) => (modulus * area * (right - left)) / length,
});

export const crossMemberEndMoment = formula({
  id: "cross-member-end-moment",
  symbol: "M_c",
  name: "moment at the end of a cross member",
  measure: "moment",
  arguments: [
    youngs,
    ["I", "second moment of area of the cross member, bent vertically", "second-moment"],
    ["theta_n", "turn of the rail at this end", "angle"],
    ["theta_f", "turn of the rail at the other end", "angle"],
    span,
  ],
  expression: "2 * E * I * (2 * theta_n + theta_f) / b",
  citation: derived("beam whose ends turn and do not move up"),
  evaluate: (modulus, inertia, near, far, length) =>
    (2 * modulus * inertia * (2 * near + far)) / length,
});

export const crossMemberEndShear = formula({
  id: "cross-member-end-shear",
  symbol: "V_c",
  name: "vertical force with which a cross member lifts one rail and presses the other",
  measure: "force",
  arguments: [
    ["M_l", "moment on its left end", "moment"],
    ["M_r", "moment on its right end", "moment"],
    span,
  ],
  expression: "(M_l + M_r) / b",
  citation: derived("balance of the cross member"),
  evaluate: (left, right, length) => (left + right) / length,
});
