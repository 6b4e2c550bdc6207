const foot = 0.3048;
const mile = 5280 * foot;
const poundForce = 0.45359237 * 9.80665;

/** SI worth of the units in which wind sources print. */
const factors: Readonly<Record<string, number>> = {
  "1": 1,
  m: 1,
  m2: 1,
  ft: foot,
  ft2: foot ** 2,
  deg: Math.PI / 180,
  mph: mile / 3600,
  psf: poundForce / foot ** 2,
};

/** SI worth of one of a printed unit. */
export function worthOf(unit: string): number {
  const factor = factors[unit];
  if (factor === undefined) throw new Error(`unit ${unit} of a published file is not known`);
  return factor;
}
