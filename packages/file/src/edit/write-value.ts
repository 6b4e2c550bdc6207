import { stringify } from "yaml";
import { holds } from "./holds.ts";
import type { Style } from "./style.ts";
import { isMapValue, type Value } from "./value.ts";

export type Quote = "single" | "double";

/** Signs that do not show, and halves of signs: never written as they are. */
const hidden = /[\p{Cc}\p{Cs}\u2028\u2029\ufeff]/u;

const doubleQuoted = (text: string): string =>
  JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** What YAML needs quoted, it tells itself: a text is written bare and read again. */
const readsAsText = (source: string, text: string, { flow }: Style): boolean =>
  flow
    ? holds(`{ k: ${source}, l: [${source}] }`, { k: text, l: [text] })
    : holds(`k: ${source}`, { k: text });

function textOf(text: string, style: Style, quote?: Quote): string {
  if (style.json || quote === "double" || hidden.test(text)) return doubleQuoted(text);
  const bare = quote === "single" ? `'${text.replaceAll("'", "''")}'` : text;
  return readsAsText(bare, text, style) ? bare : doubleQuoted(text);
}

/** A key as it has to be written. */
export function keyText(key: string, { flow, json }: Style): string {
  if (json || key === "" || hidden.test(key)) return doubleQuoted(key);
  return holds(flow ? `{ ${key}: 1 }` : `${key}: 1`, { [key]: 1 }) ? key : doubleQuoted(key);
}

/** A value on one line; maps in braces, lists in brackets. Text may keep the quotes it had. */
export function valueText(value: Value, style: Style, quote?: Quote): string {
  if (typeof value === "string") return textOf(value, style, quote);
  if (typeof value !== "object") return stringify(value).trimEnd();
  const inner = { ...style, flow: true };
  if (!isMapValue(value)) {
    return `[${(value as readonly Value[]).map((item) => valueText(item, inner)).join(", ")}]`;
  }
  const pairs = Object.entries(value as Readonly<Record<string, Value>>).map(
    ([key, item]) => `${keyText(key, inner)}: ${valueText(item, inner)}`,
  );
  return pairs.length > 0 ? `{ ${pairs.join(", ")} }` : "{}";
}
