import { isMapValue, type Path, sizeOf, under, type Value, valueAt } from "./value.ts";

/**
 * The plain value with the one at a path set; missing parents are made.
 *
 * @throws RangeError where the path leads through a single value, or past the end of a list
 */
export function plainWith(whole: unknown, path: Path, value: Value): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const parent = whole ?? (typeof key === "number" ? [] : {});
  const inner = plainWith(under(parent, key), rest, value);
  if (Array.isArray(parent)) {
    const fits = typeof key === "number" && Number.isInteger(key) && key >= 0;
    if (!fits || key > parent.length) throw new RangeError(`no place ${key} in a list`);
    return parent.toSpliced(key, 1, inner);
  }
  if (!isMapValue(parent)) throw new RangeError(`no key ${key} in a single value`);
  return { ...parent, [key]: inner };
}

/** The path of what goes when the value at a path goes: a parent that would be empty goes too. */
export function goingWith(whole: unknown, path: Path): Path {
  const parent = path.slice(0, -1);
  return parent.length > 0 && sizeOf(valueAt(whole, parent)) === 1
    ? goingWith(whole, parent)
    : path;
}

/** The plain value without what stands at an existing path. */
export function plainWithout(whole: unknown, [key = "", ...rest]: Path): unknown {
  if (Array.isArray(whole)) {
    const at = Number(key);
    return rest.length > 0
      ? whole.toSpliced(at, 1, plainWithout(whole[at], rest))
      : whole.toSpliced(at, 1);
  }
  const { [key]: inner, ...others } = whole as Record<string, unknown>;
  return rest.length > 0 ? { ...(whole as object), [key]: plainWithout(inner, rest) } : others;
}
