import type { NotCovered } from "../connection/common/strength.ts";
import { unprinted, type Worksheet } from "../connection/common/worksheet.ts";
import type { Steel } from "../material/steel.ts";
import { boxBendingStrength } from "./box-bending.ts";
import type { Axis, MemberSection } from "./member-section.ts";
import { roundBendingStrength } from "./round-bending.ts";
import { solidBendingStrength } from "./solid-bending.ts";
import { type MemberStrength, notCovered } from "./strength.ts";

const angleBending: NotCovered = notCovered(
  "angle",
  "an angle in bending is not computed here",
  "Use a tube or a bar, or have an engineer check it by F10.",
);

/**
 * Strength of a section in bending about one axis, by its kind: F8 round tube, F7 rectangular tube,
 * F11 bars. Angles are not covered.
 *
 * @param section of a member, SI
 * @param axis about which it bends; x works the depth
 * @param lateral L_b, m: between points held sideways
 * @returns moment, N m
 * @throws Refusal `not-positive`, `out-of-range` for the length
 * @example // square tube: the same about both axes
 */
export function bendingStrength(
  section: MemberSection,
  axis: Axis,
  steel: Steel,
  lateral: number,
  sheet: Worksheet = unprinted,
): MemberStrength {
  switch (section.kind) {
    case "round":
      return roundBendingStrength(section, steel, sheet);
    case "rectangular":
      return boxBendingStrength(section, axis, steel, lateral, sheet);
    case "flat":
    case "bar":
      return solidBendingStrength(section, axis, steel, lateral, sheet);
    case "angle":
      return angleBending;
  }
}
