import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { type Axis, type BarSection, type FlatSection, requireSpan } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import {
  barSlenderness,
  elasticBarTurning,
  inelasticBarTurning,
  solidPlasticMoment,
} from "./solid-bending-formulas.ts";
import { type Strength, strengthBy } from "./strength.ts";

/** lambda_b F_y/E up to which a bar on edge reaches its plastic moment, and yields at all (F11). */
const compactBar = 0.08;
const yieldingBar = 1.9;

/**
 * Strength of a flat or solid round bar in bending. On edge (axis x) a flat turns out sideways,
 * with C_b 1; where it stops yielding the standard rises by 0.06 %.
 *
 * Left out: bars with holes.
 *
 * Source: AISC 360-22, F11.
 *
 * @param section flat or round bar, SI
 * @param axis about which it bends; x works the width of a flat
 * @param lateral L_b, m: between points held sideways
 * @returns moment, N m
 * @throws Refusal `not-positive`, `out-of-range` for the length
 * @example // flat b x t bent flatwise: F_y b t2 / 4
 */
export function solidBendingStrength(
  section: FlatSection | BarSection,
  axis: Axis,
  steel: Steel,
  lateral: number,
  sheet: Worksheet = unprinted,
): Strength {
  requireSpan(lateral, "a length between points held sideways");
  const { modulus, yieldStrength } = steel;
  const [Z, S] =
    axis === "x"
      ? [section.plasticModulusX, section.elasticModulusX]
      : [section.plasticModulusY, section.elasticModulusY];
  const plastic = sheet.work(solidPlasticMoment, [yieldStrength, Z, S]);
  const by = (state: readonly [string, string], moment: number) =>
    strengthBy(memberFactors.flexure, state, moment, sheet);
  const yielding = ["bending-yield", "yielding in bending"] as const;
  if (section.kind === "bar" || axis === "y") return by(yielding, plastic);
  const ratio = sheet.work(barSlenderness, [lateral, section.width, section.thickness]);
  if (ratio <= (compactBar * modulus) / yieldStrength) return by(yielding, plastic);
  const moment =
    ratio <= (yieldingBar * modulus) / yieldStrength
      ? sheet.work(inelasticBarTurning, [ratio, yieldStrength, modulus, S, plastic])
      : sheet.work(elasticBarTurning, [ratio, modulus, S]);
  return by(["turning", "turning out sideways in bending"], moment);
}
