import { cite, formula } from "@hoopstay/core";
import { INCH } from "../connection/common/customary.ts";

export const grossYield = formula({
  id: "gross-yield",
  symbol: "P_n",
  name: "yielding of the gross section in tension",
  measure: "force",
  arguments: [
    ["F_y", "yield strength", "pressure"],
    ["A_g", "gross area", "area"],
  ],
  expression: "F_y * A_g",
  citation: cite("aisc-360-22", "equation D2-1", "read"),
  evaluate: (fy, area) => fy * area,
});

export const effectiveNetArea = formula({
  id: "effective-net-area",
  symbol: "A_e",
  name: "effective net area",
  measure: "area",
  arguments: [
    ["A_n", "net area", "area"],
    ["U", "shear lag factor", "ratio"],
  ],
  expression: "A_n * U",
  citation: cite("aisc-360-22", "equation D3-1", "read"),
  range: "U from above 0 to 1",
  evaluate: (net, lag) => net * lag,
});

export const netRupture = formula({
  id: "net-rupture",
  symbol: "P_n",
  name: "rupture of the net section in tension",
  measure: "force",
  arguments: [
    ["F_u", "tensile strength", "pressure"],
    ["A_e", "effective net area", "area"],
  ],
  expression: "F_u * A_e",
  citation: cite("aisc-360-22", "equation D2-2", "read"),
  evaluate: (fu, effective) => fu * effective,
});

/** Added to the nominal hole of a bolt where net section is computed, m: 1/16 in. */
const damage = INCH / 16;

export const holeWidth = formula({
  id: "hole-width",
  symbol: "w_h",
  name: "width of a bolt hole in the net section",
  measure: "length",
  arguments: [["d_h", "nominal diameter of the hole", "length"]],
  expression: `d_h + ${damage}`,
  citation: cite("aisc-360-22", "B4.3b: 1/16 in more than the nominal hole", "read"),
  evaluate: (hole) => hole + damage,
});

export const netArea = formula({
  id: "net-area",
  symbol: "A_n",
  name: "net area with holes through walls in one line across",
  measure: "area",
  arguments: [
    ["A_g", "gross area", "area"],
    ["n", "walls with a hole", "ratio"],
    ["w_h", "width of a hole", "length"],
    ["t", "wall", "length"],
  ],
  expression: "A_g - n * w_h * t",
  citation: cite("aisc-360-22", "B4.3b", "read"),
  evaluate: (gross, holes, width, wall) => gross - holes * width * wall,
});
