import { type Citation, FOOT, POUND_FORCE } from "@hoopstay/core";
import { type Feel, feelRows } from "./feel.ts";
import { requireWithin } from "./require.ts";
import { classRows, compareClasses, type SoilClass } from "./soil-class.ts";

/** Something an owner can tell about the ground: probe torque in N·m, blow count, or feel. */
export type Clue =
  | { readonly kind: "probe torque"; readonly torque: number }
  | { readonly kind: "blow count"; readonly blows: number }
  | { readonly kind: "feel"; readonly feel: Feel };

/** A clue, the class it gives, and where that comes from. */
export interface ReadClue {
  readonly clue: Clue;
  readonly soilClass: SoilClass;
  readonly citation: Citation;
}

const inchPound = (POUND_FORCE * FOOT) / 12;
/** Relative slack for a torque that was read from text in in-lb. */
const rounding = 1 + 1e-9;

/**
 * The soil class of one clue. A value between the bands of two classes takes the lower class. No
 * clue gives class 1: rock is seen, not probed.
 *
 * @throws Refusal `out-of-range` for a negative or non-finite reading
 */
function readClue(clue: Clue): ReadClue {
  if (clue.kind === "feel") {
    const { soilClass, citation } = feelRows[clue.feel];
    return { clue, soilClass, citation };
  }
  const reading = clue.kind === "blow count" ? clue.blows : clue.torque / inchPound;
  requireWithin(
    reading,
    [0, Number.MAX_VALUE],
    clue.kind,
    "Read the instrument again.",
    "out-of-range",
  );
  const row = classRows.find(({ soilClass, blows, torque }) => {
    if (clue.kind === "blow count") return blows !== null && reading >= blows;
    if (torque === null) return false;
    return soilClass === "2" ? reading > torque * rounding : reading * rounding >= torque;
  });
  if (!row) throw new Error("class 5 begins at zero");
  return { clue, soilClass: row.soilClass, citation: row.citation };
}

/**
 * The lowest class that any clue gives, with what every clue says. Null without a clue: unknown
 * ground, for which nothing is presumed.
 *
 * Source: 24 CFR 3285.202, table [classes 1 to 3 read, the others memory]; feel tests judged.
 */
export function classOfClues(clues: readonly Clue[]): {
  readonly soilClass: SoilClass | null;
  readonly clues: readonly ReadClue[];
} {
  const read = clues.map(readClue);
  const worst = read
    .map((one) => one.soilClass)
    .sort(compareClasses)
    .at(-1);
  return { soilClass: worst ?? null, clues: read };
}
