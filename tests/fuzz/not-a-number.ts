/** Where in a value a number is none; undefined where every one is. */
export function notANumber(
  value: unknown,
  path = "",
  seen = new Set<unknown>(),
): string | undefined {
  if (typeof value === "number") return Number.isNaN(value) ? path : undefined;
  if (typeof value !== "object" || value === null || seen.has(value)) return undefined;
  seen.add(value);
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  for (const [key, inner] of entries) {
    const found = notANumber(inner, `${path}.${String(key)}`, seen);
    if (found !== undefined) return found;
  }
  return undefined;
}
