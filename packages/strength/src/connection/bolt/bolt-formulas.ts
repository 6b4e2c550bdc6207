import { cite, derived, formula } from "@hoopstay/core";

const j32 = (place: string) => cite("aisc-360-22", `table J3.2, ${place}`, "read");
const diameter = ["d", "bolt diameter", "length"] as const;
const area = ["A_b", "area of the unthreaded bolt", "area"] as const;
const tensile = ["F_u", "tensile strength of the bolt", "pressure"] as const;

export const boltArea = formula({
  id: "bolt-area",
  symbol: "A_b",
  name: "area of the unthreaded bolt",
  measure: "area",
  arguments: [diameter],
  expression: "3.141592653589793 / 4 * d^2",
  citation: derived("circle"),
  evaluate: (d) => (Math.PI / 4) * d * d,
});

/** Tensile stress area of a coarse unified thread; for information, the strengths use A_b. */
export const tensileStressArea = formula({
  id: "tensile-stress-area",
  symbol: "A_s",
  name: "tensile stress area of a unified thread",
  measure: "area",
  arguments: [diameter, ["p", "thread pitch", "length"]],
  expression: "3.141592653589793 / 4 * (d - 0.9743 * p)^2",
  citation: cite("asme-b1-1", "tensile stress area", "second-hand"),
  evaluate: (d, p) => (Math.PI / 4) * (d - 0.9743 * p) ** 2,
});

export const threadedTensileStress = formula({
  id: "threaded-tensile-stress",
  symbol: "F_nt",
  name: "nominal tensile stress of a threaded part",
  measure: "pressure",
  arguments: [tensile],
  expression: "0.75 * F_u",
  citation: j32("threaded parts"),
  evaluate: (Fu) => 0.75 * Fu,
});

export const shearStressThreadsIncluded = formula({
  id: "threaded-shear-stress-included",
  symbol: "F_nv",
  name: "nominal shear stress, threads in the shear plane",
  measure: "pressure",
  arguments: [tensile],
  expression: "0.45 * F_u",
  citation: j32("threaded parts, threads not excluded"),
  evaluate: (Fu) => 0.45 * Fu,
});

export const shearStressThreadsExcluded = formula({
  id: "threaded-shear-stress-excluded",
  symbol: "F_nv",
  name: "nominal shear stress, threads outside the shear plane",
  measure: "pressure",
  arguments: [tensile],
  expression: "0.563 * F_u",
  citation: j32("threaded parts, threads excluded"),
  evaluate: (Fu) => 0.563 * Fu,
});

export const longGripFactor = formula({
  id: "long-grip-factor",
  symbol: "k_L",
  name: "what an A307 bolt keeps over a long grip",
  measure: "ratio",
  arguments: [["L_g", "grip: material between head and nut", "length"], diameter],
  expression: "1 - 0.01 * max(0, L_g - 5 * d) / 0.0015875",
  citation: j32("A307: 1 percent less for each 1/16 in of grip over 5 diameters"),
  range: "above zero",
  evaluate: (grip, d) => 1 - (0.01 * Math.max(0, grip - 5 * d)) / 0.0015875,
});

export const reducedBoltStress = formula({
  id: "reduced-bolt-stress",
  symbol: "F_n",
  name: "nominal stress of an A307 bolt over its grip",
  measure: "pressure",
  arguments: [
    ["k_L", "what the bolt keeps over its grip", "ratio"],
    ["F_table", "nominal stress of the table", "pressure"],
  ],
  expression: "k_L * F_table",
  citation: j32("A307, note on long grips"),
  evaluate: (kept, stress) => kept * stress,
});

export const boltTensionFormula = formula({
  id: "bolt-tension-strength",
  symbol: "R_n",
  name: "nominal tensile strength of a bolt",
  measure: "force",
  arguments: [["F_nt", "nominal tensile stress", "pressure"], area],
  expression: "F_nt * A_b",
  citation: cite("aisc-360-22", "J3.7, equation J3-1", "read"),
  evaluate: (stress, Ab) => stress * Ab,
});

export const boltShearFormula = formula({
  id: "bolt-shear-strength",
  symbol: "R_n",
  name: "nominal shear strength of a bolt, all its planes",
  measure: "force",
  arguments: [["n_p", "shear planes", "ratio"], ["F_nv", "nominal shear stress", "pressure"], area],
  expression: "n_p * F_nv * A_b",
  citation: cite("aisc-360-22", "J3.7, equation J3-1", "read"),
  evaluate: (planes, stress, Ab) => planes * stress * Ab,
});

export const combinedTensileStress = formula({
  id: "combined-tensile-stress",
  symbol: "F_nt,v",
  name: "nominal tensile stress left beside shear",
  measure: "pressure",
  arguments: [
    ["F_nt", "nominal tensile stress", "pressure"],
    ["F_cv", "available shear stress, phi F_nv or F_nv / Omega", "pressure"],
    ["f_rv", "required shear stress", "pressure"],
  ],
  expression: "min(F_nt, 1.3 * F_nt - F_nt / F_cv * f_rv)",
  citation: cite("aisc-360-22", "J3.8, equations J3-3a and J3-3b", "read"),
  range: "f_rv at most F_cv",
  evaluate: (Fnt, Fcv, frv) => Math.min(Fnt, 1.3 * Fnt - (Fnt / Fcv) * frv),
});
