import type { Dimension, System } from "./dimension.ts";
import { significant } from "./significant.ts";
import { findUnit } from "./spelling.ts";
import { type Unit, units } from "./unit.ts";

/** Symbols shown; the first is the one for tables and for nought. */
const shown: Readonly<Record<Dimension, Readonly<Record<System, readonly string[]>>>> = {
  length: { us: ["ft", "in"], si: ["m", "mm"] },
  area: { us: ["ft²", "in²"], si: ["m²", "mm²"] },
  volume: { us: ["gal"], si: ["L", "m³"] },
  speed: { us: ["mph"], si: ["m/s"] },
  force: { us: ["lb"], si: ["kN", "N"] },
  moment: { us: ["lb·ft"], si: ["kN·m", "N·m"] },
  "force-per-length": { us: ["lb/ft"], si: ["kN/m", "N/m"] },
  pressure: { us: ["psf", "ksi"], si: ["kPa", "Pa", "MPa"] },
  "mass-per-area": { us: ["lb/ft²", "oz/yd²"], si: ["kg/m²", "g/m²"] },
  "unit-weight": { us: ["pcf"], si: ["kN/m³", "N/m³"] },
  density: { us: ["pcf"], si: ["kg/m³"] },
  angle: { us: ["°"], si: ["°"] },
  fraction: { us: ["%"], si: ["%"] },
};

const within = (value: number, unit: Unit): number =>
  (unit.slope ? Math.tan(value) : value) / unit.factor;

/**
 * The unit to show a dimension in.
 * @param about an SI value the unit should suit: the largest unit in which it shows as one or
 * more. Left out or nought: the usual unit of a table column
 * @param digits significant figures it will be shown with, 1 to 12
 * @returns the unit: its symbol, and its factor in SI
 * @throws RangeError if `about` is not finite or `digits` is out of range
 * @example unitOf("pressure", "us").symbol // "psf"; with about = 345e6 it is "ksi"
 */
export function unitOf(dimension: Dimension, system: System, about = 0, digits = 3): Unit {
  const choices = shown[dimension][system].flatMap((symbol) =>
    units[dimension].filter((unit) => unit.symbol === symbol),
  );
  const usual = choices[0] as Unit;
  if (about === 0) return usual;
  const fits = (unit: Unit) => Math.abs(Number(significant(within(about, unit), digits))) >= 1;
  const descending = choices.toSorted((one, other) => other.factor - one.factor);
  return descending.find(fits) ?? (descending.at(-1) as Unit);
}

/**
 * An SI value as a number of some unit.
 * @param unit any spelling read for the dimension
 * @throws RangeError if the dimension has no such unit
 * @example convert(5.4864, "length", "ft") // 18
 */
export function convert(value: number, dimension: Dimension, unit: string): number {
  const found = findUnit(unit, dimension);
  if (!found) throw new RangeError(`no unit of ${dimension} is spelled "${unit}"`);
  return within(value, found);
}

/**
 * The figures of an SI value in a unit, without the symbol: the cell of a table column.
 * @param unit as `unitOf` gives it; US units have commas between thousands
 * @param digits significant figures, 1 to 12
 * @throws RangeError if the value in that unit is not finite, or `digits` is out of range
 * @example figures(10720, unitOf("force", "us")) // "2,410"
 */
export function figures(value: number, unit: Unit, digits = 3): string {
  const text = significant(within(value, unit), digits);
  if (unit.system === "si" || text.includes("e")) return text;
  const [whole = "", decimals] = text.split(".");
  const grouped = whole.replace(/(?<=\d)(?=(?:\d{3})+$)/g, ",");
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}

/**
 * An SI value as text with a unit; `readQuantity` reads it back to the figures shown.
 * @param value in SI, finite
 * @param digits significant figures, 1 to 12
 * @throws RangeError if the value is not finite, or `digits` is out of range
 * @example show(5.4864, "length", "us") // "18 ft"; in "si" it is "5.49 m"
 */
export function show(value: number, dimension: Dimension, system: System, digits = 3): string {
  const unit = unitOf(dimension, system, value, digits);
  const space = unit.symbol === "°" ? "" : " ";
  return `${figures(value, unit, digits)}${space}${unit.symbol}`;
}
