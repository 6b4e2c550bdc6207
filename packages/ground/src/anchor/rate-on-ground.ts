import type { Chapter } from "@hoopstay/core";
import type { GroundAtWork } from "../soil/ground-at-work.ts";
import type { Anchor, DrivenPlate, Pull, ScrewAnchor, Stake } from "./anchor.ts";
import { type NotRated, notRated } from "./capacity.ts";
import { deadmanCapacity } from "./deadman.ts";
import { allowableCapacity, slantedPull } from "./design-values.ts";
import { helixUplift } from "./helices.ts";
import { lateralCapacity } from "./lateral.ts";
import { alongGround, inLine, nearSquare, softBelow } from "./near-angles.ts";
import { picketCapacity } from "./picket-sets.ts";
import { equalSquareSide } from "./plate-formulas.ts";
import { plateUplift } from "./plate-uplift.ts";

/** A pull along the tether, N, on one reading of the ground, before neighbours are looked at. */
export interface Hold {
  readonly rated: true;
  readonly ultimate: number;
  readonly allowable: number;
  readonly model: string;
  readonly findings: readonly string[];
}

const angled = (words: string): NotRated => notRated("pull test in this direction", words);

/** Rates one anchor for one pull on one reading of the ground; the steps go to `chapter`. */
export function rateOnGround(
  anchor: Anchor,
  pull: Pull,
  ground: GroundAtWork,
  factor: number,
  chapter: Chapter,
): Hold | NotRated {
  switch (anchor.kind) {
    case "screw":
      return rateScrew(anchor, pull, ground, factor, chapter);
    case "driven plate":
      return rateDrivenPlate(anchor, pull, ground, factor, chapter);
    case "stake":
      return rateStake(anchor, pull, ground, factor, chapter);
    case "picket set": {
      if (pull.aboveGround > alongGround.angle + 1e-9) {
        return angled("A picket set is rated for a line along the ground only.");
      }
      const model = `picket set ${anchor.set}, military table`;
      return overFactor(picketCapacity(anchor, ground, chapter), factor, model, chapter);
    }
    case "deadman": {
      const ultimate = deadmanCapacity(anchor, pull.aboveGround, ground, chapter);
      if (ultimate !== null) {
        return overFactor(ultimate, factor, "deadman, military table", chapter);
      }
      const reason = `The ${anchor.body} is too thin for its length by the manual: it would break.`;
      return notRated("another shape", reason);
    }
  }
}

function overFactor(
  ultimate: number,
  factor: number,
  model: string,
  chapter: Chapter,
  findings: readonly string[] = [],
): Hold {
  const allowable = chapter.work(allowableCapacity, [ultimate, factor]);
  return { rated: true, ultimate, allowable, model, findings };
}

function rateDrivenPlate(
  { area, depth }: DrivenPlate,
  { fromShaft }: Pull,
  ground: GroundAtWork,
  factor: number,
  chapter: Chapter,
): Hold | NotRated {
  if (fromShaft > inLine.angle + 1e-9) {
    return angled("A driven plate is rated along its cable only: a slanted cable cuts the ground.");
  }
  const breadth = chapter.work(equalSquareSide, [area]);
  const { uplift, model } = plateUplift(area, breadth, depth, ground, chapter);
  return overFactor(uplift, factor, model, chapter, [
    "The depth is that of the plate after it has been pulled flat.",
  ]);
}

function rateStake(
  { shaft, depth }: Stake,
  { fromShaft }: Pull,
  ground: GroundAtWork,
  factor: number,
  chapter: Chapter,
): Hold | NotRated {
  if (fromShaft < Math.PI / 2 - nearSquare.angle - 1e-9) {
    return angled(
      "A smooth stake holds sideways only: pulled along itself it counts nothing. Set it so that " +
        "the tether pulls square to it, or test it in that direction.",
    );
  }
  const lateral = lateralCapacity(shaft, depth, undefined, ground, factor, chapter);
  return { rated: true, ...lateral, findings: [] };
}

function rateScrew(
  anchor: ScrewAnchor,
  { fromShaft }: Pull,
  ground: GroundAtWork,
  factor: number,
  chapter: Chapter,
): Hold | NotRated {
  const { helices, shaft, stabiliser } = anchor;
  const slanted = fromShaft > inLine.angle + 1e-9;
  if (slanted && !stabiliser && isSoftOrWet(ground)) {
    return angled(
      "In soft or wet ground a slanted pull on a shaft without a stabiliser is not rated.",
    );
  }
  const { uplift, model, counted } = helixUplift(anchor, ground, chapter);
  const missed = helices.length - counted;
  const findings =
    missed > 0
      ? [`${missed} of ${helices.length} helices stand too near another one to count.`]
      : [];
  const along = overFactor(uplift, factor, model, chapter, findings);
  if (!slanted) return along;
  const depth = Math.max(...helices.map((helix) => helix.depth));
  const across = lateralCapacity(shaft, depth, stabiliser, ground, factor, chapter);
  const slant = (one: number, other: number): readonly [number, number, number] => [
    one,
    other,
    fromShaft,
  ];
  const ultimate = chapter.work(slantedPull, slant(along.ultimate, across.ultimate));
  const allowable = chapter.work(slantedPull, slant(along.allowable, across.allowable));
  return {
    rated: true,
    ultimate,
    allowable,
    model: `${model}, with ${across.model}`,
    findings,
  };
}

const isSoftOrWet = (ground: GroundAtWork): boolean =>
  ground.wet || (ground.likeness === "clay" && ground.shearStrength < softBelow);
