import type { Chapter } from "@hoopstay/core";
import type { GroundAtWork } from "../soil/ground-at-work.ts";
import { requirePositive, requireSize } from "../soil/require.ts";
import { lowerFactor } from "./common-formulas.ts";
import { meyerhofAdamsFactor } from "./meyerhof-adams.ts";
import { clayFactor, clayUplift, sandUplift } from "./plate-formulas.ts";
import { vesicFactor } from "./vesic.ts";

/**
 * Ultimate uplift of one plate, N, and the model that gave it. Sand: the lower of Meyerhof and
 * Adams 1968 and Vesic's factors. Clay: Meyerhof 1973 on the undrained strength and the total
 * weight above.
 *
 * Left out: weight of the anchor, suction under the plate, friction of the shaft.
 *
 * @param area plate area, m2
 * @param breadth side or diameter, m
 * @param depth vertical depth of the plate's centre, m
 * @throws Refusal `not-positive`; `ground-outside` outside the ranges of the models
 */
export function plateUplift(
  area: number,
  breadth: number,
  depth: number,
  ground: GroundAtWork,
  chapter: Chapter,
): { readonly uplift: number; readonly model: string } {
  requirePositive(area, "a plate area");
  requireSize(breadth, "a plate breadth");
  requireSize(depth, "a plate depth");
  if (ground.likeness === "clay") {
    const factor = chapter.work(clayFactor, [depth, breadth]);
    const { shearStrength, unitWeight } = ground;
    const uplift = chapter.work(clayUplift, [area, shearStrength, factor, unitWeight, depth]);
    return { uplift, model: "plate in clay, Meyerhof 1973" };
  }
  const { frictionAngle, unitWeight } = ground;
  const meyerhof = meyerhofAdamsFactor(breadth, depth, frictionAngle, chapter);
  const vesic = vesicFactor(breadth, depth, frictionAngle, chapter);
  const factor = chapter.work(lowerFactor, [meyerhof, vesic]);
  const uplift = chapter.work(sandUplift, [factor, unitWeight, area, depth]);
  const model =
    vesic < meyerhof ? "plate in sand, Vesic" : "plate in sand, Meyerhof and Adams 1968";
  return { uplift, model };
}
