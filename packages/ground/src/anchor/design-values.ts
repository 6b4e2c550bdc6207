import { cite, derived, formula, judged } from "@hoopstay/core";

export const allowableCapacity = formula({
  id: "anchor-allowable",
  symbol: "T_allow",
  name: "allowable pull along the tether",
  measure: "force",
  arguments: [
    ["T_n", "ultimate pull along the tether", "force"],
    ["FS", "safety factor", "ratio"],
  ],
  expression: "T_n / FS",
  citation: derived("definition of the safety factor"),
  evaluate: (ultimate, factor) => ultimate / factor,
});

export const lrfdStrength = formula({
  id: "anchor-lrfd",
  symbol: "T_d",
  name: "design strength of the anchor, LRFD",
  measure: "force",
  arguments: [["T_allow", "allowable pull", "force"]],
  expression: "1.5 * T_allow",
  citation: judged("1.5 T_allow: LRFD then limits at 0.9 of ASD on wind alone"),
  evaluate: (allowable) => 1.5 * allowable,
});

export const enResistance = formula({
  id: "anchor-en",
  symbol: "R_d",
  name: "design resistance of the anchor, EN 1997-1 UPL",
  measure: "force",
  arguments: [["T_n", "ultimate pull along the tether", "force"]],
  expression: "T_n / 2 / 1.4",
  citation: judged("R_k = T_n/2 from theory; 1.4 of EN 1997-1 table A.16 for an anchorage"),
  evaluate: (ultimate) => ultimate / 2 / 1.4,
});

export const slantedPull = formula({
  id: "slanted-pull",
  symbol: "T",
  name: "pull along a slanted tether",
  measure: "force",
  arguments: [
    ["Q", "pull along the shaft", "force"],
    ["H", "pull across the shaft", "force"],
    ["delta", "angle between tether and shaft", "angle"],
  ],
  expression: "1 / (cos(delta) / Q + sin(delta) / H)",
  citation: judged("straight-line interaction: T cos/Q + T sin/H = 1; safe side of a round one"),
  evaluate: (along, across, angle) => 1 / (Math.cos(angle) / along + Math.sin(angle) / across),
});

export const groupFactor = formula({
  id: "group-factor",
  symbol: "k_s",
  name: "share that an anchor keeps near its neighbour",
  measure: "ratio",
  arguments: [
    ["s", "distance to the nearest anchor", "length"],
    ["D", "plate diameter", "length"],
  ],
  expression: "min(1, 0.5 * (1 + s / (5 * D)))",
  citation: cite(
    "judgement",
    "5 diameters keep clear in dense sand (Shaheen and Demars 1995, second-hand); two in one hole " +
      "hold as one, straight between",
    "judgement",
  ),
  evaluate: (spacing, diameter) => Math.min(1, 0.5 * (1 + spacing / (5 * diameter))),
});

export const groupedPull = formula({
  id: "grouped-pull",
  symbol: "T_allow",
  name: "allowable pull near a neighbour",
  measure: "force",
  arguments: [
    ["k_s", "share kept near the neighbour", "ratio"],
    ["T", "allowable pull alone", "force"],
  ],
  expression: "k_s * T",
  citation: groupFactor.citation,
  evaluate: (share, alone) => share * alone,
});
