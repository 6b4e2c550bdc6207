import { connectionFactors } from "../common/resistance-factors.ts";
import { type FaceParts, type FaceSetting, facePart, type PartName } from "./face-part.ts";
import {
  railModulus,
  sideWallBuckling,
  sideWallCrippling,
  sideWallInPlane,
  sideWallOutOfPlane,
  sideWallYielding,
} from "./wall-failure-formulas.ts";

const named = (id: string, how: string, measure: "force" | "moment"): PartName => [
  `side-wall-${id}`,
  `${how} of the rail's sides`,
  measure,
];

/** The rail's sides under a stub almost as wide as the rail. */
export function sideWalls(setting: FaceSetting): FaceParts {
  const { stub, square, qf, sheet } = setting;
  const { yieldStrength: Fy, wall: t, width: B, depth: H } = stub.rail;
  const {
    sideWallYield,
    sideWallCrippling: crippled,
    sideWallBuckling: buckled,
  } = connectionFactors;
  const E = sheet.work(railModulus, []);
  const yielded = (id: string, measure: "force" | "moment", nominal: number) =>
    facePart(setting, named(id, "yielding", measure), "not", nominal, sideWallYield);
  const axial = yielded("axial", "force", sheet.work(sideWallYielding, [Fy, t, square]));
  const crippling = sheet.work(sideWallCrippling, [t, H, square, E, Fy, qf]);
  const buckling = sheet.work(sideWallBuckling, [t, H, E, Fy, qf]);
  return {
    uplift: [axial],
    push: [
      axial,
      facePart(setting, named("crippling", "crippling", "force"), "Q_f", crippling, crippled),
      facePart(setting, named("buckling", "buckling", "force"), "Q_f", buckling, buckled),
    ],
    inPlane: [yielded("in-plane", "moment", sheet.work(sideWallInPlane, [Fy, t, square]))],
    outOfPlane: [
      yielded("out-of-plane", "moment", sheet.work(sideWallOutOfPlane, [Fy, t, B, square])),
    ],
  };
}
