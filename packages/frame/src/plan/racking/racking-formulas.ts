import { derived, formula } from "@hoopstay/core";

export const heldCornerForce = formula({
  id: "held-corner-force",
  symbol: "R",
  name: "force that the held corner takes",
  measure: "force",
  arguments: [
    ["P_l", "pull on the left rail", "force"],
    ["P_r", "pull on the right rail", "force"],
    ["F", "friction along both rails", "force"],
  ],
  expression: "P_l + P_r - F",
  citation: derived("balance of forces along the rails"),
  range: "the pull at least the friction: else the house stands still",
  evaluate: (left, right, friction) => left + right - friction,
});

export const rackingTurn = formula({
  id: "racking-turn",
  symbol: "T_z",
  name: "turning that the ground balances by side forces",
  measure: "moment",
  arguments: [
    ["P_r", "pull on the right rail", "force"],
    ["F", "friction along both rails, its resultant in the middle", "force"],
    ["R", "force that the held corner takes", "force"],
    ["x_R", "distance of the held corner from the left rail", "length"],
    ["b", "distance between the rails", "length"],
  ],
  expression: "b * (F / 2 - P_r) + x_R * R",
  citation: derived("moments about the left rail"),
  evaluate: (right, friction, held, heldAt, span) => span * (friction / 2 - right) + heldAt * held,
});

export const cornerSideForce = formula({
  id: "corner-side-force",
  symbol: "X",
  name: "side force at each of the two held corners, toward opposite sides",
  measure: "force",
  arguments: [
    ["T_z", "turning that the ground balances by side forces", "moment"],
    ["L", "length of the rails", "length"],
  ],
  expression: "T_z / L",
  citation: derived("couple of two forces, one at each end"),
  evaluate: (turning, length) => turning / length,
});
