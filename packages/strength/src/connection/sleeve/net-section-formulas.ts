import { cite, derived, formula } from "@hoopstay/core";

const wall = ["t", "design wall", "length"] as const;
const outside = ["D", "outside diameter", "length"] as const;
const hole = ["d_h", "hole diameter", "length"] as const;

export const sleevedNetArea = formula({
  id: "sleeved-net-area",
  symbol: "A_n",
  name: "net area of a tube with a bolt right through",
  measure: "area",
  arguments: [outside, wall, hole],
  expression: "3.141592653589793 * (D - t) * t - 2 * (d_h + 0.0015875) * t",
  citation: cite("aisc-360-22", "B4.3b: hole width plus 1/16 in", "read"),
  evaluate: (D, t, dh) => Math.PI * (D - t) * t - 2 * (dh + 0.0015875) * t,
});

/** Half the mid-line from hole edge to hole edge: what lies beside a hole on one side. */
export const widthBesideHole = formula({
  id: "width-beside-hole",
  symbol: "b_c",
  name: "wall beside a hole, to half way around",
  measure: "length",
  arguments: [outside, wall, hole],
  expression: "(3.141592653589793 * (D - t) - 2 * d_h) / 4",
  citation: derived("mid-line of the tube shared by the four sides of its two holes"),
  evaluate: (D, t, dh) => (Math.PI * (D - t) - 2 * dh) / 4,
});

/**
 * A tube held at two points does not work all round at once. Instead of a shear-lag factor, for which
 * a single bolt has no length, the width that the rule for pins lets work beside a hole.
 */
export const sleevedEffectiveArea = formula({
  id: "sleeved-effective-area",
  symbol: "A_e",
  name: "effective net area of a tube gripped by bolts",
  measure: "area",
  arguments: [["A_n", "net area", "area"], wall, ["b_c", "wall beside a hole", "length"]],
  expression: "min(A_n, 4 * t * min(2 * t + 0.016, b_c))",
  citation: cite("aisc-360-22", "D3 with the effective width of D5.1(a)", "read"),
  evaluate: (An, t, beside) => Math.min(An, 4 * t * Math.min(2 * t + 0.016, beside)),
});
