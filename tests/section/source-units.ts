const inch = 0.0254;
const pound = 0.45359237;
const foot = 12 * inch;

/** SI worth of the units the sources print. */
const factors: Readonly<Record<string, number>> = {
  "1": 1,
  "%": 0.01,
  um: 1e-6,
  mm: 1e-3,
  cm: 1e-2,
  cm2: 1e-4,
  cm3: 1e-6,
  cm4: 1e-8,
  "kg/m": 1,
  in: inch,
  in2: inch ** 2,
  in3: inch ** 3,
  in4: inch ** 4,
  "lb/ft": pound / foot,
  "lb/ft2": pound / foot ** 2,
};

/** SI worth of one of a printed unit. */
export function worthOf(unit: string): number {
  const factor = factors[unit];
  if (factor === undefined) throw new Error(`unit ${unit} of a published file is not known`);
  return factor;
}
