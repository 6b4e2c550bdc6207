/** Steel of a design, N, and the gust it stands, m/s. */
export interface Weighed {
  readonly steel: number;
  readonly gust: number;
}

/** A place in a list of designs, and why it is worth a look. */
export interface Look {
  readonly place: number;
  readonly why: string;
}

const hair = 1 + 1e-9;

const bestOf = <Value>(
  values: readonly Value[],
  better: (one: Value, than: Value) => boolean,
): Value | undefined =>
  values.length === 0 ? undefined : values.reduce((a, b) => (better(b, a) ? b : a));

/**
 * The design farthest above the straight line from the lightest to the strongest: beyond it more
 * steel buys little. None where no design but these two lies above it.
 */
function knee(designs: readonly Weighed[], taken: readonly number[]): number | undefined {
  const light = bestOf(designs, (one, than) => one.steel < than.steel);
  const strong = bestOf(designs, (one, than) => one.gust > than.gust);
  if (!light || !strong) return undefined;
  const steel = strong.steel - light.steel;
  const gust = strong.gust - light.gust;
  if (!(steel > 0 && gust > 0 && Number.isFinite(gust))) return undefined;
  const above = designs.map(
    (one) => (one.gust - light.gust) / gust - (one.steel - light.steel) / steel,
  );
  const places = above.flatMap((value, place) =>
    value > 1e-9 && !taken.includes(place) ? [place] : [],
  );
  return bestOf(places, (one, than) => (above[one] as number) > (above[than] as number));
}

/**
 * Up to three of some unbeaten designs, with why they are worth a look: the first two only where they
 * are better than today's, by their exact numbers.
 */
export function worthALook(today: Weighed, designs: readonly Weighed[]): Look[] {
  const found: Look[] = [];
  const at = (place: number): Weighed => designs[place] as Weighed;
  const placesOf = (fits: (design: Weighed) => boolean): number[] =>
    designs.flatMap((design, place) => (fits(design) ? [place] : []));
  const add = (place: number | undefined, why: string): void => {
    if (place === undefined) return;
    const known = found.findIndex((look) => look.place === place);
    const look = found[known];
    if (look) found[known] = { place, why: `${look.why}; ${why}` };
    else found.push({ place, why });
  };
  const asStrong = placesOf(({ steel, gust }) => gust >= today.gust && steel * hair < today.steel);
  const asLight = placesOf(
    ({ steel, gust }) => steel <= today.steel * hair && gust > today.gust * hair,
  );
  add(
    bestOf(asStrong, (one, than) => at(one).steel < at(than).steel),
    "the lightest of these that stands the gust today's stands",
  );
  add(
    bestOf(asLight, (one, than) => at(one).gust > at(than).gust),
    "the strongest of these with no more steel than today",
  );
  const taken = found.map(({ place }) => place);
  add(knee(designs, taken), "beyond it more steel buys little more gust");
  return found;
}
