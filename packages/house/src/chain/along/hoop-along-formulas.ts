import { derived, formula, judged } from "@hoopstay/core";

export const endWallPush = formula({
  id: "end-wall-push",
  symbol: "P",
  name: "wind on an end wall, main frame",
  measure: "force",
  arguments: [
    ["q", "factored K_d q_h", "pressure"],
    ["C_e", "net coefficient of the wall", "ratio"],
    ["A", "flat area of the end", "area"],
  ],
  expression: "q * C_e * A",
  citation: derived("pressure times area"),
  evaluate: (q, coefficient, area) => q * coefficient * area,
});

export const wallPressure = formula({
  id: "wall-pressure",
  symbol: "p",
  name: "wind on an end wall, main frame",
  measure: "pressure",
  arguments: [
    ["q", "factored K_d q_h", "pressure"],
    ["C_e", "net coefficient of the wall", "ratio"],
  ],
  expression: "q * C_e",
  citation: derived("net coefficient on K_d q_h"),
  evaluate: (q, coefficient) => q * coefficient,
});

export const wallToTop = formula({
  id: "wall-to-top",
  symbol: "P_t",
  name: "part of an end wall's load that reaches its hoop",
  measure: "force",
  arguments: [["P", "wind on the end wall", "force"]],
  expression: "P / 2",
  citation: judged("studs span from the ground to the hoop: half of their load at each end"),
  evaluate: (push) => push / 2,
});

export const lineShare = formula({
  id: "line-share",
  symbol: "N",
  name: "force along one line of purlin",
  measure: "force",
  arguments: [
    ["P_t", "part of the end wall's load", "force"],
    ["c", "share of the wall's area that leans on the line", "ratio"],
  ],
  expression: "P_t * c",
  citation: derived("by tributary area, half way to the neighbours"),
  evaluate: (push, share) => push * share,
});

export const lineShareOfHoops = formula({
  id: "line-share-of-hoops",
  symbol: "N",
  name: "force along one line of purlin, by the end wall and by what all hoops catch",
  measure: "force",
  arguments: [
    ["N_w", "force by the end wall", "force"],
    ["w", "wind on a metre of hoop", "force-per-length"],
    ["l", "length of all hoops together", "length"],
    ["c", "share of the line", "ratio"],
  ],
  expression: "N_w + w * l / 4 * c",
  citation: judged(
    "purlins hand the upper half of what the hoops catch to the braced bays, half to each end; added to the wall's as sizes, safe side",
  ),
  evaluate: (ofWall, line, length, share) => ofWall + ((line * length) / 4) * share,
});

export const pushOfOneHoop = formula({
  id: "push-of-one-hoop",
  symbol: "P_h",
  name: "push along the house on one of the hoops that share it",
  measure: "force",
  arguments: [
    ["P_t", "part of both end walls' load, downwind", "force"],
    ["n", "hoops", "ratio"],
  ],
  expression: "P_t / n",
  citation: derived("hoops alike and purlins stiff along their length: equal shares"),
  evaluate: (push, hoops) => push / hoops,
});

export const pushOfOneEnd = formula({
  id: "push-of-one-end",
  symbol: "P_1",
  name: "push that one end bay holds",
  measure: "force",
  arguments: [
    ["P_t", "part of its own wall's load", "force"],
    ["w", "wind on a metre of bare hoop", "force-per-length"],
    ["l", "length of all hoops together", "length"],
  ],
  expression: "P_t + w * l / 4",
  citation: judged(
    "each end holds its own wall, and half of the upper half of what the hoops catch",
  ),
  evaluate: (push, line, length) => push + (line * length) / 4,
});

export const braceForce = formula({
  id: "brace-force",
  symbol: "N_b",
  name: "force in an end-bay brace",
  measure: "force",
  arguments: [
    ["P_1", "push that one end bay holds", "force"],
    ["n", "braces that act", "ratio"],
    ["l", "length of a brace", "length"],
    ["s", "hoop to hoop", "length"],
  ],
  expression: "P_1 * l / (n * s)",
  citation: derived("a brace runs the length of its bay along the house"),
  range: "l above s",
  evaluate: (push, braces, length, bay) => (push * length) / (braces * bay),
});
