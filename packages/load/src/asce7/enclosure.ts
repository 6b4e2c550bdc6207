import { cite, constant, FOOT, judged } from "@hoopstay/core";

/** The four walls, by where they stand seen with the front ahead. */
export const wallNames = ["left", "right", "front", "back"] as const;
export type WallName = (typeof wallNames)[number];

/** Openings or gross areas of the envelope, m2. */
export type EnvelopeAreas = Readonly<Record<WallName | "roof", number>>;

export type EnclosureClass = "open" | "partially enclosed" | "partially open" | "enclosed";

/** The tests of one wall, taken as the windward one. */
export interface WallTest {
  readonly wall: WallName;
  readonly opening: number;
  readonly gross: number;
  readonly otherOpenings: number;
  readonly otherGross: number;
  /** A_o >= 0.8 A_g. */
  readonly open: boolean;
  /** A_o > 1.10 A_oi, with the two other conditions. */
  readonly dominant: boolean;
  /** A_oi < A_o <= 1.10 A_oi, with the two other conditions. */
  readonly nearlyDominant: boolean;
  /** A_o above min(0.01 A_g, 4 ft2). */
  readonly aboveEnclosedLimit: boolean;
}

export interface Enclosure {
  readonly kind: EnclosureClass;
  readonly walls: readonly WallTest[];
  /** Every value of GC_pi that is run, both signs; 0 alone for an open building. */
  readonly insideCoefficients: readonly number[];
}

const definitions = cite("asce-7-16", "26.2, definitions", "read");
const table = cite("bnbc-2020", "figure 6.2.5 (ASCE 7-16 table 26.13-1)", "read");
export const enclosureCitations = { definitions, table };

export const insideEnclosed = constant(
  "inside-enclosed",
  "GC_pi",
  "inside pressure coefficient, enclosed or partially open",
  0.18,
  "ratio",
  table,
);
export const insidePartiallyEnclosed = constant(
  "inside-partially-enclosed",
  "GC_pi",
  "inside pressure coefficient, partially enclosed",
  0.55,
  "ratio",
  table,
);
export const nearlyDominantCitation = judged(
  "openings within 10 % of the dominant ratio: 0.55 runs beside 0.18; safe side",
);

/** 4 ft2, exactly. */
export const fourSquareFeet = 4 * FOOT ** 2;

/** Rounding slack on the borders of the classes: on a border the printed test holds. */
const slack = 1e-12;

function testWall(
  wall: WallName,
  openings: EnvelopeAreas,
  gross: EnvelopeAreas,
  totalOpen: number,
  totalGross: number,
): WallTest {
  const opening = openings[wall];
  const area = gross[wall];
  const otherOpenings = totalOpen - opening;
  const otherGross = totalGross - area;
  const limit = Math.min(fourSquareFeet, 0.01 * area);
  const others = opening > limit && otherOpenings <= 0.2 * otherGross * (1 + slack);
  return {
    wall,
    opening,
    gross: area,
    otherOpenings,
    otherGross,
    open: opening >= 0.8 * area * (1 - slack),
    dominant: others && opening > 1.1 * otherOpenings,
    nearlyDominant: others && opening > otherOpenings && opening <= 1.1 * otherOpenings,
    aboveEnclosedLimit: opening > limit,
  };
}

const both = (value: number): number[] => [value, -value];

/**
 * The enclosure class of the building: open only if every wall passes, else the most severe class
 * found with any wall as the windward one. Its inside pressure runs with both signs in every wind
 * direction.
 *
 * @param openings apertures of walls and roof in this state, m2
 * @param gross gross areas of walls and roof, m2
 */
export function enclosureOf(openings: EnvelopeAreas, gross: EnvelopeAreas): Enclosure {
  let totalOpen = openings.roof;
  let totalGross = gross.roof;
  for (const wall of wallNames) {
    totalOpen += openings[wall];
    totalGross += gross[wall];
  }
  const walls = wallNames.map((wall) => testWall(wall, openings, gross, totalOpen, totalGross));
  if (walls.every((wall) => wall.open)) return { kind: "open", walls, insideCoefficients: [0] };
  if (walls.some((wall) => wall.dominant)) {
    const insideCoefficients = both(insidePartiallyEnclosed.value);
    return { kind: "partially enclosed", walls, insideCoefficients };
  }
  const kind = walls.some((wall) => wall.aboveEnclosedLimit) ? "partially open" : "enclosed";
  const insideCoefficients = both(insideEnclosed.value);
  if (walls.some((wall) => wall.nearlyDominant)) {
    insideCoefficients.push(...both(insidePartiallyEnclosed.value));
  }
  return { kind, walls, insideCoefficients };
}
