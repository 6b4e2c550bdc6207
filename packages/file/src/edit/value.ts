/** What a house or site file can hold at a place. */
export type Value =
  | string
  | number
  | boolean
  | readonly Value[]
  | { readonly [key: string]: Value };

/** Keys of maps and indices of lists, from the whole file inward. */
export type Path = readonly (string | number)[];

export const isMapValue = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What stands under a key or index of a plain value. */
export function under(whole: unknown, key: string | number): unknown {
  if (Array.isArray(whole)) return typeof key === "number" ? whole[key] : undefined;
  return isMapValue(whole) && Object.hasOwn(whole, key) ? whole[key] : undefined;
}

export const valueAt = (whole: unknown, path: Path): unknown => path.reduce(under, whole);

/** How many entries a map or list has. */
export const sizeOf = (value: unknown): number =>
  typeof value === "object" && value !== null ? Object.keys(value).length : 0;
