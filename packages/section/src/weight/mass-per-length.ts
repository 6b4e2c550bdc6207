import { conventionRules } from "../tube/convention.ts";
import { refuseImpossible } from "../tube/impossible.ts";
import type { Tube } from "../tube/tube.ts";
import { poundSteelDensity, steelDensity } from "./steel.ts";
import { steelArea } from "./steel-area.ts";

/**
 * Density of the steel of a section by its convention: 490 lb/ft3 for American tube and for tube
 * outside the listed standards, else 7850 kg/m3. They differ by 0.012 %.
 *
 * @param tube section
 * @returns kg/m3
 */
export function densityOf(tube: Tube): number {
  if (tube.kind !== "round" && tube.kind !== "rectangular") return steelDensity.value;
  return conventionRules[tube.convention].steel === "490 lb/ft3"
    ? poundSteelDensity.value
    : steelDensity.value;
}

/**
 * Nominal mass per length, from the nominal wall and without zinc. Computes no other property.
 *
 * Left out: zinc, fillets of angles, weld bead, couplings and threads of pipe.
 *
 * Source: AISC Shapes Database v15.0, column W (nominal wall, outside radius 2 t_nom, 490 lb/ft3);
 * EN 10219-2:2006 and EN 10210-2:2006, annex B (7850 kg/m3).
 *
 * @param tube section, m
 * @returns kg/m
 * @throws Refusal as `refuseImpossible`
 * @example // 3.05 lb/ft printed for HSS2X2X1/8
 * massPerLength({ kind: "rectangular", depth: 0.0508, width: 0.0508, wall: 0.003175,
 *   convention: "AISC", galvanized: false }) // 4.54
 */
export function massPerLength(tube: Tube): number {
  refuseImpossible(tube);
  return densityOf(tube) * steelArea(tube, 1);
}
