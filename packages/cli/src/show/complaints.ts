import { type Complaint, refusalCodes } from "@hoopstay/core";

/** Control characters and direction marks of hostile files, made visible. */
const visible = (text: string): string =>
  text.replace(
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must be shown
    /[\u0000-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g,
    (mark) => `\\u${mark.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** All complaints, each with where, what was given, what is expected and how to mend it. */
export function showComplaints(complaints: readonly Complaint[]): string {
  const outside = complaints.every(({ code }) => refusalCodes[code].exit === 3);
  const what = outside ? "This is outside what hoopstay computes" : "The input is refused";
  const count = complaints.length === 1 ? "1 complaint" : `${complaints.length} complaints`;
  const blocks = complaints.map(({ code, file, line, key, given, expected, mend }) => {
    const where = [file, line].filter((part) => part !== undefined).join(":");
    const head = [where, key].filter(Boolean).join("  ");
    return [
      `${visible(head)}  [${code}]`,
      ...(given === undefined ? [] : [`  given:    ${visible(given)}`]),
      `  expected: ${visible(expected)}`,
      `  mend:     ${visible(mend)}`,
    ].join("\n");
  });
  return `${what}: ${count}. Nothing was written.\n\n${blocks.join("\n\n")}\n`;
}
