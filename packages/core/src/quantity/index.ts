export { FOOT, KILOGRAM_FORCE, POUND_FORCE, POUND_PER_SQUARE_FOOT } from "./definition.ts";
export {
  type Dimension,
  dimensions,
  type Quantity,
  type System,
  type TypedQuantity,
} from "./dimension.ts";
export { power } from "./power.ts";
export { type QuantityRead, readQuantity } from "./read.ts";
export { type QuantityCode, type QuantityRefusal, quantityCodes } from "./refusal.ts";
export { convert, figures, show, unitOf } from "./show.ts";
export { significant } from "./significant.ts";
export { spellingsOf } from "./spelling.ts";
export { quotable } from "./typography.ts";
export type { Unit } from "./unit.ts";
