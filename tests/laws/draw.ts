import fc from "fast-check";
import { Size, type UnitName } from "./size.ts";

/** Draws the values of one house or site, in the units of its owner. */
export class Draw {
  constructor(
    private readonly g: fc.GeneratorValue,
    readonly us: boolean,
  ) {}

  whole = (min: number, max: number): number => this.g(fc.integer, { min, max });
  pick = <One>(from: readonly One[]): One => from[this.whole(0, from.length - 1)] as One;
  /** Simplest is no: what shrinks leaves keys out. */
  chance = (percent: number): boolean => this.whole(0, 99) >= 100 - percent;
  maybe = <One>(percent: number, make: () => One): One | undefined =>
    this.chance(percent) ? make() : undefined;
  list = <One>(most: number, make: (at: number) => One): One[] =>
    Array.from({ length: this.whole(0, most) }, (_, at) => make(at));

  /** A length between two, m, in steps of half an inch or of ten millimetres. */
  length(min: number, max: number): Size {
    if (!this.us)
      return new Size(this.whole(Math.ceil(min * 100), Math.floor(max * 100)) / 100, "m");
    const halves = this.whole(Math.ceil(min / 0.0127), Math.floor(max / 0.0127));
    return halves % 2 === 0 && halves < 144
      ? new Size(halves / 2, "in")
      : new Size(halves / 24, "ft");
  }

  /** A small length between two, mm, in steps of a thirty-second of an inch or half a millimetre. */
  small(min: number, max: number): Size {
    if (!this.us) return new Size(this.whole(Math.ceil(min * 2), Math.floor(max * 2)) / 2, "mm");
    return new Size(
      this.whole(Math.ceil((min / 25.4) * 32), Math.floor((max / 25.4) * 32)) / 32,
      "in",
    );
  }

  /** Between two amounts of either unit, in so many steps. */
  amount(
    us: readonly [number, number, UnitName],
    si: readonly [number, number, UnitName],
    steps = 40,
  ): Size {
    const [min, max, unit] = this.us ? us : si;
    const made = min + ((max - min) * this.whole(0, steps)) / steps;
    return new Size(Number(made.toPrecision(4)), unit);
  }

  force = (min: number, max: number): Size =>
    this.amount([Math.round(min / 4), Math.round(max / 4), "lb"], [min / 1000, max / 1000, "kN"]);
  weight = (min: number, max: number): Size =>
    this.amount([2 * min, 2 * max, "lb"], [min, max, "kg"]);
}
