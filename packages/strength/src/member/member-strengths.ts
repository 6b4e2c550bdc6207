import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { bendingStrength } from "./bending.ts";
import { compressionStrength, greatestSlenderness } from "./compression.ts";
import type { MemberLengths, MemberSection } from "./member-section.ts";
import { shearStrength } from "./shear.ts";
import type { MemberStrength, Strength } from "./strength.ts";
import { type NetSection, tensionStrength } from "./tension.ts";
import { torsionStrength } from "./torsion.ts";

/** Effective length over radius of gyration that E2 asks compression members to stay below. */
export const preferredSlenderness = 200;

/** All that a member can take, N and N m; computed once and asked many times. */
export interface MemberStrengths {
  readonly tension: Strength;
  readonly compression: MemberStrength;
  readonly momentX: MemberStrength;
  readonly momentY: MemberStrength;
  /** Of forces along the depth, which bend about x; and across it. */
  readonly shearX: MemberStrength;
  readonly shearY: MemberStrength;
  readonly torsion: MemberStrength;
  /** Greatest effective length over radius of gyration. */
  readonly slenderness: number;
  /** What a reviewer has to know, in words; does not change the numbers. */
  readonly findings: readonly string[];
}

/**
 * Strength of a member in every way, for a section, its steel and its lengths. What the standard
 * does not cover comes back as not covered, with the reason, way by way.
 *
 * Left out: forces together (`interaction`), second order (`momentAmplifier`), weakened places.
 *
 * Source: AISC 360-22, chapters D to H.
 *
 * @param section by `memberSection`, SI
 * @param steel by `steelOf`, Pa
 * @param lengths m
 * @param net weakest cross-section, for tension
 * @returns N and N m, nominal and available by both methods
 * @throws Refusal `not-positive`, `out-of-range` for lengths and the net section
 * @example // HSS1.900X0.120, F_y 50 ksi, 72 in: 10.7 kip in, 7.3 kip in compression, ASD
 */
export function memberStrengths(
  section: MemberSection,
  steel: Steel,
  lengths: MemberLengths,
  net: NetSection | null = null,
  sheet: Worksheet = unprinted,
): MemberStrengths {
  const { lateral, shear, torsion } = lengths;
  const slenderness = greatestSlenderness(section, lengths);
  return {
    tension: tensionStrength(section, steel, net, sheet),
    compression: compressionStrength(section, steel, lengths, sheet),
    momentX: bendingStrength(section, "x", steel, lateral, sheet),
    momentY: bendingStrength(section, "y", steel, lateral, sheet),
    shearX: shearStrength(section, "x", steel, shear, sheet),
    shearY: shearStrength(section, "y", steel, shear, sheet),
    torsion: torsionStrength(section, steel, torsion, sheet),
    slenderness,
    findings: findingsOf(steel, slenderness),
  };
}

function findingsOf(steel: Steel, slenderness: number): readonly string[] {
  const findings: string[] = [];
  if (slenderness > preferredSlenderness) {
    findings.push(`L_c/r is ${Math.ceil(slenderness)}: AISC 360 prefers no more than 200 (E2)`);
  }
  if (!steel.listed) findings.push(`outside listed materials: ${steel.words}`);
  return findings;
}
