const inch = 0.0254;
const pound = 0.45359237 * 9.80665;
const psi = pound / inch ** 2;

/** SI worth of the units in which sources on members, steel and wood print. */
const worth: Readonly<Record<string, number>> = {
  "1": 1,
  deg: Math.PI / 180,
  in: inch,
  ft: 12 * inch,
  m: 1,
  in2: inch ** 2,
  in3: inch ** 3,
  in4: inch ** 4,
  cm4: 1e-8,
  psi,
  ksi: 1000 * psi,
  MPa: 1e6,
  lb: pound,
  kip: 1000 * pound,
  kN: 1000,
  "lb-in": pound * inch,
  "lb-in/ft": pound / 12,
  "kip-in": 1000 * pound * inch,
  "kip-ft": 12_000 * pound * inch,
};

/** SI worth of one of a printed unit. */
export function worthOf(unit: string): number {
  const factor = worth[unit];
  if (factor === undefined) throw new Error(`unit ${unit} of a published file is not known`);
  return factor;
}
