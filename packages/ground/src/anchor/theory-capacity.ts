import { Chapter } from "@hoopstay/core";
import { groundAtWork } from "../soil/ground-at-work.ts";
import { readingsOf } from "../soil/readings.ts";
import { requirePositive, requireWithin } from "../soil/require.ts";
import type { Clay, Sand, Soil } from "../soil/soil.ts";
import { soilSteps } from "../soil/soil-steps.ts";
import { type Anchor, deepestOf, type Pull } from "./anchor.ts";
import { type Capacity, notRated, type RatedCapacity } from "./capacity.ts";
import { enResistance, groupedPull, groupFactor, lrfdStrength } from "./design-values.ts";
import { frostFinding } from "./frost-line.ts";
import { type Hold, rateOnGround } from "./rate-on-ground.ts";
import { safetyFactors, theoryFactor } from "./safety-factor.ts";

/** Where an anchor stands, and what is known of its kind there. */
export interface Placing {
  /** Anchors of this type have been pulled on this field: factor 2 in place of 3. */
  readonly testedHere: boolean;
  /** Distance to the nearest other anchor, m; absent where it stands alone. */
  readonly spacing?: number;
  /** Depth of the frost line, m, where the ground is not protected; absent where none is known. */
  readonly frostDepth?: number;
}

/**
 * Capacity of one anchor along its tether by theory, by presumptive class, or by the military
 * tables, with the formulas in order; or what is needed where there is no number. Never the rating
 * on a label.
 *
 * Where the owner cannot tell sand from clay both are run and the lower is kept. The ground is wet
 * unless said to be dry. Nearer than 5 plate diameters to another anchor it keeps a share.
 *
 * Left out: strength of tether, eye and rail; cyclic loading; holes used before (never use one);
 * movement of the head.
 *
 * Source: Meyerhof and Adams 1968 [memory], Vesic 1971 [memory], Meyerhof 1973 [memory], Broms 1964
 * [second-hand], TM 5-5420-278-10 and NAVEDTRA 14251 [read]; see each formula.
 *
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree` for impossible inputs;
 * `ground-outside` where no published value reaches
 */
export function theoryCapacity(
  anchor: Anchor,
  soil: Soil,
  pull: Pull,
  placing: Placing = { testedHere: false },
): Capacity {
  const quarter = [0, Math.PI / 2] as const;
  const mend = "Take the acute angle.";
  requireWithin(pull.fromShaft, quarter, "an angle from the shaft in rad", mend, "out-of-range");
  requireWithin(pull.aboveGround, quarter, "an angle over ground in rad", mend, "out-of-range");
  if (placing.spacing !== undefined) requirePositive(placing.spacing, "a spacing");
  const readings = readingsOf(soil);
  if ("needs" in readings) return notRated(readings.needs, readings.reason);
  return readings.soils.map((one) => capacityOn(one, anchor, soil, pull, placing)).reduce(lower);
}

/** No number wherever one reading has none, else the lower. */
function lower(one: Capacity, other: Capacity): Capacity {
  if (!one.rated) return one;
  if (!other.rated) return other;
  return other.allowable < one.allowable ? other : one;
}

function capacityOn(
  values: Sand | Clay,
  anchor: Anchor,
  soil: Soil,
  pull: Pull,
  placing: Placing,
): Capacity {
  const chapter = new Chapter("anchor", "Anchor in the ground");
  const tabled = anchor.kind === "deadman" || anchor.kind === "picket set";
  if (!tabled) soilSteps(values, soil, chapter);
  const ground = groundAtWork(values, soil.state, deepestOf(anchor), chapter);
  const safety = tabled ? safetyFactors.table : theoryFactor(placing.testedHere);
  const factor = chapter.work(safety, []);
  const hold = rateOnGround(anchor, pull, ground, factor, chapter);
  if (!hold.rated) return hold;
  const alone = { ultimate: hold.ultimate, allowable: hold.allowable };
  const { ultimate, allowable } = nearNeighbour(alone, anchor, placing, chapter);
  return {
    rated: true,
    ultimate,
    allowable,
    lrfdStrength: lrfdStrength.evaluate(allowable),
    enResistance: enResistance.evaluate(ultimate),
    basis: tabled ? "table" : soil.basis,
    factor,
    factorCitation: safety.citation,
    governing: `${hold.model}, ${ground.likeness}, ${ground.wet ? "wet" : "dry"}`,
    trail: chapter.steps,
    findings: findingsOf(hold, anchor, soil, placing),
  };
}

function nearNeighbour(
  alone: { readonly ultimate: number; readonly allowable: number },
  anchor: Anchor,
  { spacing }: Placing,
  chapter: Chapter,
): Pick<RatedCapacity, "ultimate" | "allowable"> {
  const diameter = plateBreadth(anchor);
  if (spacing === undefined || diameter === null) return alone;
  const share = chapter.work(groupFactor, [spacing, diameter]);
  const allowable = chapter.work(groupedPull, [share, alone.allowable]);
  return { ultimate: share * alone.ultimate, allowable };
}

/** Widest plate, m; null where the anchor has none. */
function plateBreadth(anchor: Anchor): number | null {
  if (anchor.kind === "screw") {
    return Math.max(...anchor.helices.map((helix) => helix.diameter));
  }
  return anchor.kind === "driven plate" ? Math.sqrt(anchor.area) : null;
}

function findingsOf(hold: Hold, anchor: Anchor, soil: Soil, { frostDepth }: Placing): string[] {
  const found = [...hold.findings];
  if (soil.state.wetness === "frozen") {
    found.push("Frozen ground gets no credit for frost: it is rated as wet.");
  }
  if (frostDepth === undefined) return found;
  const frost = frostFinding(shallowestPlate(anchor), frostDepth);
  return frost === null ? found : [...found, frost];
}

function shallowestPlate(anchor: Anchor): number {
  if (anchor.kind !== "screw") return deepestOf(anchor);
  return Math.min(...anchor.helices.map((helix) => helix.depth));
}
