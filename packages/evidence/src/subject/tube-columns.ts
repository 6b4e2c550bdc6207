import {
  angleCentroid,
  diameterOverWall,
  flatOverWall,
  massPerLength,
  properties,
  type Tube,
} from "@hoopstay/section";
import type { Given } from "../published/given.ts";

/** The section of a case, its dimensions in metres. */
export const tubeOf = (given: Given): Tube => given.all() as unknown as Tube;

/** What a printed column stands for, SI. */
const columns: Readonly<Record<string, (tube: Tube) => number>> = {
  W: massPerLength,
  m: massPerLength,
  A: (tube) => properties(tube).area,
  I: (tube) => properties(tube).secondMomentX,
  S: (tube) => properties(tube).elasticModulusX,
  Z: (tube) => properties(tube).plasticModulusX,
  r: (tube) => properties(tube).radiusX,
  i: (tube) => properties(tube).radiusX,
  Wel: (tube) => properties(tube).elasticModulusX,
  Wpl: (tube) => properties(tube).plasticModulusX,
  Ix: (tube) => properties(tube).secondMomentX,
  Sx: (tube) => properties(tube).elasticModulusX,
  Zx: (tube) => properties(tube).plasticModulusX,
  rx: (tube) => properties(tube).radiusX,
  Iy: (tube) => properties(tube).secondMomentY,
  Sy: (tube) => properties(tube).elasticModulusY,
  Zy: (tube) => properties(tube).plasticModulusY,
  ry: (tube) => properties(tube).radiusY,
  rz: (tube) => properties(tube).leastRadius,
  J: (tube) => properties(tube).torsionConstant,
  It: (tube) => properties(tube).torsionConstant,
  C: (tube) => properties(tube).torsionModulus,
  Ct: (tube) => properties(tube).torsionModulus,
  t: (tube) => properties(tube).designWall,
  t_des: (tube) => properties(tube).designWall,
  OD: (tube) => of(tube, "round").outside,
  "D/t": (tube) => diameterOverWall(of(tube, "round")),
  "d/t": (tube) => diameterOverWall(of(tube, "round")),
  "b/t": (tube) => flatOverWall(of(tube, "rectangular")).width,
  "h/t": (tube) => flatOverWall(of(tube, "rectangular")).depth,
  "c/t": (tube) => flatOverWall(of(tube, "rectangular")).depth,
  x: (tube) => {
    const { legs, thickness } = of(tube, "angle");
    return angleCentroid.evaluate(legs[0], legs[1], thickness);
  },
};

/** The computed value of a printed column, SI. */
export function columnOf(column: string, tube: Tube): number {
  const compute = columns[column];
  if (!compute) throw new Error(`column ${column} of a published file is not known`);
  return compute(tube);
}

/** Narrows a section to the kind a column needs. */
export function of<Kind extends Tube["kind"]>(
  tube: Tube,
  kind: Kind,
): Extract<Tube, { kind: Kind }> {
  if (tube.kind !== kind) throw new Error(`a ${tube.kind} where a ${kind} is needed`);
  return tube as Extract<Tube, { kind: Kind }>;
}
