import { type Complaint, refusalCodes } from "@hoopstay/core";
import { visible } from "./visible.ts";

/** More than any file written by hand has; a garbled one would fill the screen for minutes. */
const mostShown = 100;

/** All complaints, each with where, what was given, what is expected and how to mend it. */
export function showComplaints(complaints: readonly Complaint[]): string {
  const outside = complaints.every(({ code }) => refusalCodes[code].exit === 3);
  const what = outside ? "This is outside what hoopstay computes" : "The input is refused";
  const count = complaints.length === 1 ? "1 complaint" : `${complaints.length} complaints`;
  const blocks = complaints.slice(0, mostShown).map(showComplaint);
  const rest = complaints.length - blocks.length;
  if (rest > 0) blocks.push(`... and ${rest} more like these.`);
  return `${what}: ${count}. Nothing was written.\n\n${blocks.join("\n\n")}\n`;
}

function showComplaint({ code, file, line, key, given, expected, mend }: Complaint): string {
  const where = [file, line].filter((part) => part !== undefined).join(":");
  const short = key && key.length > 80 ? `${key.slice(0, 77)}...` : key;
  const head = [where, short].filter(Boolean).map((part) => visible(String(part)));
  return [
    [...head, `[${code}]`].join("  "),
    ...(given === undefined ? [] : [`  given:    ${visible(given)}`]),
    `  expected: ${visible(expected)}`,
    `  mend:     ${visible(mend)}`,
  ].join("\n");
}
