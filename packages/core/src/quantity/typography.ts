const vulgar: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

/** Text with plain spaces, hyphens, quotes and fractions in place of their typographic forms. */
export function plainText(text: string): string {
  return text
    .replace(/[\u2010-\u2013\u2212\ufe63\uff0d]/g, "-")
    .replace(/[\u2018\u2019\u2032\u02b9\u00b4]/g, "'")
    .replace(/[\u201c\u201d\u2033\u02ba]|''/g, '"')
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${vulgar[sign]}`)
    .replaceAll("\u2044", "/")
    .replace(/\s+/g, " ")
    .trim();
}

/** A typed text fit to be quoted in a message: cut to a line, hidden characters made visible. */
export function quotable(text: string): string {
  const points = Array.from(text.slice(0, 160));
  const line = points
    .slice(0, 60)
    .join("")
    .replace(/\p{C}/gu, (sign) => `\\u{${sign.codePointAt(0)?.toString(16)}}`);
  return points.length > 60 ? `${line}...` : line;
}
