import { derived, formula, judged } from "@hoopstay/core";

export const spanMoment = formula({
  id: "span-moment",
  symbol: "M",
  name: "moment of a simple span under even load",
  measure: "moment",
  arguments: [
    ["w", "load per length", "force-per-length"],
    ["l", "span", "length"],
  ],
  expression: "w * l^2 / 8",
  citation: derived("simple span, even load"),
  evaluate: (w, span) => (w * span * span) / 8,
});

export const spanReaction = formula({
  id: "span-reaction",
  symbol: "V",
  name: "force at one end of a simple span under even load",
  measure: "force",
  arguments: [
    ["w", "load per length", "force-per-length"],
    ["l", "span", "length"],
  ],
  expression: "w * l / 2",
  citation: derived("simple span, even load"),
  evaluate: (w, span) => (w * span) / 2,
});

export const pullOnLength = formula({
  id: "pull-on-length",
  symbol: "F",
  name: "force on one fixing",
  measure: "force",
  arguments: [
    ["w", "load per length", "force-per-length"],
    ["l", "length that hangs on it", "length"],
  ],
  expression: "w * l",
  citation: derived("load per length times length"),
  evaluate: (w, length) => w * length,
});

export const pullAndSuction = formula({
  id: "pull-and-suction",
  symbol: "w",
  name: "load per length that the fixings of a board hold: film along the cover, suction off it",
  measure: "force-per-length",
  arguments: [
    ["t", "pull of the film", "force-per-length"],
    ["w_f", "suction on the board's own face", "force-per-length"],
  ],
  expression: "t + w_f",
  citation: judged("added as sizes though at right angles; safe side"),
  evaluate: (pull, suction) => pull + suction,
});

export const pressedWidth = formula({
  id: "pressed-width",
  symbol: "w",
  name: "load per length by pressure on a width, either way",
  measure: "force-per-length",
  arguments: [
    ["p", "net pressure", "pressure"],
    ["b_w", "width", "length"],
  ],
  expression: "abs(p) * b_w",
  citation: derived("pressure times width"),
  evaluate: (p, width) => Math.abs(p) * width,
});

const filmOnBoard = judged(
  "film between board and hoops as a plate that leans on both, parted by lines at 45 degrees; safe side: film hangs from hoop to hoop",
);

const boardArguments = [
  ["w", "width of the board", "length"],
  ["s", "hoop to hoop", "length"],
  ["n", "sides from which film comes", "ratio"],
] as const;

export const boardWidthForForce = formula({
  id: "board-width-for-force",
  symbol: "b_w",
  name: "width of cover on a board, mean over its span, its own face with it",
  measure: "length",
  arguments: boardArguments,
  expression: "w + n * s / 4",
  citation: filmOnBoard,
  evaluate: (width, spacing, sides) => width + (sides * spacing) / 4,
});

export const boardWidthForMoment = formula({
  id: "board-width-for-moment",
  symbol: "b_m",
  name: "width of cover that evenly spread bends a board as triangles of film do",
  measure: "length",
  arguments: boardArguments,
  expression: "w + n * s / 3",
  citation: filmOnBoard,
  evaluate: (width, spacing, sides) => width + (sides * spacing) / 3,
});

export const twoWayBending = formula({
  id: "two-way-bending",
  symbol: "u",
  name: "share of a board's strength used by bending both ways",
  measure: "ratio",
  arguments: [
    ["M_e", "moment on edge", "moment"],
    ["R_e", "strength on edge", "moment"],
    ["M_f", "moment on the face", "moment"],
    ["R_f", "strength on the face", "moment"],
  ],
  expression: "M_e / R_e + M_f / R_f",
  citation: judged("shares added as in NDS 3.9 without axial force; safe side"),
  evaluate: (edge, edgeStrength, face, faceStrength) => edge / edgeStrength + face / faceStrength,
});
