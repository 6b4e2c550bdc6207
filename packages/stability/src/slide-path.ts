import type { LineTerms } from "./holding.ts";
import { needOf, type SlidingTerms, type SlidingWind } from "./slide.ts";
import { Push, type Slack, SlidePiece } from "./slide-piece.ts";
import { kinks } from "./straight-slide.ts";

/** Multiples of the design pressure at which the path is cut, so that a root is not looked for far off. */
const cuts = [1 / 16, 1 / 4, 1, 4, 16, 1024];
/** A pressure below this part of the design pressure is told as nought. */
const nought = 1e-18;

/** A number that grows evenly with the pressure: at no pressure, and per unit of it. */
type Line = readonly [number, number];

/** Pressure at which two lines meet; not a number or infinite where they do not. */
const meeting = (one: Line, other: Line): number => (other[0] - one[0]) / (one[1] - other[1]);

/** What turning asks of a rail's tethers, before it is held to none (0) and all (1). */
const asked = ({ weightMoment, anchorMoment, slopeMoment }: LineTerms, turn: number): Line => [
  (slopeMoment - weightMoment) / anchorMoment,
  Math.max(0, turn) / anchorMoment,
];

/** One case on one slope force, its pressure rising from nought. */
export class SlidePath {
  private readonly push: Push;
  /** Pull of every tether along the push, times the push, N2. */
  private readonly along: readonly Line[];
  /** Pressures at which a tether or the contact changes its part. */
  private readonly stations: readonly number[];
  private readonly pieces: SlidePiece[] = [];

  constructor(
    private readonly sliding: SlidingTerms,
    private readonly wind: SlidingWind,
    [sx, sy]: readonly [number, number],
    private readonly design: number,
  ) {
    const { combination, holding } = sliding.terms;
    const [wx, wy] = [combination.wind * wind.fx, combination.wind * wind.fy];
    this.push = new Push(sx, sy, wx, wy);
    this.along = holding.anchors.map(({ pull, toward }): Line => {
      const [x, y] = [combination.anchor * pull * toward[0], combination.anchor * pull * toward[1]];
      return [x * sx + y * sy, x * wx + y * wy];
    });
    const found = kinks(sliding, wind);
    for (const line of this.along) found.push(meeting(line, [0, 0]));
    if (holding.anchors.some(({ x }) => x === 0)) found.push(this.needsMeet());
    const cut = cuts.map((multiple) => multiple * design);
    const end = Math.max(...cut);
    this.stations = [...found.filter((q) => q > 0 && q < end), ...cut].sort((a, b) => a - b);
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
      const found = this.piece(place).first(from, to, nought * this.design);
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

  /** Pressure at which both rails need their tethers alike. */
  private needsMeet(): number {
    const { right, left, terms } = this.sliding;
    const { wind: factor } = terms.combination;
    const { turnRight, turnLeft } = this.wind;
    return meeting(asked(right, factor * turnRight), asked(left, factor * turnLeft));
  }

  /** The excess up to a station from the one before it. */
  private piece(place: number): SlidePiece {
    const [from, to] = [this.stations[place - 1] ?? 0, this.stations[place] as number];
    this.pieces[place] ??= this.pieceAbout((from + to) / 2);
    return this.pieces[place];
  }

  private pieceAbout(q: number): SlidePiece {
    const { terms, right, left } = this.sliding;
    const { sx, sy, wx, wy } = this.push;
    const { wind: factor } = terms.combination;
    const needOfRail = (rail: LineTerms, turn: number): Line => {
      const need = needOf(rail, factor, q * turn);
      return need > 0 && need < 1 ? asked(rail, factor * turn) : [need, 0];
    };
    const needLeft = needOfRail(right, this.wind.turnRight);
    const needRight = needOfRail(left, this.wind.turnLeft);
    const more = needLeft[0] + needLeft[1] * q >= needRight[0] + needRight[1] * q;
    const needMiddle = more ? needLeft : needRight;
    let [a0, a1, a2] = [sx * sx + sy * sy, 2 * (sx * wx + sy * wy), wx * wx + wy * wy];
    terms.holding.anchors.forEach(({ x }, place) => {
      const [c0, c1] = this.along[place] as Line;
      if (c0 + c1 * q <= 0) {
        a0 += c0;
        a1 += c1;
        return;
      }
      const [n0, n1] = x < 0 ? needLeft : x > 0 ? needRight : needMiddle;
      a0 += n0 * c0;
      a1 += n0 * c1 + n1 * c0;
      a2 += n1 * c1;
    });
    const { deadNormal } = terms;
    const uplift = factor * this.wind.fz;
    const mu = terms.holding.friction;
    const touches = deadNormal - uplift * q > 0;
    const [k0, k1] = touches ? [mu * deadNormal, -mu * uplift] : [0, 0];
    return new SlidePiece(this.push, [a0, a1, a2], [k0, k1]);
  }
}
