export type Plain = string | number | boolean | Plain[] | { [key: string]: Plain };
export type Keys = (string | number)[];

/** The value with another one at a path whose parents exist; undefined takes it out. */
export function changed(whole: Plain, path: Keys, value: Plain | undefined): Plain {
  const [key, ...rest] = path;
  if (typeof whole !== "object" || key === undefined) throw new Error("no such path");
  const entries = Object.entries(whole).map(([one, inner]): [string, Plain | undefined] =>
    one !== String(key)
      ? [one, inner]
      : [one, rest.length > 0 ? changed(inner, rest, value) : value],
  );
  if (!Object.hasOwn(whole, key)) entries.push([String(key), value]);
  const left = entries.flatMap(([one, inner]): [string, Plain][] =>
    inner === undefined ? [] : [[one, inner]],
  );
  return Array.isArray(whole) ? left.map(([, inner]) => inner) : Object.fromEntries(left);
}

/** Every path of a value, parents before what they hold. */
export const pathsOf = (whole: Plain, path: Keys = []): Keys[] =>
  typeof whole !== "object"
    ? []
    : Object.entries(whole).flatMap(([key, inner]) => {
        const here = [...path, Array.isArray(whole) ? Number(key) : key];
        return [here, ...pathsOf(inner, here)];
      });

export const at = (whole: Plain, path: Keys): Plain =>
  path.reduce((inner, key) => (inner as { [key: string]: Plain })[key] as Plain, whole);

export const isSingle = (value: Plain): boolean => typeof value !== "object";

/** How many lines at the beginning and at the end two texts have in common. */
export function sharedLines(one: string, other: string): number {
  const [a, b] = [one.split("\n"), other.split("\n")];
  const least = Math.min(a.length, b.length);
  let start = 0;
  while (start < least && a[start] === b[start]) start++;
  let end = 0;
  while (end < least - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  return start + end;
}

export const lineCount = (text: string): number => text.split("\n").length;
