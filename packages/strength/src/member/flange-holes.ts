import { cite, formula } from "@hoopstay/core";
import { refuse, requireCount, requireLength } from "../connection/common/require.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { bentBox } from "./bent-box.ts";
import { boxBendingStrength } from "./box-bending.ts";
import type { Axis, RectangularSection } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import { lowerStrength, type MemberStrength, strengthBy } from "./strength.ts";
import { holeWidth, netArea } from "./tension-formulas.ts";

export const flangeRupture = formula({
  id: "flange-rupture",
  symbol: "M_n",
  name: "bending strength, rupture of the flange across its holes",
  measure: "moment",
  arguments: [
    ["F_u", "tensile strength", "pressure"],
    ["A_fn", "net area of the flange", "area"],
    ["A_fg", "gross area of the flange", "area"],
    ["S", "elastic section modulus", "section-modulus"],
  ],
  expression: "F_u * A_fn / A_fg * S",
  citation: cite("aisc-360-22", "equation F13-1", "read"),
  range: "F_u A_fn below Y_t F_y A_fg",
  evaluate: (fu, net, gross, S) => ((fu * net) / gross) * S,
});

/** Y_t of F13.1: 1.0 where F_y/F_u is up to 0.8, else 1.1. */
const yieldShare = ({ yieldStrength, tensileStrength }: Steel): number =>
  yieldStrength <= 0.8 * tensileStrength * (1 + 1e-12) ? 1 : 1.1;

/** Holes side by side across the flange in tension, nominal diameter in m. */
export interface FlangeHoles {
  readonly diameter: number;
  readonly count: number;
}

/**
 * Strength of a rectangular tube in bending where its tension flange has bolt holes. Where the
 * holes are small, F_u A_fn from Y_t F_y A_fg up, they do not count.
 *
 * Left out: holes in a web; slots.
 *
 * Source: AISC 360-22, F13.1, with F7; the flange is width times wall.
 *
 * @param section rectangular tube, SI
 * @param axis about which it bends
 * @param lateral L_b, m
 * @returns moment, N m; not covered where `boxBendingStrength` is not
 * @throws Refusal `not-positive`, `out-of-range`, also for holes that take the whole flange
 * @example // holes of half the flange, F_y 50, F_u 62 ksi: 31 S, below 50 Z
 */
export function flangeHolesStrength(
  section: RectangularSection,
  axis: Axis,
  steel: Steel,
  holes: FlangeHoles,
  lateral: number,
  sheet: Worksheet = unprinted,
): MemberStrength {
  requireLength(holes.diameter, "a hole");
  requireCount(holes.count, "holes side by side");
  const whole = boxBendingStrength(section, axis, steel, lateral, sheet);
  if (!whole.covered) return whole;
  const { width, wall, elasticModulus } = bentBox(section, axis);
  const gross = width * wall;
  const wide = sheet.work(holeWidth, [holes.diameter]);
  const net = sheet.work(netArea, [gross, holes.count, wide, wall], { symbol: "A_fn" });
  if (!(net > 0)) {
    const expected = "holes narrower than the flange";
    refuse(
      "out-of-range",
      expected,
      holes.diameter,
      "Check the holes: they take the whole flange.",
    );
  }
  const { yieldStrength, tensileStrength } = steel;
  if (tensileStrength * net >= yieldShare(steel) * yieldStrength * gross) return whole;
  const moment = sheet.work(flangeRupture, [tensileStrength, net, gross, elasticModulus]);
  const state = ["flange-rupture", "rupture of the flange at its bolt holes"] as const;
  return lowerStrength(whole, strengthBy(memberFactors.flexure, state, moment, sheet));
}
