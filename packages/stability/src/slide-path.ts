import type { LineTerms } from "./holding.ts";
import { needOf } from "./slide.ts";
import { asked, type Line, meeting, type SlideCourse } from "./slide-course.ts";
import { Push, type Slack, SlidePiece } from "./slide-piece.ts";

/** A pressure below this part of the design pressure is told as nought. */
const nought = 1e-18;

const none: Line = [0, 0];

/** One case on one slope force, its pressure rising from nought. */
export class SlidePath {
  private readonly push: Push;
  /** Pull of the course's tethers along the push, times the push, N2. */
  private readonly along: readonly Line[];
  /** Pressures at which a tether or the contact changes its part. */
  private readonly stations: readonly number[];
  private readonly pieces: SlidePiece[] = [];

  constructor(
    private readonly course: SlideCourse,
    [sx, sy]: readonly [number, number],
  ) {
    const { sliding, wind, tethers, end } = course;
    const { wind: factor } = sliding.terms.combination;
    const [wx, wy] = [factor * wind.fx, factor * wind.fy];
    this.push = new Push(sx, sy, wx, wy);
    this.along = tethers.map(({ x, y }): Line => [x * sx + y * sy, x * wx + y * wy]);
    const met = this.along.map((line) => meeting(line, none)).filter((q) => q > 0 && q < end);
    this.stations =
      met.length > 0 ? [...course.stations, ...met].sort((a, b) => a - b) : course.stations;
  }

  /**
   * The lowest pressure, Pa, at which the case slides; infinite where it does not below a thousand
   * times the design pressure.
   *
   * @param below only a limit below this is worked out; infinite where there is none
   */
  limit(below = Number.POSITIVE_INFINITY): number {
    let from = 0;
    for (let place = 0; place < this.stations.length && from < below; place += 1) {
      const to = Math.min(this.stations[place] as number, below);
      const found = this.piece(place).first(from, to, nought * this.course.design);
      if (found < below) return found;
      from = to;
    }
    return Number.POSITIVE_INFINITY;
  }

  /** Whether the case slides below a pressure, within some slack; yes, too, where that stays open. */
  mayFail(below: number, slack: Slack): boolean {
    let to = below;
    for (let place = this.stations.length - 1; place >= 0; place -= 1) {
      const from = place > 0 ? (this.stations[place - 1] as number) : 0;
      if (from >= to) continue;
      const end = Math.min(this.stations[place] as number, to);
      if (this.piece(place).slackened(slack).mayRise(from, end)) return true;
      to = from;
    }
    return false;
  }

  /** The excess up to a station from the one before it. */
  private piece(place: number): SlidePiece {
    const [from, to] = [this.stations[place - 1] ?? 0, this.stations[place] as number];
    this.pieces[place] ??= this.pieceAbout((from + to) / 2);
    return this.pieces[place];
  }

  private pieceAbout(q: number): SlidePiece {
    const { sliding, wind, tethers } = this.course;
    const { terms, right, left } = sliding;
    const { sx, sy, wx, wy } = this.push;
    const { wind: factor } = terms.combination;
    const needOfRail = (rail: LineTerms, turn: number): Line => {
      const need = needOf(rail, factor, q * turn);
      return need > 0 && need < 1 ? asked(rail, factor * turn) : [need, 0];
    };
    const needLeft = needOfRail(right, wind.turnRight);
    const needRight = needOfRail(left, wind.turnLeft);
    const more = needLeft[0] + needLeft[1] * q >= needRight[0] + needRight[1] * q;
    const needMiddle = more ? needLeft : needRight;
    let [a0, a1, a2] = [sx * sx + sy * sy, 2 * (sx * wx + sy * wy), wx * wx + wy * wy];
    tethers.forEach(({ side }, place) => {
      const [c0, c1] = this.along[place] as Line;
      if (c0 + c1 * q <= 0) {
        a0 += c0;
        a1 += c1;
        return;
      }
      const [n0, n1] = side < 0 ? needLeft : side > 0 ? needRight : needMiddle;
      a0 += n0 * c0;
      a1 += n0 * c1 + n1 * c0;
      a2 += n1 * c1;
    });
    const { deadNormal } = terms;
    const uplift = factor * wind.fz;
    const mu = terms.holding.friction;
    const touches = deadNormal - uplift * q > 0;
    const [k0, k1] = touches ? [mu * deadNormal, -mu * uplift] : [0, 0];
    return new SlidePiece(this.push, [a0, a1, a2], [k0, k1]);
  }
}
