import { boltStrength } from "../bolt/bolt-strength.ts";
import { refuse } from "../common/require.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import { type ConnectionStrength, type NotCovered, strengthOf } from "../common/strength.ts";
import type { Worksheet } from "../common/worksheet.ts";
import { tearOut } from "../sleeve/bearing-formulas.ts";
import { holeLayout } from "../sleeve/hole-layout.ts";
import { outsideHoleRules, requireHoleRow } from "../sleeve/hole-row.ts";
import { wallsAtBolt } from "../sleeve/walls-at-bolt.ts";
import { filletWeldStrength } from "../weld/fillet-weld.ts";
import { grippedBearing, plateNetArea } from "./splice-formulas.ts";
import type { SpliceBolts, SplicePlates, SpliceWeld } from "./splice-plates.ts";

/** Weld of a plate to the rail, N/m, and how long one line of it is, m. */
export interface PlateWeld {
  readonly strength: ConnectionStrength;
  readonly lineLength: number;
}

/** One bolt of a splice where one plate meets the rail, N; hole and spacing, m. */
export interface PlateBolt {
  readonly covered: true;
  readonly strength: ConnectionStrength;
  readonly perEnd: number;
  readonly hole: number;
  readonly spacing: number | null;
}

export function plateWeld(
  splice: SplicePlates,
  { leg, electrode, lineLength }: SpliceWeld,
  sheet: Worksheet,
): PlateWeld {
  const parts = [
    { ...splice.steel, id: "plate", name: "the splice plate", wall: splice.thickness },
    { ...splice.rail, id: "rail", name: "the rail" },
  ] as const;
  const strength = filletWeldStrength({ leg, electrode, length: lineLength }, parts, sheet);
  return { strength, lineLength };
}

/**
 * What one bolt carries from one plate into the rail wall under it: one plane, one wall.
 *
 * @throws Refusal `out-of-range` where the hole leaves nothing of the plate
 */
export function plateBolt(
  splice: SplicePlates,
  bolts: SpliceBolts,
  sheet: Worksheet,
): PlateBolt | NotCovered {
  const { rail, steel, thickness, faces } = splice;
  const { diameter } = bolts.bolt;
  const row = { ...bolts, diameter, count: bolts.perEnd };
  requireHoleRow(row);
  const outside = outsideHoleRules(row);
  if (outside) return outside;
  const through = faces === "sides" ? rail.width : rail.depth;
  const grip = through + Math.min(splice.count, 2) * thickness;
  const bolt = boltStrength({ ...bolts.bolt, grip, planes: 1 }, sheet);
  if (!bolt.covered) return bolt;
  const ends = [
    ["the plate", bolts.endDistance],
    ["the rail", bolts.endDistance],
  ] as const;
  const layout = holeLayout(row, ends, sheet);
  if (!(plateNetArea.evaluate(splice.width, thickness, layout.hole) > 0)) {
    const expected = "a hole that leaves a part of the plate";
    refuse("out-of-range", expected, layout.hole, "Check the bolt.");
  }
  const [clear] = layout.clear;
  const { bearing } = connectionFactors;
  const Fu = steel.tensileStrength;
  const plate = (named: readonly [string, string], nominal: number) =>
    limitState(sheet, named, "force", nominal, bearing);
  const walls = { id: "rail", name: "the rail", wall: rail, count: 1, diameter } as const;
  const states = [
    bolt.shear,
    plate(
      ["bearing-plate", "bearing of the bolt on the splice plate"],
      sheet.work(grippedBearing, [diameter, thickness, Fu]),
    ),
    plate(
      ["tear-out-plate", "tear-out of the bolt through the end of the splice plate"],
      sheet.work(tearOut, [1, clear, thickness, Fu]),
    ),
    ...wallsAtBolt({ ...walls, clear, washers: false }, sheet),
  ];
  return {
    covered: true,
    strength: strengthOf(states, {
      assumed: [...bolt.assumed, ...layout.assumed],
      findings: layout.findings,
    }),
    perEnd: bolts.perEnd,
    hole: layout.hole,
    spacing: layout.spacing,
  };
}
