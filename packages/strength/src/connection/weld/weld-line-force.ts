import { unprinted, type Worksheet } from "../common/worksheet.ts";
import {
  circleNormal,
  circleShear,
  inscribedSide,
  rectangleNormal,
  rectangleShear,
  weldVectorSum,
} from "./weld-line-formulas.ts";

/**
 * Greatest force per length, N/m, on a round branch welded all round: exact without torque or without
 * shear; with both, their greatest values are added though they may lie at two points [cautious].
 *
 * @param diameter outside of the branch, m
 * @param axial N
 * @param shear resultant of both ways, N
 * @param moment resultant about both axes, N m
 * @param torque about the branch's axis, N m
 */
export function circleWeldForce(
  diameter: number,
  axial: number,
  shear: number,
  moment: number,
  torque: number,
  sheet: Worksheet = unprinted,
): number {
  const normal = sheet.work(circleNormal, [diameter, axial, moment]);
  return sheet.work(weldVectorSum, [normal, sheet.work(circleShear, [diameter, shear, torque]), 0]);
}

/** Forces and moments on a rectangular branch: N, N m. */
export interface BranchForces {
  readonly axial: number;
  /** Along the width and along the depth. */
  readonly shearX: number;
  readonly shearY: number;
  /** Working the depth, and working the width. */
  readonly momentX: number;
  readonly momentY: number;
  readonly torque: number;
}

/**
 * Greatest force per length, N/m, on a rectangular branch welded all round: the worst corner, every
 * part added as if they met there [cautious]. The line is the rectangle that fits into the rounded
 * corners.
 *
 * @param outsideWidth m
 * @param outsideDepth m
 * @param cornerRadius outside radius, m; zero for sharp corners
 */
export function rectangleWeldForce(
  outsideWidth: number,
  outsideDepth: number,
  cornerRadius: number,
  { axial, shearX, shearY, momentX, momentY, torque }: BranchForces,
  sheet: Worksheet = unprinted,
): number {
  const width = sheet.work(inscribedSide, [outsideWidth, cornerRadius]);
  const depth = sheet.work(inscribedSide, [outsideDepth, cornerRadius], { symbol: "d" });
  const normal = sheet.work(rectangleNormal, [width, depth, axial, momentX, momentY]);
  const alongWidth = sheet.work(rectangleShear, [width, depth, shearX, torque, depth]);
  const alongDepth = sheet.work(rectangleShear, [width, depth, shearY, torque, width]);
  return sheet.work(weldVectorSum, [normal, alongWidth, alongDepth]);
}
