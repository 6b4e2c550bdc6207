import { cite, FOOT, formula, power } from "@hoopstay/core";
import { INCH } from "../connection/common/customary.ts";
import type { NotCovered } from "../connection/common/strength.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import { notCovered, type Strength } from "../member/strength.ts";
import { PSI, windDuration } from "./lumber-factors.ts";

const citation = cite("apa-d510", "table 4A, 3-ply plywood", "memory");

/**
 * Bending capacity F_b S of rated sheathing by span rating, lb in per ft of width: stress along and
 * across the strength axis. The column of 3-ply plywood, the lowest of all panels.
 */
export const panelRows = [
  { rating: "24/0", along: 250, across: 54 },
  { rating: "24/16", along: 320, across: 64 },
  { rating: "32/16", along: 370, across: 92 },
  { rating: "40/20", along: 625, across: 150 },
  { rating: "48/24", along: 845, across: 225 },
] as const;
export type SpanRating = (typeof panelRows)[number]["rating"];

/** C_M above 16 % moisture. */
const wetPanel = 0.75;
/** K_F phi over the reference value, as for sawn lumber in bending. */
const panelResistance = 2.54 * 0.85;

export const panelMoment = formula({
  id: "panel-moment",
  symbol: "m",
  name: "bending strength of a panel per length of support",
  measure: "force",
  arguments: [
    ["F_bS", "bending capacity by span rating", "force"],
    ["C_M", "wet service factor", "ratio"],
    ["k", "C_D (ASD) or K_F phi lambda (LRFD)", "ratio"],
  ],
  expression: "F_bS * C_M * k",
  citation,
  evaluate: (capacity, wet, factor) => capacity * wet * factor,
});

/** A wood structural panel under wind. */
export interface Panel {
  /** As stamped; null where unknown. */
  readonly rating: SpanRating | null;
  /** Whether the panel spans along its strength axis (its length); false where unknown. */
  readonly alongStrength: boolean;
  /** Above 16 % moisture: true outdoors and where unknown. */
  readonly wet: boolean;
}

/**
 * Bending strength of plywood or oriented strand board under wind, per metre of support.
 *
 * Left out: shear in the plane of the plies, deflection, nails.
 *
 * Source: APA D510 by span rating, from memory; a thickness alone tells no strength.
 *
 * @returns N m/m, which is N; not covered without a span rating
 * @example // 32/16 along, dry: 1.6 x 370 lb in/ft
 */
export function panelBendingStrength(
  { rating, alongStrength, wet }: Panel,
  sheet: Worksheet = unprinted,
): Strength | NotCovered {
  const row = panelRows.find((one) => one.rating === rating);
  if (!row) {
    const reason = "the strength of a panel goes by its span rating, which is not told";
    return notCovered("panel-rating", reason, "Read the span rating stamped on the panel.");
  }
  const capacity = ((alongStrength ? row.along : row.across) * PSI * power(INCH, 3)) / FOOT;
  const wetFactor = wet ? wetPanel : 1;
  return {
    covered: true,
    id: "panel-bending",
    name: "bending of a panel",
    measure: "force",
    nominal: capacity * wetFactor,
    ASD: sheet.work(panelMoment, [capacity, wetFactor, windDuration.value], { symbol: "m_ASD" }),
    LRFD: sheet.work(panelMoment, [capacity, wetFactor, panelResistance], { symbol: "m_LRFD" }),
  };
}
