/** The kinds of quantity a file may hold. */
export const dimensions = [
  "length",
  "area",
  "volume",
  "speed",
  "force",
  "moment",
  "force-per-length",
  "pressure",
  "mass-per-area",
  "density",
  "unit-weight",
  "angle",
  "fraction",
] as const;

export type Dimension = (typeof dimensions)[number];

/** Which family of units a reader wants to see. */
export type System = "us" | "si";

/**
 * A value in SI (m, m2, m3, m/s, N, N·m, N/m, Pa, kg/m2, kg/m3, rad, 1) and the text typed for it.
 */
export interface Quantity {
  readonly value: number;
  readonly text: string;
}

/** A quantity of a file, which still knows what its key measures. */
export interface TypedQuantity extends Quantity {
  readonly dimension: Dimension;
}

/** What a dimension is called in a sentence, and how a right answer looks. */
export const wording: Readonly<Record<Dimension, { noun: string; example: string }>> = {
  length: { noun: "a length", example: "18 ft, 6 ft 4 in or 5.4 m" },
  area: { noun: "an area", example: "120 ft2 or 11 m2" },
  volume: { noun: "a volume", example: "55 gal or 208 l" },
  speed: { noun: "a speed", example: "105 mph or 47 m/s" },
  force: { noun: "a weight or a force", example: "1,200 lb, 540 kg or 5.3 kN" },
  moment: { noun: "a moment", example: "350 lb-ft or 475 N-m" },
  "force-per-length": { noun: "a force per length", example: "1.5 lb/ft or 22 N/m" },
  pressure: { noun: "a pressure or a stress", example: "16 psf, 50 ksi or 345 MPa" },
  "mass-per-area": { noun: "a weight per area", example: "5 oz/yd2 or 170 g/m2" },
  "unit-weight": { noun: "a unit weight", example: "110 pcf or 17 kN/m3" },
  density: { noun: "a density", example: "145 pcf or 2300 kg/m3" },
  angle: { noun: "an angle or a slope", example: "5 deg, 8 % or 1:12" },
  fraction: { noun: "a share of the whole", example: "30 % or 0.3" },
};
