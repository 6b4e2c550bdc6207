import { Chapter, type TowSummary } from "@hoopstay/core";
import { reviewTow, type TowLoad, towNotComputed } from "@hoopstay/ground";
import type { Weight } from "@hoopstay/stability";
import type { Evaluation } from "../review/evaluate.ts";
import { withBallast } from "../take-off/take-off.ts";

/** A weight with what the bins hold added (sign 1) or taken out (sign -1). */
function filled(weight: Weight, { house }: Evaluation, sign: 1 | -1): { W: number; x: number } {
  let { W, x } = weight;
  for (const filling of house.fillings) {
    const sum = W + sign * filling.weight;
    x = (W * x + sign * filling.weight * filling.x) / sum;
    W = sum;
  }
  return { W, x };
}

/** The house as it is dragged: bins empty, and full where there are any. Fixed ballast goes along. */
function loadsOf(evaluation: Evaluation): TowLoad[] {
  const { house, takeOff } = evaluation;
  const { low, high, measured } = takeOff;
  const half = house.lines.span / 2;
  const [light, heavy] = [withBallast(low, house), withBallast(high, house)];
  const place = (x: number): number => x + half;
  const whole = { id: "as it stands", low: light.W, high: heavy.W, fromLeft: place(heavy.x) };
  const { fillings } = house;
  if (measured || fillings.every(({ weight }) => weight === 0)) return [whole];
  const [emptied, full] = [filled(heavy, evaluation, -1), filled(light, evaluation, 1)];
  return [
    { id: "bins empty", low: light.W, high: emptied.W, fromLeft: place(emptied.x) },
    { id: "bins full", low: full.W, high: heavy.W, fromLeft: place(heavy.x) },
  ];
}

/** Pull to move, and the working of it. */
export function towSummary(evaluation: Evaluation): { summary: TowSummary; chapter: Chapter } {
  const { house, site } = evaluation;
  const slope = site.dragSlope ?? site.slope?.angle ?? 0;
  const { loads, available, runsByItself, trail } = reviewTow({
    loads: loadsOf(evaluation),
    railSpacing: house.lines.span,
    slope,
    holdingFriction: site.friction,
    tractor: house.tractor,
  });
  const chapter = new Chapter("tow", "Pull to move");
  chapter.steps.push(...trail);
  const remarks = [towNotComputed];
  if (house.tractor === null) remarks.unshift("Enter what drags it (tractor) to be told go or no.");
  if (site.dragSlope === null) {
    remarks.unshift(
      "Slope of the way taken as that of the site; enter drag_slope if it is steeper.",
    );
  }
  if (runsByItself) {
    remarks.unshift("Downhill the house can run by itself: hold it back with a second vehicle.");
  }
  const summary: TowSummary = {
    vehicle: house.tractor?.what ?? null,
    slope,
    available,
    loads: loads.map(({ id, running, starting, skids, verdict }) => {
      return { words: id, running, starting, skids, verdict };
    }),
    runsByItself,
    remarks,
  };
  return { summary, chapter };
}
