import { type Dimension, readQuantity, type System } from "@hoopstay/core";

interface Written {
  readonly dimension: Dimension;
  readonly system: System | "both";
  /** SI units in one, as the definitions give them. */
  readonly factor: number;
}

const [inch, foot, pound, gravity] = [0.0254, 0.3048, 0.45359237, 9.80665];

/** The units that owners write, each with its own system's word for the same dimension. */
const units = {
  in: { dimension: "length", system: "us", factor: inch },
  ft: { dimension: "length", system: "us", factor: foot },
  mil: { dimension: "length", system: "us", factor: inch / 1000 },
  mm: { dimension: "length", system: "si", factor: 0.001 },
  m: { dimension: "length", system: "si", factor: 1 },
  ft2: { dimension: "area", system: "us", factor: foot ** 2 },
  m2: { dimension: "area", system: "si", factor: 1 },
  gal: { dimension: "volume", system: "us", factor: 231 * inch ** 3 },
  l: { dimension: "volume", system: "si", factor: 0.001 },
  mph: { dimension: "speed", system: "us", factor: 0.44704 },
  "m/s": { dimension: "speed", system: "si", factor: 1 },
  lb: { dimension: "force", system: "us", factor: pound * gravity },
  kg: { dimension: "force", system: "si", factor: gravity },
  kN: { dimension: "force", system: "si", factor: 1000 },
  N: { dimension: "force", system: "si", factor: 1 },
  "lb/ft": { dimension: "force-per-length", system: "us", factor: (pound * gravity) / foot },
  "N/m": { dimension: "force-per-length", system: "si", factor: 1 },
  "in-lb": { dimension: "moment", system: "us", factor: pound * gravity * inch },
  "N-m": { dimension: "moment", system: "si", factor: 1 },
  psf: { dimension: "pressure", system: "us", factor: (pound * gravity) / foot ** 2 },
  ksi: { dimension: "pressure", system: "us", factor: (1000 * pound * gravity) / inch ** 2 },
  Pa: { dimension: "pressure", system: "si", factor: 1 },
  MPa: { dimension: "pressure", system: "si", factor: 1e6 },
  "lb/ft2": { dimension: "mass-per-area", system: "us", factor: pound / foot ** 2 },
  "kg/m2": { dimension: "mass-per-area", system: "si", factor: 1 },
  pcf: { dimension: "unit-weight", system: "us", factor: (pound * gravity) / foot ** 3 },
  "N/m3": { dimension: "unit-weight", system: "si", factor: 1 },
  deg: { dimension: "angle", system: "both", factor: 1 },
  "%": { dimension: "fraction", system: "both", factor: 1 },
} as const satisfies Record<string, Written>;

export type UnitName = keyof typeof units;

/** The unit of the other system that a unit is written in there. */
const opposite: Partial<Record<UnitName, UnitName>> = {
  ...{ in: "mm", ft: "m", mil: "mm", mm: "in", m: "ft", ft2: "m2", m2: "ft2", gal: "l", l: "gal" },
  ...{ mph: "m/s", "m/s": "mph", lb: "N", kg: "lb", kN: "lb", N: "lb", "lb/ft": "N/m" },
  ...{
    "N/m": "lb/ft",
    "in-lb": "N-m",
    "N-m": "in-lb",
    psf: "Pa",
    ksi: "MPa",
    Pa: "psf",
    MPa: "ksi",
  },
  ...{ "lb/ft2": "kg/m2", "kg/m2": "lb/ft2", pcf: "N/m3", "N/m3": "pcf" },
};

/** Powers of a length that a dimension grows with, where everything of a house grows alike. */
const powers: Partial<Record<Dimension, number>> = { length: 1, area: 2, volume: 3 };

/** A number with its unit, as an owner writes it. */
export class Size {
  constructor(
    readonly amount: number,
    readonly unit: UnitName,
  ) {}

  get si(): number {
    return this.amount * units[this.unit].factor;
  }

  get dimension(): Dimension {
    return units[this.unit].dimension;
  }

  /** As the program reads it, in SI. */
  get read(): number {
    const read = readQuantity(String(this), this.dimension);
    if (!read.ok) throw new Error(`${this} is not read`);
    return read.value;
  }

  /** The same in the units of a system, by the definitions of both. */
  in(system: System): Size {
    const { system: own } = units[this.unit];
    const other = opposite[this.unit];
    if (own === "both" || own === system || !other) return this;
    return new Size(this.si / units[other].factor, other);
  }

  times = (factor: number): Size => new Size(this.amount * factor, this.unit);

  /** The same part of a house whose every length is this many times as long. */
  grown(factor: number): Size {
    return this.times(factor ** (powers[this.dimension] ?? 0));
  }

  /** Feet and inches where both are plain numbers; else the number and its unit. */
  toString(): string {
    const { amount, unit } = this;
    const inches = Math.round(Math.abs(amount) * 24) / 2;
    const [whole, rest] = [Math.floor(inches / 12), inches % 12];
    const split = unit === "ft" && rest !== 0 && Math.abs(amount) * 12 === inches;
    if (!split) return `${amount} ${unit}`;
    return `${amount < 0 ? "-" : ""}${whole > 0 ? `${whole} ft ` : ""}${rest} in`;
  }
}
