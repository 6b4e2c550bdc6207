const longest = 60;

const written = (value: unknown): string => {
  if (value === undefined || value === null) return "none";
  if (Array.isArray(value)) return value.length === 1 ? "1 entry" : `${value.length} entries`;
  if (typeof value !== "object") return String(value);
  const inside = Object.entries(value).map(([key, part]) => `${key}: ${written(part)}`);
  return `{ ${inside.join(", ")} }`;
};

/** A value of a parsed file in a few words, as it was typed. */
export function typedText(value: unknown): string {
  const text = written(value);
  return text.length > longest ? `${text.slice(0, longest - 3)}...` : text;
}
