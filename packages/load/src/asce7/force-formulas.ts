import { cite, derived, formula } from "@hoopstay/core";

export const outsideCoefficient = formula({
  id: "outside-coefficient",
  symbol: "GC_p",
  name: "gust factor times outside coefficient",
  measure: "ratio",
  arguments: [
    ["G", "gust-effect factor", "ratio"],
    ["C_p", "outside coefficient", "ratio"],
  ],
  expression: "G * C_p",
  citation: cite("asce-7-16", "eq. 27.3-1", "second-hand"),
  evaluate: (g, cp) => g * cp,
});

export const endWallForce = formula({
  id: "end-wall-force",
  symbol: "F_e",
  name: "force of an end wall toward the front",
  measure: "force",
  arguments: [
    ["n", "outward normal of the wall, +1 front, -1 back", "ratio"],
    ["p", "pressure toward the wall", "pressure"],
    ["A", "flat area of the end", "area"],
  ],
  expression: "-n * p * A",
  citation: derived("pressure times area"),
  evaluate: (n, p, area) => -n * p * area,
});

export const boxForce = formula({
  id: "box-force",
  symbol: "F_b",
  name: "wind on a bin, tank or box",
  measure: "force",
  arguments: [
    ["q", "K_d q_h", "pressure"],
    ["G", "gust-effect factor", "ratio"],
    ["C_f", "force coefficient", "ratio"],
    ["A", "area of the face", "area"],
  ],
  expression: "q * G * C_f * A",
  citation: cite("asce-7-16", "eq. 29.4-1", "memory"),
  evaluate: (q, g, cf, area) => q * g * cf * area,
});

export const dragForce = formula({
  id: "drag-force",
  symbol: "F_d",
  name: "drag without gust factor",
  measure: "force",
  arguments: [
    ["q", "K_d q_h", "pressure"],
    ["C", "coefficient", "ratio"],
    ["A", "area it is on", "area"],
  ],
  expression: "q * C * A",
  citation: derived("pressure times coefficient times area"),
  evaluate: (q, c, area) => q * c * area,
});

export const leverMoment = formula({
  id: "lever-moment",
  symbol: "M",
  name: "moment of a force",
  measure: "moment",
  arguments: [
    ["F", "force", "force"],
    ["a", "lever arm", "length"],
  ],
  expression: "F * a",
  citation: derived("force times arm"),
  evaluate: (force, arm) => force * arm,
});

export const insideUplift = formula({
  id: "inside-uplift",
  symbol: "V_i",
  name: "inside pressure on the whole roof: no floor balances it",
  measure: "force",
  arguments: [
    ["GC_pi", "inside coefficient", "ratio"],
    ["q", "K_d q_h", "pressure"],
    ["b", "span of the shell", "length"],
    ["L", "length of the shell", "length"],
  ],
  expression: "GC_pi * q * b * L",
  citation: derived("uniform pressure under the roof, on its plan area"),
  evaluate: (inside, q, b, length) => inside * q * b * length,
});

/** One component of a case: a share of the horizontal part, the vertical part, the inside part. */
export const caseComponent = formula({
  id: "case-component",
  symbol: "F",
  name: "component of the load case",
  measure: "force",
  arguments: [
    ["c", "share of the horizontal forces: 1 in case 1, 0.75 in case 3", "ratio"],
    ["H_a", "part of the horizontal pressures, wind across", "force"],
    ["H_l", "part of the horizontal pressures, wind along", "force"],
    ["V", "part of the vertical outside pressures, one wind in full", "force"],
    ["I", "part of the inside pressure", "force"],
  ],
  expression: "c * (H_a + H_l) + V + I",
  citation: cite(
    "asce-7-16",
    "figure 27.3-8, cases 1 and 3; uplift whole in both: judged, safe side",
    "second-hand",
  ),
  evaluate: (share, across, along, vertical, inside) =>
    share * (across + along) + vertical + inside,
});
