import { INCH } from "../connection/common/customary.ts";
import { exceeds } from "../connection/common/exceeds.ts";
import { requireLength } from "../connection/common/require.ts";
import type { NotCovered } from "../connection/common/strength.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import { notCovered, type Strength } from "../member/strength.ts";
import {
  flatUseFactor,
  lumberResistance,
  type NominalWidth,
  nominalWidth,
  PSI,
  sizeFactor,
  wetFactors,
  windDuration,
} from "./lumber-factors.ts";
import {
  boardModulus,
  boardMoment,
  boardShear,
  lumberBendingStress,
  lumberShearStress,
} from "./lumber-formulas.ts";
import { type LumberGrade, type LumberRow, lumberRows, type WoodKind } from "./lumber-rows.ts";

/** A board or stud under wind. Dressed sizes, m. */
export interface Lumber {
  readonly wood: WoodKind;
  /** `stud` where unknown: it is the weaker. */
  readonly grade: LumberGrade;
  readonly thickness: number;
  readonly width: number;
  /** Wind along the width (a stud) or against the wide face (a base board). */
  readonly loaded: "edge" | "face";
  /** Above 19 % moisture in service: true outdoors and where unknown. */
  readonly wet: boolean;
}

/** What a board can take under wind; ASD and LRFD. */
export interface LumberStrength {
  readonly covered: true;
  readonly moment: Strength;
  readonly shear: Strength;
  /** E', Pa. */
  readonly modulus: number;
  /** What stands beside the numbers, in words. */
  readonly findings: readonly string[];
}

/** Depth over thickness, dressed, up to which ends held in place keep a board on edge upright. */
const deepest = 5;

/**
 * Strength of dimension lumber under wind: M = F_b' S with load duration, size, flat use and wet
 * service.
 *
 * Left out: repetitive members (1.15, would help), incising of treated wood (0.8, would not: said in
 * the findings), heat, notches, fixings, bearing.
 *
 * Source: NDS 2018, tables 4A and 4B of its Supplement, all from memory.
 *
 * @param lumber sizes in m
 * @returns N m, N and Pa; not covered outside 2 to 4 in thick and 12 in wide (nominal), for wide
 *   studs, and for boards deeper on edge than 5 times their thickness
 * @throws Refusal `not-positive`, `out-of-range` for sizes
 * @example // 2x4 SPF No. 2 on edge, dry: 1.6 x 875 x 1.5 psi x 3.0625 in3 = 6431 lb in
 */
export function lumberStrength(
  lumber: Lumber,
  sheet: Worksheet = unprinted,
): LumberStrength | NotCovered {
  const { wood, grade, thickness, width, loaded, wet } = lumber;
  requireLength(thickness, "a thickness");
  requireLength(width, "a width");
  const [b, d] = loaded === "edge" ? [thickness, width] : [width, thickness];
  const nominal = nominalWidth(width);
  const size = nominal === null ? null : sizeFactor(wood, grade, nominal);
  const row = nominal === null ? undefined : rowOf(wood, grade, nominal);
  const outside = outsideOf(lumber);
  if (outside) return outside;
  if (nominal === null || size === null || !row) {
    const reason = `no value for ${wood}, ${grade} grade, of this width`;
    return notCovered("lumber-width", reason, "Take a narrower board, or one of grade No. 2.");
  }
  const [bending, shear] = [row.bending * PSI, row.shear * PSI];
  const flat = loaded === "face" ? flatUseFactor(thickness, nominal) : 1;
  const wetBending = wet ? wetFactors.bending(bending * size) : 1;
  const stress = sheet.work(lumberBendingStress, [bending, wetBending, size, flat]);
  const modulus = sheet.work(boardModulus, [b, d]);
  const shearStress = sheet.work(lumberShearStress, [shear, wet ? wetFactors.shear : 1]);
  const [ofBending, ofShear] = [lumberResistance.bending.value, lumberResistance.shear.value];
  const CD = windDuration.value;
  return {
    covered: true,
    moment: {
      covered: true,
      id: "board-bending",
      name: "bending of a board",
      measure: "moment",
      nominal: stress * modulus,
      ASD: sheet.work(boardMoment, [stress, CD, modulus], { symbol: "M_ASD" }),
      LRFD: sheet.work(boardMoment, [stress, ofBending, modulus], { symbol: "M_LRFD" }),
    },
    shear: {
      covered: true,
      id: "board-shear",
      name: "shear of a board",
      measure: "force",
      nominal: (2 / 3) * shearStress * b * d,
      ASD: sheet.work(boardShear, [shearStress, CD, b, d], { symbol: "V_ASD" }),
      LRFD: sheet.work(boardShear, [shearStress, ofShear, b, d], { symbol: "V_LRFD" }),
    },
    modulus: row.modulus * PSI * (wet ? wetFactors.modulus : 1),
    findings: [
      `wood values of the NDS from memory: ${wood}, ${grade} grade; wood that was incised when treated keeps 0.8 of them`,
    ],
  };
}

const rowOf = (wood: WoodKind, grade: LumberGrade, width: NominalWidth): LumberRow | undefined =>
  lumberRows.find((row) => row.wood === wood && row.grade === grade && width <= row.widest);

/** Why a board lies outside dimension lumber; null where it does not. */
function outsideOf({ thickness, width, loaded }: Lumber): NotCovered | null {
  // 38 mm stands for 1.5 in; a board sawn full to 4 in is still dimension lumber.
  if (thickness < 0.0379 || thickness > 4 * INCH + 1e-6) {
    const reason = "no published value: dimension lumber is 1-1/2 to 4 in thick";
    return notCovered("lumber-thickness", reason, "Take 2 in lumber, or have it checked.");
  }
  if (exceeds(thickness, width)) {
    const reason = "the thickness is above the width";
    return notCovered("lumber-turned", reason, "Exchange thickness and width.");
  }
  if (loaded === "edge" && width > deepest * thickness) {
    const reason = "a board this deep on edge has to be held along an edge (NDS 4.4.1)";
    return notCovered("lumber-slender", reason, "Take a thicker board.");
  }
  return null;
}
