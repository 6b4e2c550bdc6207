import { isMapValue, sizeOf } from "./value.ts";

/** Whether two plain values are the same; the order of keys does not count. */
export function samePlain(one: unknown, other: unknown): boolean {
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, at) => samePlain(item, other[at]));
  }
  if (!isMapValue(one) || !isMapValue(other)) return Object.is(one, other);
  const keys = Object.keys(one);
  return (
    keys.length === sizeOf(other) &&
    keys.every((key) => Object.hasOwn(other, key) && samePlain(one[key], other[key]))
  );
}
