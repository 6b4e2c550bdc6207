import { roundArea } from "@hoopstay/section";
import { grossYield, netRupture } from "../../member/tension-formulas.ts";
import { refuse } from "../common/require.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import type { LimitState } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import { sleevedEffectiveArea, sleevedNetArea, widthBesideHole } from "./net-section-formulas.ts";
import type { SleevedTube, TubeName } from "./sleeve-joint.ts";

/**
 * Tension of one tube of a sleeve, whole and at its holes, N.
 *
 * @throws Refusal `out-of-range` where the holes leave nothing of the tube
 */
export function tubeNetSection(
  name: TubeName,
  { outside, wall, yieldStrength, tensileStrength }: SleevedTube,
  hole: number,
  sheet: Worksheet,
): readonly LimitState[] {
  const gross = sheet.work(roundArea, [outside, wall]);
  const net = sheet.work(sleevedNetArea, [outside, wall, hole]);
  const beside = sheet.work(widthBesideHole, [outside, wall, hole]);
  // Bolts from 1.6 mm and walls of the rules: a hole narrower than the bore leaves a net area.
  if (!(hole < outside - 2 * wall)) {
    const expected = `a hole that leaves a part of the ${name}`;
    refuse("out-of-range", expected, hole, "Check the bolt against the tube.");
  }
  const effective = sheet.work(sleevedEffectiveArea, [net, wall, beside]);
  return [
    limitState(
      sheet,
      [`yielding-${name}`, `yielding of the ${name} in tension`],
      "force",
      sheet.work(grossYield, [yieldStrength, gross]),
      connectionFactors.tensionYield,
    ),
    limitState(
      sheet,
      [`net-section-${name}`, `the ${name} torn across at its holes`],
      "force",
      sheet.work(netRupture, [tensileStrength, effective]),
      connectionFactors.rupture,
    ),
  ];
}
