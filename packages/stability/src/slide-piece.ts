/** The resultant of wind and one slope force, N, as the pressure rises: it runs along a straight line. */
export class Push {
  /** Greatest growth with the pressure, m2, and twice the area it sweeps per unit of pressure. */
  private readonly fastest: number;
  private readonly sweep: number;

  /**
   * @param sx @param sy slope force, N
   * @param wx @param wy factored wind per unit of pressure, m2
   */
  constructor(
    readonly sx: number,
    readonly sy: number,
    readonly wx: number,
    readonly wy: number,
  ) {
    this.fastest = Math.sqrt(wx * wx + wy * wy);
    this.sweep = Math.abs(wx * sy - wy * sx);
  }

  at(q: number): number {
    const [x, y] = [this.sx + this.wx * q, this.sy + this.wy * q];
    return Math.sqrt(x * x + y * y);
  }

  /** Growth with the pressure; it never falls as the pressure rises. */
  growth(q: number): number {
    const [x, y] = [this.sx + this.wx * q, this.sy + this.wy * q];
    const size = Math.sqrt(x * x + y * y);
    return size > 0 ? (this.wx * x + this.wy * y) / size : this.fastest;
  }

  /** The most that the growth itself grows anywhere between two pressures. */
  mostBend(from: number, to: number): number {
    if (this.sweep === 0) return 0;
    const [low, high] = [this.growth(from), this.growth(to)];
    const least =
      low < 0 && high > 0 ? this.sweep / this.fastest : Math.min(this.at(from), this.at(to));
    return this.sweep ** 2 / (least * least * least);
  }
}

/** What is asked beyond the demand, so that a slope turned by a little from this one holds too. */
export interface Slack {
  /** What the turn may add to the push, N. */
  readonly push: number;
  /** What tethers may lose by it, times the push, N2. */
  readonly tethers: number;
}

/** Relative width at which a root is told. */
const width = 1e-14;
const hair = (at: number, least: number): number => Math.max(width * at, least);
/** Halvings after which a piece that neither holds nor fails clearly is taken to fail where it stands. */
const mostHalvings = 200;
/** Halvings after which it stays open whether the excess rises. */
const fewHalvings = 20;
/** Steps of the false position that looks for a root before it is shown to be the first. */
const steps = 60;

/**
 * What a slide has in excess of what holds it, times the push H, N2, between two pressures at which a
 * tether or the contact changes its part. H^2 and the tethers' pull times H are parabolas there, what
 * grips the ground a straight line:
 *
 *   excess = a0 + a1 q + a2 q^2 - (k0 + k1 q) H
 *
 * Its curvature is bounded on any interval. Where the bound shows that nothing rises above nought, the
 * interval is left; everywhere else it is halved. So no failure is stepped over.
 */
export class SlidePiece {
  private halvings = 0;

  constructor(
    private readonly push: Push,
    private readonly parabola: readonly [number, number, number],
    private readonly grip: readonly [number, number],
  ) {}

  /** The same with slack. */
  slackened({ push, tethers }: Slack): SlidePiece {
    const [a0, a1, a2] = this.parabola;
    const [k0, k1] = this.grip;
    return new SlidePiece(this.push, [a0 + tethers, a1, a2], [k0 - push, k1]);
  }

  /**
   * The first pressure between two at which the excess is above nought; infinite where there is none.
   *
   * @param least width below which an interval is not halved
   */
  first(from: number, to: number, least: number): number {
    const before = this.excess(from);
    if (before > 0) return from;
    this.halvings = 0;
    return this.within(from, to, before, this.excess(to), least);
  }

  /** Whether the excess rises above nought between two pressures; yes, too, where that stays open. */
  mayRise(from: number, to: number): boolean {
    this.halvings = 0;
    return this.rises(from, to, this.excess(from), this.excess(to));
  }

  private rises(from: number, to: number, before: number, after: number): boolean {
    if (before > 0 || after > 0) return true;
    if (this.holds(from, to, before, after)) return false;
    this.halvings += 1;
    if (this.halvings > fewHalvings) return true;
    const middle = (from + to) / 2;
    const between = this.excess(middle);
    return this.rises(from, middle, before, between) || this.rises(middle, to, between, after);
  }

  private excess(q: number): number {
    const [a0, a1, a2] = this.parabola;
    const [k0, k1] = this.grip;
    return a0 + (a1 + a2 * q) * q - (k0 + k1 * q) * this.push.at(q);
  }

  private within(from: number, to: number, before: number, after: number, least: number): number {
    if (this.holds(from, to, before, after)) return Number.POSITIVE_INFINITY;
    if (to - from <= hair(to, least)) return after > 0 ? to : Number.POSITIVE_INFINITY;
    if (after > 0) {
      const [low, high, reached] = this.crossing(from, to, before, after, least);
      const met = high - low <= hair(high, least);
      if (met && this.holds(from, low, before, reached)) return high;
    }
    this.halvings += 1;
    if (this.halvings > mostHalvings) return from;
    const middle = (from + to) / 2;
    const between = this.excess(middle);
    const early = this.within(from, middle, before, between, least);
    if (early < Number.POSITIVE_INFINITY) return early;
    return this.within(middle, to, between, after, least);
  }

  /** Two pressures with a root between them, mostly a hair apart, by false position; the excess at the lower. */
  private crossing(
    from: number,
    to: number,
    before: number,
    after: number,
    narrow: number,
  ): [number, number, number] {
    let [low, high, below, above] = [from, to, before, after];
    // The weight of an end that stays a second time is halved, so that both ends move.
    let [lowWeight, highWeight] = [1, 1];
    let fell = 0;
    for (let step = 0; step < steps; step += 1) {
      const close = hair(high, narrow);
      if (high - low <= close) break;
      const [one, other] = [lowWeight * below, highWeight * above];
      const met = low - (one * (high - low)) / (other - one);
      const q = Math.min(Math.max(met, low + close / 2), high - close / 2);
      const found = this.excess(q);
      if (found > 0) {
        [high, above, highWeight] = [q, found, 1];
        if (fell > 0) lowWeight /= 2;
        fell = 1;
      } else {
        [low, below, lowWeight] = [q, found, 1];
        if (fell < 0) highWeight /= 2;
        fell = -1;
      }
    }
    return [low, high, below];
  }

  /** Whether the curvature lets nothing rise above nought between two pressures; not so before. */
  private holds(from: number, to: number, before: number, after: number): boolean {
    if (after > 0) return false;
    const arch = this.mostArched(from, to) * (to - from) * (to - from);
    const rise = Math.abs(after - before);
    if (2 * rise >= arch) return true;
    return (before + after) / 2 + arch / 8 + rise ** 2 / (2 * arch) <= 0;
  }

  /** No less than minus the second derivative anywhere between two pressures. */
  private mostArched(from: number, to: number): number {
    const [k0, k1] = this.grip;
    const { push } = this;
    const growing = Math.max(k1 * push.growth(from), k1 * push.growth(to));
    const most = Math.max(k0 + k1 * from, k0 + k1 * to);
    const bending = most > 0 ? most * push.mostBend(from, to) : 0;
    return 2 * growing + bending - 2 * this.parabola[2];
  }
}
