import { Refusal } from "@hoopstay/core";
import type { Document } from "yaml";
import { parseTree } from "../parse/parse-document.ts";
import { insertEntry, insertFirst } from "./insert-entry.ts";
import { newlineOf } from "./lines.ts";
import { type Place, placeOf } from "./place.ts";
import { removeEntry } from "./remove-entry.ts";
import { replaceEntry } from "./replace-entry.ts";
import { holdsNothing, samePlain } from "./same-plain.ts";
import { entriesOf, isCollection } from "./source-entry.ts";
import { type Splice, spliced } from "./splice.ts";
import { styleWithin } from "./style.ts";
import { type Path, type Value, valueAt } from "./value.ts";
import { writtenOut } from "./written-out.ts";

/** What a file is to hold; a path along which it changes; whether what stands there goes. */
export interface Change {
  readonly path: Path;
  readonly expected: unknown;
  readonly goes: boolean;
}

const treeOf = (text: string) => parseTree(text, "text", true);

/** What a text holds. */
export const plainOf = (text: string): unknown => treeOf(text).value;

/** The value that a place is to have; none where it is to go. */
const wantedAt = ({ path, expected, goes }: Change, place: Place): Value | undefined =>
  goes && place.path.length === path.length ? undefined : (valueAt(expected, place.path) as Value);

function splicesOf(text: string, document: Document.Parsed, change: Change, place: Place) {
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
function inBytes(text: string, change: Change): string {
  const { document } = treeOf(text);
  const place = placeOf(document, change.path);
  const splices: Splice[] = splicesOf(text, document, change, place);
  return spliced(text, [...splices, ...writtenOut(document, place)]);
}

/** By the library, which writes the whole text anew: for forms of YAML that are seldom met. */
function byLibrary(text: string, change: Change): string {
  const { document } = treeOf(text);
  const place = placeOf(document, change.path);
  const wanted = wantedAt(change, place);
  if (wanted === undefined) document.deleteIn(place.path);
  else
    document.setIn(place.path, typeof wanted === "object" ? document.createNode(wanted) : wanted);
  return document.toString({ lineWidth: 0 }).replaceAll("\n", newlineOf(text));
}

/** Whether a text holds what was expected of it; a text that holds nothing may be empty. */
function holds(text: string, expected: unknown): boolean {
  try {
    const value = plainOf(text);
    return samePlain(value, expected) || (holdsNothing(value) && holdsNothing(expected));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return false;
  }
}

/** The text changed in the first way after which it holds exactly what is expected. */
export function changeText(text: string, change: Change): string {
  for (const way of [inBytes, byLibrary]) {
    const changed = way(text, change);
    if (holds(changed, change.expected)) return changed;
  }
  throw new Error(`"${change.path.join(".")}" cannot be changed without changing more`);
}
