import type { HoldingTerms } from "./holding.ts";
import { ratioOf } from "./ratio.ts";
import {
  type Sliding,
  type SlidingTerms,
  type SlidingWind,
  slideAt,
  slopeAgainst,
} from "./slide.ts";
import { SlideCourse } from "./slide-course.ts";
import { SlidePath } from "./slide-path.ts";
import type { Slack } from "./slide-piece.ts";
import { straightLimit, straightSlide } from "./straight-slide.ts";
import { type Look, worstTurn } from "./worst-turn.ts";

/** Whether sliding takes a search over the directions of the slope: tethers aslant, downhill unknown. */
export const searchesTurns = ({ sideways, holding, downslope }: HoldingTerms): boolean =>
  sideways && downslope > 0 && holding.slope?.downhill === null;

/** All that the tethers could pull sideways, N: a slide turned by an angle changes their part by no more. */
function sidePull({ holding, combination }: HoldingTerms): number {
  let sum = 0;
  for (const { pull, toward } of holding.anchors) {
    sum += combination.anchor * pull * Math.sqrt(toward[0] ** 2 + toward[1] ** 2);
  }
  return sum;
}

/**
 * What a slope turned by up to `half` (rad), from along the wind to across it, may add to the push and
 * take from the tethers. The slope's tip moves by no more than `half` times its size d; the push H
 * turns by no more than that over the least push sqrt(h^2 + d^2) of a wind h, which is at least
 * H / sqrt(2).
 */
function turnSlack(downslope: number, pull: number, half: number): Slack {
  const push = half * downslope;
  return { push, tethers: Math.SQRT2 * push * pull };
}

/**
 * How far from the wind the downhill direction is worst at a pressure, rad; 0 where it is known.
 *
 * @param above only a ratio above this is looked for; otherwise some turn of a ratio not above it is told
 */
export function turnedWorst(
  sliding: SlidingTerms,
  wind: SlidingWind,
  pressure: number,
  above = Number.NEGATIVE_INFINITY,
): number {
  const { terms } = sliding;
  if (!searchesTurns(terms)) return 0;
  const h = terms.combination.wind * pressure * Math.sqrt(wind.fx * wind.fx + wind.fy * wind.fy);
  const least = Math.sqrt(h * h + terms.downslope * terms.downslope);
  const pull = sidePull(terms);
  return worstTurn((angle): Look => {
    const { demand, resistance } = slideAt(sliding, wind, pressure, angle);
    return {
      bad: ratioOf(demand, resistance),
      mayExceed(half, worst) {
        if (worst === Number.POSITIVE_INFINITY) return false;
        const more = half * terms.downslope;
        return demand + more > Math.max(0, worst) * (resistance - (more / least) * pull);
      },
    };
  }, above);
}

/** Sliding at a pressure with the slope turned the worst way, where its direction is unknown. */
export const worstSlideAt = (
  sliding: SlidingTerms,
  wind: SlidingWind,
  pressure: number,
  above?: number,
): Sliding => slideAt(sliding, wind, pressure, turnedWorst(sliding, wind, pressure, above));

/** One turn of the slope by the pressure at which the case slides: the lower, the worse. */
class LimitLook implements Look {
  private found: number | undefined;

  constructor(
    private readonly path: SlidePath,
    private readonly downslope: number,
    private readonly pull: number,
  ) {}

  get bad(): number {
    this.found ??= 1 / this.path.limit();
    return this.found;
  }

  mayExceed(half: number, worst: number): boolean {
    return this.path.mayFail(1 / worst, turnSlack(this.downslope, this.pull, half));
  }
}

/** The lowest pressure at which a house on slanted tethers slides; see `slideLimit`. */
export function searchSlideLimit(
  sliding: SlidingTerms,
  wind: SlidingWind,
  design: number,
  below = Number.POSITIVE_INFINITY,
): number {
  const { terms } = sliding;
  if (terms.downslope === 0) return straightLimit(straightSlide(sliding, wind), design);
  const course = new SlideCourse(sliding, wind, design);
  const pathAt = (turned: number) =>
    new SlidePath(course, slopeAgainst(terms, wind.fx, wind.fy, turned));
  if (!searchesTurns(terms)) return pathAt(0).limit(below);
  const pull = sidePull(terms);
  const lookAt = (turned: number) => new LimitLook(pathAt(turned), terms.downslope, pull);
  const turned = worstTurn(lookAt, 1 / below);
  return pathAt(turned).limit(below);
}
