/** Where in a value a number is none; undefined where every one is. However deep it is nested. */
export function notANumber(value: unknown): string | undefined {
  const seen = new Set<unknown>();
  const left: [string, unknown][] = [["", value]];
  for (let next = left.pop(); next; next = left.pop()) {
    const [path, one] = next;
    if (Number.isNaN(one)) return path;
    if (typeof one !== "object" || one === null || seen.has(one)) continue;
    seen.add(one);
    const entries = one instanceof Map ? [...one] : Object.entries(one);
    for (const [key, inner] of entries) left.push([`${path}.${String(key)}`, inner]);
  }
  return undefined;
}
