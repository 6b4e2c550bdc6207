import {
  lumberRows,
  lumberStrength,
  panelBendingStrength,
  type SteelClaim,
  steelOf,
} from "@hoopstay/strength";
import { type Computations, columns, type Given } from "../published/given.ts";
import { worthOf } from "../published/units.ts";
import { covered } from "./member-columns.ts";

const claimOf = (given: Given) => ({ yield: null, tensile: null, ...given.all() });

const steel = (given: Given) => steelOf(claimOf(given) as unknown as SteelClaim);

/** The row of the table of lumber for a wood, a grade and a width; psi. */
const rowOf = (given: Given) =>
  lumberRows.find(
    ({ wood, grade, widest }) =>
      wood === given.text("wood") &&
      grade === given.text("grade") &&
      (given.plain("width") as number) <= widest,
  );

const fromPsi = (value: number | undefined): number | undefined => value && value * worthOf("psi");

function boardOf(given: Given) {
  const strength = lumberStrength(given.all() as unknown as Parameters<typeof lumberStrength>[0]);
  if (!strength.covered) throw new Error(strength.reason);
  return strength;
}

/** How strengths of steels, lumber and panels are computed, SI. */
export const materialComputations: Computations = {
  "steel strength": columns({
    F_y: (given) => steel(given).yieldStrength,
    F_u: (given) => steel(given).tensileStrength,
  }),
  "lumber reference values": columns({
    F_b: (given) => fromPsi(rowOf(given)?.bending),
    F_v: (given) => fromPsi(rowOf(given)?.shear),
    E: (given) => fromPsi(rowOf(given)?.modulus),
  }),
  "board strength": columns({
    M_ASD: (given) => boardOf(given).moment.ASD,
    V_ASD: (given) => boardOf(given).shear.ASD,
  }),
  "panel bending": (given, column) => {
    const rating = given.plain("rating") as Parameters<typeof panelBendingStrength>[0]["rating"];
    const alongStrength = column === "along";
    return covered(panelBendingStrength({ rating, alongStrength, wet: false })).nominal;
  },
};
