import type { PathComplaint } from "../read/complaints.ts";
import type { AskedVariant } from "./asked-variant.ts";
import { valueAt } from "./changed-document.ts";
import { schemaPath } from "./schema-path.ts";

/** The first entry of a list that neither the file nor the variant has. */
function nextEntry(list: string, length: number, change: AskedVariant["change"]): number {
  let next = length;
  while (change[`${list}${next}`] != null) next += 1;
  return next;
}

/** Changes to keys that no house file has, or to entries of a list that are not there. */
export function pathComplaints({ change, at }: AskedVariant, document: unknown): PathComplaint[] {
  return Object.keys(change).flatMap((key): PathComplaint[] => {
    const found = schemaPath(key);
    if (!found.ok) {
      const { expected, near } = found;
      const mend = near
        ? `Did you mean "${near}"?`
        : "Write the key as in the house file, with dots.";
      return [{ path: [...at, key], code: "key-unknown", given: key, expected, mend }];
    }
    return found.path.flatMap((entry, depth): PathComplaint[] => {
      const before = found.path.slice(0, depth);
      const list = valueAt(document, before);
      if (!Array.isArray(list)) return [];
      const next = nextEntry([...before, ""].join("."), list.length, change);
      if (Number(entry) < next || (Number(entry) === next && change[key] !== null)) return [];
      const expected = `an entry from 0 to ${next}, the next one`;
      const mend = "Count the entries of the list from 0.";
      return [{ path: [...at, key], code: "out-of-range", given: key, expected, mend }];
    });
  });
}
