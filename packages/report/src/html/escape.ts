const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Characters that no sheet can show: controls but tab and newline, and halves of a pair. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const unprintable = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufffe\uffff]|\p{Cs}/gu;
const directionMarks = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;

/** Text of the program, fit for content and for a quoted attribute. */
export const text = (words: string): string =>
  words.replace(unprintable, "\ufffd").replace(/[&<>"']/g, (sign) => entities[sign] as string);

/** Text somebody typed: its writing direction stays inside it. */
export const typed = (words: string): string => `<bdi>${text(words)}</bdi>`;

/** The same for the many cells of a long table: an element only where a sign is beyond Latin. */
export const compact = (words: string): string =>
  /[^\n -\u024f\u2010-\u2027\u2212]/u.test(words) ? typed(words) : text(words);

/** Text somebody typed, where no element can hold its direction: attributes, title, drawings. */
export const flat = (words: string): string => text(words.replace(directionMarks, ""));

/** A CSS string: every character that is no plain letter or figure as its code point. */
export const cssText = (words: string): string =>
  `"${words
    .replace(directionMarks, "")
    .replace(unprintable, "\ufffd")
    .replace(/[^A-Za-z0-9 ,.:;-]/gu, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
