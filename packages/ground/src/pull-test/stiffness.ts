import { formula, judged } from "@hoopstay/core";

export const stiffnessFromTests = formula({
  id: "anchor-stiffness-tested",
  symbol: "k",
  name: "stiffness of an anchor with tests, N/m",
  measure: "ratio",
  arguments: [["R", "resistance from tests before the safety factor", "force"]],
  expression: "R / 0.025",
  citation: judged("resistance reached at 25 mm; run once more at four times this, the worse kept"),
  evaluate: (resistance) => resistance / 0.025,
});

export const stiffnessWithoutTests = formula({
  id: "anchor-stiffness-untested",
  symbol: "k",
  name: "stiffness of an anchor without tests, N/m",
  measure: "ratio",
  arguments: [["T_allow", "allowable pull", "force"]],
  expression: "T_allow / 0.01",
  citation: judged(
    "allowable pull reached at 10 mm; run once more at four times this, the worse kept",
  ),
  evaluate: (allowable) => allowable / 0.01,
});
