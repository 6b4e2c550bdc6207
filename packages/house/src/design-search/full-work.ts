import { allPlaces, beats, type Judged, unbeaten } from "./found/unbeaten.ts";
import { type Weighed, worthALook } from "./found/worth-a-look.ts";

/** How the gust by all checks came out beside that of the quick forms. */
interface Worked extends Weighed {
  readonly quick: number;
}

/** Designs with gusts that can be replaced. */
export interface Searched extends Judged {
  readonly gust: Float64Array;
}

/**
 * Which designs are worked in full, one after another. The quick forms promise no less than is true, so
 * that a design may be left when one worked in full beats what they promise of it. Which of the others
 * comes next is guessed: a design is thought to fall short of its promise as its nearest neighbour did
 * that was worked.
 */
export class FullWork {
  private readonly worked = new Map<number, Worked>();
  /** Places of designs that none worked in full has beaten yet. */
  private standing: readonly number[];

  /** @param designs gusts by the quick forms; those of designs worked in full take their place */
  constructor(
    private readonly designs: Searched,
    private readonly today: Weighed,
  ) {
    this.standing = allPlaces(designs);
  }

  get count(): number {
    return this.worked.size;
  }

  /** How many have not been worked and may still be unbeaten. */
  get open(): number {
    return this.standing.filter((place) => !this.worked.has(place)).length;
  }

  /** Places worked in full that none of the others worked in full beats. */
  get unbeaten(): number[] {
    return unbeaten(this.designs, [...this.worked.keys()]);
  }

  /** A design worked in full. */
  add(place: number, gust: number): void {
    const { designs, worked } = this;
    const [steel, quick] = [designs.steel[place] as number, designs.gust[place] as number];
    worked.set(place, { steel, quick, gust });
    designs.gust[place] = gust;
    // The numbers of the others can only fall: what one worked in full beats stays beaten.
    this.standing = this.standing.filter((other) => !beats(designs, place, other));
  }

  /**
   * The place to work next: of those that may be worth a look, then of those that may be unbeaten;
   * none where every one is worked or beaten.
   *
   * @param looksOnly end with those that may be worth a look, one at least
   */
  next(looksOnly: boolean): number | undefined {
    const { designs, standing, today } = this;
    const isNew = (place: number): boolean => !this.worked.has(place);
    const gust = new Float64Array(designs.count);
    for (const place of standing) gust[place] = this.guess(place);
    const { count, steel, cost, anchors } = designs;
    const front = unbeaten({ count, steel, cost, anchors, gust }, standing);
    const numbers = front.map(
      (place): Weighed => ({ steel: steel[place] as number, gust: gust[place] as number }),
    );
    const look = worthALook(today, numbers)
      .map(({ place }) => front[place] as number)
      .find(isNew);
    if (look !== undefined || (looksOnly && this.count > 0)) return look;
    return this.apart(front.filter(isNew)) ?? this.strongest(standing.filter(isNew));
  }

  private guess(place: number): number {
    const { steel, gust } = this.designs;
    if (this.worked.has(place)) return gust[place] as number;
    const [mine, promised] = [steel[place] as number, gust[place] as number];
    let [nearest, share] = [Number.POSITIVE_INFINITY, 1];
    for (const one of this.worked.values()) {
      const away = Math.hypot(Math.log(one.steel / mine), Math.log(one.quick / promised));
      if (away < nearest) [nearest, share] = [away, one.gust / one.quick];
    }
    return promised * share;
  }

  /** The one whose steel differs most from all that were worked. */
  private apart(places: readonly number[]): number | undefined {
    const { steel } = this.designs;
    const away = (place: number): number =>
      Math.min(
        ...[...this.worked.values()].map((one) => Math.abs(one.steel - (steel[place] as number))),
      );
    return best(places, away);
  }

  private strongest(places: readonly number[]): number | undefined {
    return best(places, (place) => this.designs.gust[place] as number);
  }
}

function best(places: readonly number[], value: (place: number) => number): number | undefined {
  let found: { readonly place: number; readonly value: number } | undefined;
  for (const place of places) {
    const mine = value(place);
    if (!found || mine > found.value) found = { place, value: mine };
  }
  return found?.place;
}
