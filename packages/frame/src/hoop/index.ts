export { type HoopForces, type HoopShape, hoopForcesAt, hoopShapeAt } from "./along-hoop.ts";
export { hoopImbalance } from "./balance.ts";
export * from "./feet.ts";
export * from "./hoop.ts";
export * from "./hoop-extremes.ts";
export { HoopFrame } from "./hoop-frame.ts";
export {
  type ArcPiece,
  type HoopLine,
  type HoopPiece,
  hoopLine,
  type PlanePoint,
  type StraightPiece,
} from "./hoop-line.ts";
export { placeAtHeight, pointOnLine, tangentOnLine } from "./on-line.ts";
export { superpose } from "./response.ts";
export { HoopStations } from "./stations.ts";
