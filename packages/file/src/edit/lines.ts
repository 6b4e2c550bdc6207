/** How the lines of a text end. */
export const newlineOf = (text: string): string => (text.includes("\r\n") ? "\r\n" : "\n");

/** Where the line of a place begins; a byte order mark is no part of it. */
export function lineStart(text: string, at: number): number {
  const start = at === 0 ? 0 : text.lastIndexOf("\n", at - 1) + 1;
  return text[start] === "\uFEFF" ? start + 1 : start;
}

/** Where the line of a place ends, before its newline. */
export function lineEnd(text: string, at: number): number {
  const newline = text.indexOf("\n", at);
  if (newline < 0) return text.length;
  return newline > at && text[newline - 1] === "\r" ? newline - 1 : newline;
}

/** What stands on the line before a place. */
export const before = (text: string, at: number): string => text.slice(lineStart(text, at), at);

/** Whether nothing but spaces stands on the line before a place. */
export const isFirstOnLine = (text: string, at: number): boolean => !before(text, at).trim();

/** Whether nothing follows on the line but a comma and a comment. */
export const isLastOnLine = (text: string, at: number): boolean =>
  /^[ \t]*,?[ \t]*(#.*)?$/.test(text.slice(at, lineEnd(text, at)));
