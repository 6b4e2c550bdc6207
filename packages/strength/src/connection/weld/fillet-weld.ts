import { requireLength, requireStrength } from "../common/require.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import { type ConnectionStrength, type LimitState, note, strengthOf } from "../common/strength.ts";
import { requireWall, type Wall } from "../common/wall.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import { e70, filletStrength, wallShearRupture, wallShearYield } from "./fillet-formulas.ts";
import { weldFindings } from "./weld-rules.ts";

/** A fillet weld of one leg all along. m, Pa. */
export interface FilletWeldLine {
  readonly leg: number;
  /** F_EXX; null where unknown: E70. */
  readonly electrode: number | null;
  /** Whole length, m. */
  readonly length: number;
}

/** A part that the weld joins: what it is called ("the stub") and its wall. */
export interface JoinedPart extends Wall {
  readonly id: string;
  readonly name: string;
}

/**
 * Strength of a fillet weld per length, N/m: weld metal, and the walls of the parts it joins in shear
 * beside it, of which thin walls mostly decide.
 *
 * Left out: the rail's face bending under the stub (`faceStrength`), quality of the weld.
 *
 * @param parts the parts joined
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree`
 */
export function filletWeldStrength(
  weld: FilletWeldLine,
  parts: readonly [JoinedPart, ...JoinedPart[]],
  sheet: Worksheet = unprinted,
): ConnectionStrength {
  requireLength(weld.leg, "a weld leg");
  requireLength(weld.length, "a weld length");
  const electrode = weld.electrode ?? sheet.work(e70, []);
  requireStrength(electrode, "a strength of weld metal");
  for (const part of parts) requireWall(part, part.name);
  const metal = limitState(
    sheet,
    ["weld-metal", "the weld itself"],
    "force-per-length",
    sheet.work(filletStrength, [electrode, weld.leg]),
    connectionFactors.weld,
  );
  const assumed =
    weld.electrode === null
      ? [note("electrode", "weld metal unknown: E70", electrode, "pressure")]
      : [];
  return strengthOf([metal, ...parts.flatMap((part) => wallAtWeld(part, sheet))], {
    assumed,
    findings: weldFindings(weld, parts),
    notChecked: [note("weld-quality", "quality of the weld: penetration, undercut, burn-through")],
  });
}

function wallAtWeld(part: JoinedPart, sheet: Worksheet): readonly LimitState[] {
  const { id, name, wall, yieldStrength, tensileStrength } = part;
  return [
    limitState(
      sheet,
      [`weld-yield-${id}`, `yielding of the wall of ${name} beside the weld`],
      "force-per-length",
      sheet.work(wallShearYield, [yieldStrength, wall]),
      connectionFactors.shearYield,
    ),
    limitState(
      sheet,
      [`weld-rupture-${id}`, `tearing of the wall of ${name} beside the weld`],
      "force-per-length",
      sheet.work(wallShearRupture, [tensileStrength, wall]),
      connectionFactors.rupture,
    ),
  ];
}
