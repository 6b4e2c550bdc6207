import { refuse, requireLength } from "../connection/common/require.ts";
import type { NotCovered } from "../connection/common/strength.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { stripArea, stripCrosswise, stripLengthwise } from "./disc-strip-formulas.ts";
import {
  fibreBesideHole,
  holedArea,
  holedElasticModulus,
  holedExtremeModulus,
  holedMoment,
  holedNeutralModulus,
  holedRupture,
  holedSecondMoment,
} from "./holed-round-formulas.ts";
import type { RoundSection } from "./member-section.ts";
import { memberFactors } from "./resistance-factors.ts";
import { roundBendingStrength } from "./round-bending.ts";
import { lowerStrength, type Strength, strengthBy } from "./strength.ts";
import { tensionStrength } from "./tension.ts";
import { holeWidth } from "./tension-formulas.ts";

/** Where a bolt right through a tube takes the section away, seen from the bending. */
export type HolePlace = "extreme fibres" | "neutral axis";

/** Section of a round tube at a bolt hole through both walls, SI. */
export interface HoledSection {
  readonly area: number;
  readonly elasticModulus: number;
  readonly plasticModulus: number;
}

/**
 * Section left where a bolt goes right through a round tube: exact, for a straight hole 1/16 in
 * wider than drilled (B4.3b). Through the extreme fibres the plastic modulus loses
 * w t (D - t), a share of about w/(D - t): 19 % for a 5/16 in bolt in 2-3/8 in tube, more in a
 * smaller one.
 *
 * Left out: the stress peak at the edge of a hole; several bolts in one cross-section.
 *
 * @param section round tube, m
 * @param hole nominal diameter of the hole, m
 * @param place extreme fibres where the bolt lies in the plane of bending; that one where unknown
 * @returns m2, m3
 * @throws Refusal `not-positive`, `out-of-range` for a hole as wide as the tube inside
 * @example // D 2, t 0.1, hole 0.3375 in: Z 0.3613 less 0.4 x 0.1 x 1.9 in3
 */
export function holedRoundSection(
  section: RoundSection,
  hole: number,
  place: HolePlace,
  sheet: Worksheet = unprinted,
): HoledSection {
  requireLength(hole, "a hole");
  const { outside: D, designWall: t } = section;
  const w = sheet.work(holeWidth, [hole]);
  const [outer, inner] = [D / 2, D / 2 - t];
  if (w >= 2 * inner) {
    refuse("out-of-range", "a hole narrower than the tube inside", hole, "Check its unit.");
  }
  const strips = [
    sheet.work(stripArea, [outer, w], { note: "outside" }),
    sheet.work(stripArea, [inner, w], { note: "inside" }),
  ] as const;
  const area = sheet.work(holedArea, [section.area, ...strips]);
  const extreme = place === "extreme fibres";
  const strip = extreme ? stripLengthwise : stripCrosswise;
  const secondMoment = sheet.work(holedSecondMoment, [
    section.secondMomentX,
    sheet.work(strip, [outer, w], { note: "outside" }),
    sheet.work(strip, [inner, w], { note: "inside" }),
  ]);
  const fibre = extreme ? sheet.work(fibreBesideHole, [D, w]) : D / 2;
  const plastic = extreme ? holedExtremeModulus : holedNeutralModulus;
  return {
    area,
    elasticModulus: sheet.work(holedElasticModulus, [secondMoment, fibre]),
    plasticModulus: sheet.work(plastic, [section.plasticModulusX, D, t, w]),
  };
}

/** What a round tube can take at a bolt hole: bending and tension. */
export interface HoledStrength {
  readonly moment: Strength;
  readonly tension: Strength;
}

/**
 * Strength of a round tube at a bolt hole through both walls. Compression is that of the member:
 * E3 does not count holes with bolts in them.
 *
 * Source: AISC 360-22, D2 and F8; F13.1, written for flanges, carried over to the round tube: the
 * lower of yielding of the net section and rupture of its farthest fibre, with phi of F1.
 *
 * @param section round tube, SI
 * @param steel strengths, Pa
 * @param hole nominal diameter, m
 * @returns N m and N; not covered where the tube itself is not
 * @throws Refusal as `holedRoundSection`
 * @example // compact tube, F_u above 1.3 F_y: F_y Z_n
 */
export function holedRoundStrength(
  section: RoundSection,
  steel: Steel,
  hole: number,
  place: HolePlace,
  sheet: Worksheet = unprinted,
): HoledStrength | NotCovered {
  const gross = roundBendingStrength(section, steel, sheet);
  if (!gross.covered) return gross;
  const net = holedRoundSection(section, hole, place, sheet);
  const by = (state: readonly [string, string], moment: number) =>
    strengthBy(memberFactors.flexure, state, moment, sheet);
  const inputs = [gross.nominal, net.plasticModulus, section.plasticModulusX] as const;
  const moment = lowerStrength(
    by(["hole-yield", "yielding in bending at a bolt hole"], sheet.work(holedMoment, inputs)),
    by(
      ["hole-rupture", "rupture in bending at a bolt hole"],
      sheet.work(holedRupture, [steel.tensileStrength, net.elasticModulus]),
    ),
  );
  const tension = tensionStrength(section, steel, { area: net.area, shearLag: 1 }, sheet);
  return { moment, tension };
}
