import type { Path } from "../read/complaints.ts";

type Block = Readonly<Record<string, unknown>>;

const isBlock = (value: unknown): value is Block =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What stands at a path of a parsed file; undefined where nothing does. */
export const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>((value, key) => {
    if (Array.isArray(value)) return value[Number(key)];
    return isBlock(value) && Object.hasOwn(value, key) ? value[String(key)] : undefined;
  }, document);

/**
 * A parsed file with another value at a path; null takes the key, or the entry of a list, out. Blocks
 * on the way are made where they are missing. The given document stays as it is: what several keys
 * share by an alias is changed at this place only.
 */
export function withValueAt(document: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(document)) {
    const entry = Number(key);
    if (rest.length === 0 && value === null) return document.filter((_, at) => at !== entry);
    const list = document.slice();
    list[entry] = withValueAt(document[entry], rest, value);
    return list;
  }
  const block = isBlock(document) ? document : {};
  if (rest.length === 0 && value === null) {
    return Object.fromEntries(Object.entries(block).filter(([name]) => name !== key));
  }
  return { ...block, [key]: withValueAt(block[key], rest, value) };
}
