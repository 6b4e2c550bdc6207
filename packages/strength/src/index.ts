export * from "./connection/index.ts";
export { elasticConstants } from "./material/elastic-constants.ts";
export type { MillValues } from "./material/mill-values.ts";
export { formOf, gradeFits, type Steel, type SteelClaim, steelOf } from "./material/steel.ts";
export {
  type A500Edition,
  type SteelForm,
  type SteelGrade,
  type SteelRow,
  type SteelStandard,
  steelGrades,
  steelRows,
  steelStandards,
} from "./material/steel-rows.ts";
export * from "./member/arch-buckling.ts";
export { bendingStrength } from "./member/bending.ts";
export * from "./member/box-bending-formulas.ts";
export * from "./member/buckling-formulas.ts";
export { compressionStrength, greatestSlenderness } from "./member/compression.ts";
export * from "./member/disc-strip-formulas.ts";
export { type FlangeHoles, flangeHolesStrength, flangeRupture } from "./member/flange-holes.ts";
export * from "./member/holed-round.ts";
export * from "./member/holed-round-formulas.ts";
export * from "./member/interaction.ts";
export * from "./member/interaction-formulas.ts";
export * from "./member/lateral-torsional-formulas.ts";
export {
  type AngleSection,
  type Axis,
  type BarSection,
  type FlatSection,
  type MemberLengths,
  type MemberSection,
  memberSection,
  type RectangularSection,
  type RoundSection,
} from "./member/member-section.ts";
export * from "./member/member-strengths.ts";
export { type FactorPair, memberFactors } from "./member/resistance-factors.ts";
export * from "./member/round-bending-formulas.ts";
export * from "./member/second-order.ts";
export { shearStrength } from "./member/shear.ts";
export * from "./member/shear-formulas.ts";
export * from "./member/slender-wall-formulas.ts";
export { slendernessLimits } from "./member/slenderness-limits.ts";
export * from "./member/solid-bending-formulas.ts";
export type { MemberStrength, Strength } from "./member/strength.ts";
export { type NetSection, tensionStrength } from "./member/tension.ts";
export * from "./member/tension-formulas.ts";
export { torsionStrength } from "./member/torsion.ts";
export * from "./member/torsion-formulas.ts";
export * from "./wood/lumber.ts";
export { type NominalWidth, nominalWidth } from "./wood/lumber-factors.ts";
export * from "./wood/lumber-formulas.ts";
export {
  type LumberGrade,
  type LumberRow,
  lumberGrades,
  lumberRows,
  type WoodKind,
  woodKinds,
} from "./wood/lumber-rows.ts";
export {
  type Panel,
  panelBendingStrength,
  panelMoment,
  panelRows,
  type SpanRating,
} from "./wood/panel.ts";
