import { type Dimension, dimensions } from "./dimension.ts";
import { type Unit, units } from "./unit.ts";

/** One form for all ways to write a unit: m² and m^2 as m2, lb-ft as lb·ft, sq ft as ft2. */
function canonical(text: string): string {
  return text
    .trim()
    .replace(/\s*(?:\/|\bper\b)\s*/gi, "/")
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replace(/(?<=[a-z])\^(?=[23])/gi, "")
    .replace(/\bsq\.? ?([a-z]+)/gi, "$12")
    .replace(/\bcu\.? ?([a-z]+)/gi, "$13")
    .replace(/ ?[-·⋅*] ?| /g, "·");
}

// Capitals tell MPa from mPa, so they are free only where no prefix can be meant.
const anyCase = (unit: Unit, spelling: string): boolean =>
  unit.system === "us" || /^[a-z]{3,}$/.test(spelling);

interface Spelled {
  readonly exact: Map<string, Unit>;
  readonly lowered: Map<string, Unit>;
}

const cache: Partial<Record<Dimension, Spelled>> = {};

function spelled(dimension: Dimension): Spelled {
  const known = cache[dimension];
  if (known) return known;
  const made: Spelled = { exact: new Map(), lowered: new Map() };
  for (const unit of units[dimension])
    for (const spelling of unit.spellings) {
      const key = canonical(spelling);
      made.exact.set(key, unit);
      if (anyCase(unit, spelling)) made.lowered.set(key.toLowerCase(), unit);
    }
  cache[dimension] = made;
  return made;
}

/** The unit of this dimension that a text spells, or undefined. */
export function findUnit(text: string, dimension: Dimension): Unit | undefined {
  const key = canonical(text);
  const { exact, lowered } = spelled(dimension);
  return exact.get(key) ?? lowered.get(key.toLowerCase());
}

/** The dimensions that know this spelling. */
export function dimensionsOf(text: string): readonly Dimension[] {
  return dimensions.filter((dimension) => findUnit(text, dimension) !== undefined);
}

/** Steps (insert, drop, change) between two short words. */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const change = (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}

/** The known spelling nearest to a text, or undefined if none is near enough to be meant. */
export function nearestSpelling(text: string, dimension: Dimension): string | undefined {
  const word = canonical(text)
    .replace(/^[^a-z%°]+/i, "")
    .toLowerCase();
  if (word.length > 24) return undefined;
  let best: string | undefined;
  let least = word.length < 2 ? 1 : word.length < 5 ? 2 : 3;
  for (const spelling of spellingsOf(dimension)) {
    const steps = distance(word, canonical(spelling).toLowerCase());
    if (steps < least && steps < spelling.length) [best, least] = [spelling, steps];
  }
  return best;
}

/**
 * Every spelling read for a dimension, unit by unit.
 * @param dimension any member of `dimensions`
 * @returns texts as a person may type them
 * @example spellingsOf("density") // ["pcf", "lb/ft3", "lbs/ft3", "kg/m3"]
 */
export function spellingsOf(dimension: Dimension): string[] {
  return units[dimension].flatMap((unit) =>
    unit.spellings.map((spelling) => spelling.replace("·", "-")),
  );
}

/** One spelling for each unit of a dimension: the short closed list. */
export function mainSpellings(dimension: Dimension): string[] {
  return units[dimension].map((unit) => (unit.spellings[0] ?? unit.symbol).replace("·", "-"));
}
