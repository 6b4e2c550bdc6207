import { power } from "@hoopstay/core";

const inch = 0.0254;
const foot = 12 * inch;
const mile = 5280 * foot;
const poundMass = 0.45359237;
const pound = poundMass * 9.80665;
const psi = pound / inch ** 2;

/**
 * SI worth of the units in which the sources print. `lb` is a force; `lb/ft` and `lb/ft2` are a
 * mass on a length or an area, as tables of tubes, sheet and zinc have it.
 */
const factors: Readonly<Record<string, number>> = {
  "1": 1,
  "%": 0.01,
  deg: Math.PI / 180,
  um: 1e-6,
  mm: 1e-3,
  cm: 1e-2,
  m: 1,
  in: inch,
  ft: foot,
  mph: mile / 3600,
  cm2: 1e-4,
  m2: 1,
  in2: inch ** 2,
  ft2: foot ** 2,
  ft3: power(foot, 3),
  cm3: 1e-6,
  in3: power(inch, 3),
  cm4: 1e-8,
  in4: power(inch, 4),
  "kg/m": 1,
  "lb/ft": poundMass / foot,
  "lb/ft2": poundMass / foot ** 2,
  N: 1,
  "N/m": 1,
  kN: 1000,
  lb: pound,
  kip: 1000 * pound,
  "kip/in": (1000 * pound) / inch,
  "lb/in": pound / inch,
  kPa: 1000,
  MPa: 1e6,
  GPa: 1e9,
  psf: pound / foot ** 2,
  psi,
  ksi: 1000 * psi,
  "kN/m3": 1000,
  "kN-m": 1000,
  "in-lb": inch * pound,
  "lb-in": pound * inch,
  "lb-in/ft": pound / 12,
  "kip-in": 1000 * pound * inch,
  "kip-ft": 1000 * pound * foot,
};

/** SI worth of one of a printed unit. */
export function worthOf(unit: string): number {
  const factor = factors[unit];
  if (factor === undefined) throw new Error(`unit ${unit} of a published file is not known`);
  return factor;
}
