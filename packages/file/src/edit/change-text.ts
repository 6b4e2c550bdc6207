import type { Document } from "yaml";
import { parseAnew, parseText } from "../parse/parse-document.ts";
import { holds } from "./holds.ts";
import { insertEntry, insertFirst } from "./insert-entry.ts";
import { newlineOf } from "./lines.ts";
import { type Place, placeOf } from "./place.ts";
import { removeEntry } from "./remove-entry.ts";
import { replaceEntry } from "./replace-entry.ts";
import { entriesOf, isCollection } from "./source-entry.ts";
import { type Splice, spliced } from "./splice.ts";
import { styleWithin } from "./style.ts";
import { type Path, type Value, valueAt } from "./value.ts";
import { writtenOut } from "./written-out.ts";

/** A parsed text and what it is to hold; where it changes; whether what stands there goes. */
export interface Change {
  readonly text: string;
  readonly document: Document.Parsed;
  readonly path: Path;
  readonly expected: unknown;
  readonly goes: boolean;
}

/** The value that a place is to have; none where it is to go. */
const wantedAt = ({ path, expected, goes }: Change, place: Place): Value | undefined =>
  goes && place.path.length === path.length ? undefined : (valueAt(expected, place.path) as Value);

function splicesOf(change: Change, place: Place): Splice[] {
  const { text, document } = change;
  const wanted = wantedAt(change, place);
  const holder = place.within.at(-1);
  if (!holder) return document.contents || wanted === undefined ? [] : insertFirst(text, wanted);
  const token = holder.srcToken;
  if (!isCollection(token)) return [];
  if (wanted === undefined) return removeEntry(text, token, place.at);
  const entry = entriesOf(token)[place.at];
  return entry
    ? replaceEntry(text, entry, place, wanted, styleWithin(place.within))
    : insertEntry(text, place, token, wanted);
}

/** In the bytes of the text, and nowhere else than at the place. */
function inBytes(change: Change): string {
  const { text, document, path } = change;
  const place = placeOf(document, path);
  return spliced(text, [...splicesOf(change, place), ...writtenOut(document, place)]);
}

/** By the library, which writes the whole text anew: for forms of YAML that are seldom met. */
function byLibrary(change: Change): string {
  const { text, path } = change;
  const { document } = parseAnew(text, "text");
  const place = placeOf(document, path);
  const wanted = wantedAt(change, place);
  if (wanted === undefined) document.deleteIn(place.path);
  else
    document.setIn(place.path, typeof wanted === "object" ? document.createNode(wanted) : wanted);
  return document.toString({ lineWidth: 0 }).replaceAll("\n", newlineOf(text));
}

/** The text changed in the first way after which it holds exactly what is expected. */
export function changeText(change: Change): string {
  for (const way of [inBytes, byLibrary]) {
    const changed = way(change);
    if (holds(changed, change.expected, parseText)) return changed;
  }
  throw new Error(`"${change.path.join(".")}" cannot be changed without changing more`);
}
