import { Chapter, Refusal, type Step } from "@hoopstay/core";
import { farToePull, nearToePull, slidingPull } from "./block-formulas.ts";

/** A block that stands by the house, tied to it. */
export interface TiedBlock {
  /** Weight as it counts (under water where the ground can flood), N. */
  readonly weight: number;
  /** Width along the pull, m. */
  readonly width: number;
  /** Height of the tie above the ground, and how far it lies behind the near face, m. */
  readonly tieHeight: number;
  readonly tieSetback: number;
  /** Tether above the ground, rad, 0 to 90 degrees. */
  readonly angle: number;
  /** Low friction coefficient under the block. */
  readonly friction: number;
}

export interface BlockPull {
  /** Pull along the tether that the block holds, N. */
  readonly pull: number;
  readonly governs: "sliding" | "near toe" | "far toe";
  readonly trail: readonly Step[];
}

/** Loose ballast counts nothing, and a tie that slips at the top of a barrel is no tie. */
export const ballastMustBeTied =
  "Ballast must be made fast: bolted or chained to the skid, or on a tether of its own. A block or barrel that only stands there counts nothing, and a rope over the top of a barrel slides off.";

/**
 * Pull along the tether that a block holds: the least of sliding and turning about either toe. The
 * weight factor applies even when the block was weighed, as no code excepts it.
 *
 * Left out: the block sinking, its eye and its tether (links of their own); on a slope the downhill
 * part of its weight in turning, since its height is not known.
 *
 * @param deadFactor gamma_D, 0.6 in ASD, 0.9 in LRFD
 * @param downhill slope along the pull, rad, and gamma_S on the downslope part of the weight
 * @returns a pull of nought or below where it slides by itself
 * @throws Refusal `not-positive` for weight, width or friction; `out-of-range` for an angle outside 0
 *   to 90 degrees, or a tie off the block
 */
export function pullOfBlock(
  block: TiedBlock,
  deadFactor: number,
  downhill = { slope: 0, factor: 1 },
): BlockPull {
  refuseBlock(block);
  const { weight, width, tieHeight, tieSetback, angle, friction } = block;
  const chapter = new Chapter("block-on-tether", "Block on a tether");
  const slide = chapter.work(slidingPull, [
    deadFactor,
    weight,
    angle,
    friction,
    downhill.slope,
    downhill.factor,
  ]);
  const shape = [deadFactor, weight, width, angle, tieHeight, tieSetback, downhill.slope] as const;
  const found: [BlockPull["governs"], number][] = [["sliding", slide]];
  const [up, level] = [Math.sin(angle), Math.cos(angle)];
  // A shorter lever turns nothing before the block slides.
  const shortest = 1e-9 * width;
  if (tieHeight * level + tieSetback * up > shortest) {
    found.push(["near toe", chapter.work(nearToePull, shape)]);
  }
  if ((width - tieSetback) * up - tieHeight * level > shortest) {
    found.push(["far toe", chapter.work(farToePull, shape)]);
  }
  const [governs, pull] = found.reduce((least, one) => (one[1] < least[1] ? one : least));
  return { pull, governs, trail: chapter.steps };
}

function refuseBlock(block: TiedBlock): void {
  for (const size of ["weight", "width", "friction"] as const) {
    if (block[size] > 0 && Number.isFinite(block[size])) continue;
    const expected = `a ${size} of the block above zero`;
    const mend =
      size === "friction" ? "On ice or mud a block holds nothing; leave it out." : "Measure it.";
    throw new Refusal([{ code: "not-positive", given: String(block[size]), expected, mend }]);
  }
  const { angle, tieHeight, tieSetback, width } = block;
  if (!(angle >= 0 && angle <= Math.PI / 2)) {
    refuseRange("a tether between 0 and 90 degrees above the ground", "Measure it at the block.");
  }
  if (!(tieHeight >= 0 && Number.isFinite(tieHeight) && tieSetback >= 0 && tieSetback <= width)) {
    refuseRange(
      "a tie on the block: height from 0 up, behind the near face by 0 to the width",
      "Measure from the ground and from the face toward the house.",
    );
  }
}

function refuseRange(expected: string, mend: string): never {
  throw new Refusal([{ code: "out-of-range", expected, mend }]);
}
