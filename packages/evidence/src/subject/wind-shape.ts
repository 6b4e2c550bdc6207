import {
  alongStretches,
  centreHalf,
  diagonalShare,
  eccentricity,
  enclosureOf,
  freeRoofAcross,
  freeRoofAlong,
  leewardQuarter,
  leewardWall,
  lightSuction,
  outline,
  type Point,
  type QuarterReading,
  shellOf,
  sideWall,
  sumAcross,
  torsionShare,
  windwardRows,
  windwardWall,
  type Zone,
} from "@hoopstay/load";
import type { Computations, Given } from "../published/given.ts";

/** The row of the arched-roof table that a column names, at r; absent where it does not run. */
function archedRoof(given: Given, column: string): number {
  const r = given.number("r");
  if (column === "centre") return centreHalf.evaluate(r);
  if (column === "leeward") return leewardQuarter.evaluate();
  const name = column === "ground" ? column : `walls-${column}`;
  const row = windwardRows(r, given.number("springing")).find(({ id }) => id === name);
  return row?.coefficient.evaluate(r) ?? Number.NaN;
}

const stretches = ["to_half_h", "to_h", "to_2h", "beyond"];

function enclosure(given: Given, column: string): number {
  const [left, right, front, back] = given.numbers("walls") as [number, number, number, number];
  const sizes = given.numbers("gross") as [number, number, number, number];
  const gross = {
    left: sizes[0],
    right: sizes[1],
    front: sizes[2],
    back: sizes[3],
    roof: given.number("roofGross"),
  };
  const found = enclosureOf({ left, right, front, back, roof: given.number("roof") }, gross);
  const [first] = found.walls;
  if (!first) return Number.NaN;
  const columns: Record<string, number> = {
    GC_pi: Math.max(...found.insideCoefficients),
    A_oi: first.otherOpenings,
    A_gi: first.otherGross,
    ratio: first.otherOpenings / first.otherGross,
    limit: Math.min(4 * 0.3048 ** 2, 0.01 * first.gross),
  };
  return columns[column] ?? Number.NaN;
}

/** Pressures on the quarters of a round arch on its springing line, one metre long. */
function quarters(given: Given): { zones: Zone[]; span: number } {
  const [span, rise] = [given.number("span"), given.number("rise")];
  const plain = { shape: "round" as const, span, rise, length: 1, springing: 0 };
  const shell = shellOf({ ...plain, hoopDiameter: 0, hoopCount: 2 });
  const at = outline(shell, given.text("reading") as QuarterReading);
  const points: Point[] = [
    at.windwardSpring,
    at.windwardQuarter,
    at.crown,
    at.leewardQuarter,
    at.leewardSpring,
  ];
  const listed = given.has("Cp") ? given.numbers("Cp") : [0, 0, 0, 0];
  const [first = 0, centre = 0, last = 0] = listed;
  const pressures = listed.length === 3 ? [first, centre, centre, last] : listed;
  const zones = pressures.map((coefficient, index): Zone => {
    const [a, b] = points.slice(index, index + 2) as [Point, Point];
    const one = given.has("zone") ? Number(given.number("zone") === index + 1) : coefficient;
    const part = "arch" as const;
    return { name: "", part, a, b, from: 0, to: 1, shapeCoefficient: one, coefficient: one };
  });
  return { zones, span };
}

function archResultants(given: Given, column: string): number {
  const { zones, span } = quarters(given);
  const { drag, uplift, dragMoment, upliftMoment } = sumAcross(zones);
  const tip = dragMoment + upliftMoment;
  const columns: Record<string, number> = {
    uplift,
    drag,
    moment: tip + (span / 2) * uplift,
    F_x: drag,
    F_z: uplift,
    M_windward: -tip + (span / 2) * uplift,
    M_leeward: -tip - (span / 2) * uplift,
  };
  return columns[column] ?? Number.NaN;
}

/** How each printed quantity of a coefficient table or a resultant is computed, SI. */
export const shapeComputations: Computations = {
  "arched roof": archedRoof,
  "wall coefficient": (given, column) => {
    if (column === "leeward") return leewardWall.evaluate(given.number("ratio"));
    return column === "windward" ? windwardWall.value : sideWall.value;
  },
  "roof parallel to ridge": (given, column) => {
    if (column === "second") return lightSuction;
    return alongStretches(given.number("ratio"))[stretches.indexOf(column)]?.coefficient;
  },
  "free roof across": (given, column) => {
    const riseRatio = Math.tan(given.number("angle")) / 2;
    const { windward, leeward } = freeRoofAcross(riseRatio, given.number("set"));
    return column === "C_NW" ? windward : leeward;
  },
  "free roof along": (given, column) =>
    freeRoofAlong[given.number("set")]?.[["to_h", "to_2h", "beyond"].indexOf(column)],
  "load cases": (_, column) =>
    ({ diagonal: diagonalShare, torsion: torsionShare, eccentricity })[column]?.value,
  enclosure,
  "arch resultants": archResultants,
  "zone resultants": archResultants,
};
