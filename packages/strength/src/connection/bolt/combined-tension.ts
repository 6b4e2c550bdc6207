import { connectionFactors } from "../common/resistance-factors.ts";
import type { ConnectionMethod } from "../common/strength.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import { boltTensionFormula, combinedTensileStress } from "./bolt-formulas.ts";
import type { BoltStrength } from "./bolt-strength.ts";

/**
 * Tension a bolt can take beside a shear force, by AISC 360-22, J3.8. Below 30
 * percent of either the formula changes nothing, as the standard allows.
 *
 * @param bolt strength of the bolt
 * @param shear required shear force, shared by the bolt's planes, N
 * @returns available tension, N; zero once the shear is used up
 */
export function combinedBoltTension(
  bolt: BoltStrength,
  shear: number,
  method: ConnectionMethod,
  sheet: Worksheet = unprinted,
): number {
  const { phi, omega, allowable, design } = connectionFactors.bolt;
  const available = method === "LRFD" ? phi.value : 1 / omega.value;
  const required = Math.abs(shear) / (bolt.planes * bolt.area);
  const shearStress = available * bolt.shearStress;
  if (required > shearStress) return 0;
  const stress = sheet.work(combinedTensileStress, [bolt.tensileStress, shearStress, required]);
  const nominal = sheet.work(boltTensionFormula, [stress, bolt.area]);
  return method === "LRFD"
    ? sheet.work(design("force"), [phi.value, nominal])
    : sheet.work(allowable("force"), [nominal, omega.value]);
}
