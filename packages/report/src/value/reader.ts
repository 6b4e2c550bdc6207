import {
  convert,
  figures,
  limitFigure,
  type Measure,
  type Measured,
  plain,
  power,
  type System,
  showMeasured,
  unitOf,
} from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";

/** A column of one measure: its unit and its cells, all in that unit. */
export interface ColumnUnit {
  readonly symbol: string;
  readonly cell: (value: number) => string;
}

/** A minus is a minus, not a hyphen. */
export const signed = (shown: string): string => shown.replace(/^-/, "\u2212");

/** The unit and the decimals that suit the largest of the values, used for the whole column. */
export function columnUnit(
  measure: "force" | "moment" | "length" | "speed" | "pressure",
  system: System,
  values: readonly number[],
  digits = 3,
): ColumnUnit {
  const largest = values.reduce(
    (most, value) => (Number.isFinite(value) ? Math.max(most, Math.abs(value)) : most),
    0,
  );
  const unit = unitOf(measure, system, largest, digits);
  const size = largest === 0 ? 0 : Math.floor(Math.log10(largest / unit.factor));
  const decimals = Math.min(6, Math.max(0, digits - 1 - size));
  return {
    symbol: unit.symbol,
    cell: (value) =>
      Number.isFinite(value)
        ? grouped((value / unit.factor).toFixed(decimals), system)
        : showLimit(value),
  };
}

/** A minus for the hyphen, no minus before nought, commas between thousands in US units. */
function grouped(shown: string, system: System): string {
  const signless = shown.startsWith("-") ? shown.slice(1) : shown;
  const thousands =
    system === "us" && signless.length > 3
      ? signless.replace(/\d(?=(?:\d{3})+(?:\.|$))/g, "$&,")
      : signless;
  return shown === signless || Number(shown) === 0 ? thousands : `\u2212${thousands}`;
}

const showLimit = (value: number): string =>
  value === Number.POSITIVE_INFINITY ? "no limit" : "none";

/** Forces of a list in one unit, three figures each: the same text wherever one of them stands. */
export function forceColumn(system: System, values: readonly number[]): ColumnUnit {
  const unit = unitOf("force", system, Math.max(0, ...values.map(Math.abs)));
  return { symbol: unit.symbol, cell: (value) => figures(value, unit) };
}

/** A ratio of demand to resistance. */
export function ratio(value: number): string {
  if (!Number.isFinite(value)) return value > 0 ? "no hold" : showLimit(value);
  const shown = value === 0 ? "0.00" : value < 99.5 ? value.toFixed(2) : plain(value, 3);
  return value > 1 ? `<b>${signed(shown)}</b>` : signed(shown);
}

/** A gust that something stands, in whole numbers of the reader's unit, rounded down, no unit. */
export const gustFigure = (value: number, system: System): string =>
  Number.isFinite(value) ? limitFigure(value, system) : showLimit(value);

/** The unit speeds are shown in. */
export const speedUnit = (system: System): string => unitOf("speed", system).symbol;

/** Section properties have no unit of their own in the reader's list. */
const powers: Partial<Record<Measure, { us: "ft" | "in"; exponent: 3 | 4 }>> = {
  "first-moment": { us: "ft", exponent: 3 },
  "section-modulus": { us: "in", exponent: 3 },
  "second-moment": { us: "in", exponent: 4 },
};
const raised = { 3: "\u00b3", 4: "\u2074" };

/** A value in the reader's unit, four figures, for the working. */
export function forReader(value: number, measure: Measure, system: System): string {
  const found = powers[measure];
  if (!found || !Number.isFinite(value)) {
    return signed(showMeasured({ value, measure, digits: 4 }, system));
  }
  const { us, exponent } = found;
  if (system === "si") return `${plain(value, 4)} m${raised[exponent]}`;
  return `${plain(power(convert(1, "length", us), exponent) * value, 4)} ${us}${raised[exponent]}`;
}

const siUnits: Record<Measure, string> = {
  length: "m",
  area: "m\u00b2",
  speed: "m/s",
  force: "N",
  moment: "N\u00b7m",
  pressure: "Pa",
  "unit-weight": "N/m\u00b3",
  "force-per-length": "N/m",
  volume: "m\u00b3",
  "mass-per-area": "kg/m\u00b2",
  density: "kg/m\u00b3",
  angle: "rad",
  ratio: "",
  "first-moment": "m\u00b3",
  "section-modulus": "m\u00b3",
  "second-moment": "m\u2074",
};

/** The SI unit the working is in. */
export const siUnit = (measure: Measure): string => siUnits[measure];

/** A criterion or an input as used: a measured value, or words. */
export const valueMarkup = (value: string | Measured, system: System): string =>
  typeof value === "string" ? typed(value) : text(signed(showMeasured(value, system)));
