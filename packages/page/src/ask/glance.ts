const most = 64;

/** What a group or list holds, in a few words beside its title. */
export function glance(value: unknown): string {
  if (value === undefined) return "none";
  if (Array.isArray(value)) return value.length === 1 ? "1" : String(value.length);
  const words = leaves(value).join(", ");
  return words.length > most ? `${words.slice(0, most - 1)}\u2026` : words;
}

function leaves(value: unknown): string[] {
  if (value === null || value === undefined) return [];
  if (Array.isArray(value)) return [`${value.length}`];
  if (typeof value === "object") return Object.values(value).flatMap(leaves);
  return [String(value)];
}

/** What an entry of a list is called: by its name, else by its number. */
export function entryName(entry: unknown, place: number): string {
  const { name, what, id, words, date, wall } = (entry ?? {}) as Record<string, unknown>;
  const called = [name, what, words, id, date, wall].find((one) => typeof one === "string");
  return called === undefined ? `No. ${place + 1}` : `${place + 1}. ${called}`;
}
