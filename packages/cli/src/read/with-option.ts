import { type Complaint, Refusal, type RefusalCode } from "@hoopstay/core";
import { parseText } from "@hoopstay/file";
import type { AskedVariant } from "@hoopstay/house";

const option = "--with";

const complaintOf = (given: string, code: RefusalCode): Complaint => ({
  code,
  key: option,
  given,
  expected:
    'keys of the house file with their values: --with "hoops.tube.gauge=16; hoops.count=11"',
  mend: "Write key=value; several keys of one variant after a semicolon, each key once.",
});

/** One change as typed: a key, and its value as it would stand in the house file. */
function changeOf(text: string, complaints: Complaint[]): (readonly [string, unknown])[] {
  const at = text.indexOf("=");
  const key = text.slice(0, Math.max(0, at)).trim();
  const value = text.slice(at + 1).trim();
  if (at < 0 || key === "" || value === "") {
    complaints.push(complaintOf(text.trim(), "command-unknown"));
    return [];
  }
  try {
    return [[key, parseText(value, option).value]];
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const told = error.complaints.map((one) => ({ ...one, key: `${option} ${key}` }));
    complaints.push(...told.map(({ file: _, line: _l, ...complaint }) => complaint));
    return [];
  }
}

/**
 * A variant asked for on the command line; it is called what was typed.
 *
 * @param complaints collects what cannot be understood of it; the variant is then undefined
 */
export function variantOf(text: string, complaints: Complaint[]): AskedVariant | undefined {
  const known = complaints.length;
  const parts = text.split(";").filter((part) => part.trim() !== "");
  if (parts.length === 0) complaints.push(complaintOf(text, "command-unknown"));
  const changes = parts.flatMap((part) => changeOf(part, complaints));
  const keys = changes.map(([key]) => key);
  const twice = keys.find((key, at) => keys.indexOf(key) < at);
  if (twice !== undefined) complaints.push(complaintOf(twice, "key-duplicate"));
  if (complaints.length > known) return undefined;
  const name = text.trim().replace(/\s*;\s*/g, "; ");
  return { name, change: Object.fromEntries(changes), at: [option] };
}
