import { cite, constant, FOOT, formula, judged, POUND_FORCE } from "@hoopstay/core";
import { type Convention, properties } from "@hoopstay/section";
import type { Rail } from "../model/house-model.ts";

export const americanModulus = constant(
  "modulus-of-elasticity",
  "E",
  "modulus of elasticity of steel, 29,000 ksi",
  (29_000 * 1000 * POUND_FORCE) / (FOOT / 12) ** 2,
  "pressure",
  cite("aisc-360-22", "symbols: E = 29,000 ksi", "memory"),
);

export const europeanModulus = constant(
  "modulus-of-elasticity",
  "E",
  "modulus of elasticity of steel, 210 GPa",
  210e9,
  "pressure",
  cite("en-1993-1-1", "3.2.6", "memory"),
);

export const railBendingStiffness = formula({
  id: "rail-bending-stiffness",
  symbol: "EI",
  name: "vertical bending stiffness of one rail, N m2",
  measure: "moment",
  arguments: [
    ["E", "modulus of elasticity", "pressure"],
    ["I_x", "second moment of area, bending up and down", "second-moment"],
  ],
  expression: "E * I_x",
  citation: cite("aisc-360-22", "elastic bending", "memory"),
  evaluate: (modulus, second) => modulus * second,
});

/** Modulus of elasticity that goes with a tube's convention, Pa. */
export const modulusOf = (convention: Convention): typeof americanModulus =>
  convention.startsWith("EN ") ? europeanModulus : americanModulus;

/** Ground under a rail, N/m3: a force per area and settlement. */
export const groundModulus = constant(
  "ground-modulus",
  "k_s",
  "push of the ground per area and settlement, N/m3",
  20e6,
  "ratio",
  judged("20 MN/m3, medium ground; anchors are run at one and at four times their stiffness"),
);

/** E I of a rail bent up and down, N m2. */
export function railStiffness({ tube }: Rail): number {
  const convention = "convention" in tube ? tube.convention : "other";
  return railBendingStiffness.evaluate(modulusOf(convention).value, properties(tube).secondMomentX);
}
