export * from "./angle/angle-formulas.ts";
export { anglePlasticModulus } from "./angle/angle-plastic-modulus.ts";
export { catalogue } from "./catalogue/catalogue.ts";
export { findSize } from "./catalogue/find-size.ts";
export { nearestSizes } from "./catalogue/nearest-sizes.ts";
export { pipeOfNominal } from "./catalogue/pipe-of-nominal.ts";
export { type CatalogueSize, type Shape, tubeOfSize } from "./catalogue/size.ts";
export {
  type GaugeTable,
  gaugeTableNames,
  gaugeTables,
  printedThickness,
  wallOfGauge,
} from "./gauge/wall-of-gauge.ts";
export * from "./hollow-rectangle/hollow-formulas.ts";
export { hollowRectangleArea } from "./hollow-rectangle/hollow-rectangle-area.ts";
export { roundedOutline } from "./hollow-rectangle/rounded-outline.ts";
export * from "./hollow-rectangle/rounded-rectangle.ts";
export * from "./hollow-rectangle/torsion.ts";
export * from "./round/round-formulas.ts";
export * from "./solid/flat-formulas.ts";
export * from "./tube/convention.ts";
export { type CornerRadii, cornerRadii } from "./tube/corner-radii.ts";
export { refuseImpossible } from "./tube/impossible.ts";
export { outsidePerimeter } from "./tube/outside-perimeter.ts";
export { designWallOf, isListed, properties } from "./tube/properties.ts";
export type { SectionProperties } from "./tube/section-properties.ts";
export * from "./tube/slenderness.ts";
export type * from "./tube/tube.ts";
export { densityOf, massPerLength } from "./weight/mass-per-length.ts";
export * from "./weight/steel.ts";
export { steelArea } from "./weight/steel-area.ts";
export { type Tolerance, wallTolerance } from "./weight/tolerance.ts";
export {
  bothOutlines,
  type Estimate,
  toleranceOf,
  weightPerLength,
  zincMassPerLength,
} from "./weight/weight-per-length.ts";
export { zincOnOneFace, zincThickness } from "./weight/zinc.ts";
