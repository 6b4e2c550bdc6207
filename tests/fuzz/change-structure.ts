import { stringify } from "yaml";
import { factors, oddValues } from "./odd-values.ts";
import type { Random } from "./random.ts";

type Holder = Record<string, unknown> | unknown[];

interface Place {
  readonly holder: Holder;
  readonly key: string;
}

const isHolder = (value: unknown): value is Holder => typeof value === "object" && value !== null;

function placesOf(holder: Holder): Place[] {
  return Object.entries(holder).flatMap(([key, value]) => [
    { holder, key },
    ...(isHolder(value) ? placesOf(value) : []),
  ]);
}

const at = ({ holder, key }: Place): unknown => (holder as Record<string, unknown>)[key];

function put({ holder, key }: Place, value: unknown): void {
  if (Array.isArray(holder) && Number.isNaN(Number(key))) {
    holder.push(value);
    return;
  }
  // A name such as __proto__ is a key like any other.
  Object.defineProperty(holder, key, {
    value,
    enumerable: true,
    configurable: true,
    writable: true,
  });
}

function takeOut({ holder, key }: Place): void {
  if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
}

/** A number in a text times a factor. */
const scaled = (value: unknown, factor: number): unknown =>
  typeof value === "number"
    ? value * factor
    : String(value).replace(/\d+(\.\d+)?/, (digits) => String(Number(digits) * factor));

const copy = (value: unknown): unknown => structuredClone(value);

/** One change of the tree of a file: a value, a key or a whole part of it. */
function changeOnce(whole: Holder, random: Random): void {
  const places = placesOf(whole);
  if (places.length === 0) return;
  const [one, other] = [random.pick(places), random.pick(places)];
  const singles = places.filter((place) => !isHolder(at(place)));
  const kind = random.below(10);
  if (kind < 3 && singles.length > 0) {
    const single = random.pick(singles);
    put(single, scaled(at(single), random.pick(factors)));
  } else if (kind < 5) put(one, copy(random.pick(oddValues)));
  else if (kind === 5) takeOut(one);
  else if (kind === 6) put(one, copy(at(other)));
  else if (kind === 7) put({ holder: one.holder, key: other.key }, copy(at(other)));
  else if (kind === 8 && singles.length > 0) {
    const [a, b] = [random.pick(singles), random.pick(singles)];
    const held = at(a);
    put(a, at(b));
    put(b, held);
  } else if (Array.isArray(at(one))) {
    const list = at(one) as unknown[];
    const times = random.pick([1, 2, 20]);
    for (let left = times; left > 0 && list.length > 0; left -= 1) list.push(copy(list[0]));
  } else if (isHolder(at(one))) put(one, [at(one)]);
  else put(one, { value: at(one) });
}

/** A file with some parts of its tree changed, written as YAML or JSON in one of their forms. */
export function changeStructure(tree: unknown, random: Random): string {
  const whole = copy(tree) as Holder;
  for (let left = 1 + random.below(3); left > 0; left -= 1) changeOnce(whole, random);
  const form = random.below(5);
  if (form === 0) return JSON.stringify(whole);
  if (form === 1) return JSON.stringify(whole, null, random.pick([1, 2, "\t"]));
  const collectionStyle = random.pick(["any", "block", "flow"] as const);
  // Aliases stand where a value stands twice.
  return stringify(whole, {
    collectionStyle,
    aliasDuplicateObjects: random.chance(0.5),
    indent: random.pick([1, 2, 4]),
  });
}
