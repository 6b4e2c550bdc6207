import type { SectionProperties } from "@hoopstay/section";
import { refuse } from "../connection/common/require.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { memberFactors } from "./resistance-factors.ts";
import { lowerStrength, type Strength, strengthBy } from "./strength.ts";
import { effectiveNetArea, grossYield, netRupture } from "./tension-formulas.ts";

/** The weakest cross-section across holes or a connection. */
export interface NetSection {
  /** A_n, m2. */
  readonly area: number;
  /** U of table D3.1; 1 where every wall is taken hold of. */
  readonly shearLag: number;
}

/**
 * Strength in tension: yielding of the gross section, and rupture of the net section where one is
 * given.
 *
 * Left out: block shear (J4.3), staggered holes, pins.
 *
 * Source: AISC 360-22, D2 and D3.
 *
 * @param section area, m2
 * @param steel strengths, Pa
 * @returns force, N
 * @throws Refusal `out-of-range` for a net area above the gross one or a U outside 0 to 1
 * @example // 6.18 in2 of 46 ksi: 284 kip nominal, 170 ASD, 256 LRFD (Design Examples, D.4)
 */
export function tensionStrength(
  section: Pick<SectionProperties, "area">,
  steel: Steel,
  net: NetSection | null = null,
  sheet: Worksheet = unprinted,
): Strength {
  const yieldForce = sheet.work(grossYield, [steel.yieldStrength, section.area]);
  const yielding = strengthBy(
    memberFactors.tensionYield,
    ["tension-yield", "yielding in tension"],
    yieldForce,
    sheet,
  );
  if (!net) return yielding;
  requireNet(section.area, net);
  const effective = sheet.work(effectiveNetArea, [net.area, net.shearLag]);
  const rupture = strengthBy(
    memberFactors.tensionRupture,
    ["tension-rupture", "rupture across holes or a connection"],
    sheet.work(netRupture, [steel.tensileStrength, effective]),
    sheet,
  );
  return lowerStrength(yielding, rupture);
}

function requireNet(gross: number, { area, shearLag }: NetSection): void {
  if (!(area > 0 && area <= gross)) {
    const expected = "a net area above zero and up to the gross area";
    refuse("out-of-range", expected, area, "Check the holes: they take the whole section.");
  }
  if (shearLag > 0 && shearLag <= 1) return;
  refuse("out-of-range", "a shear lag factor above 0 and up to 1", shearLag, "See table D3.1.");
}
