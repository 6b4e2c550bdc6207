/** One line of a page as a reader sees it, and the sheet it stands on. */
export interface PrintedLine {
  readonly sheet: string;
  readonly text: string;
}

// A page may be anybody's: no pattern looks past the next sign of its own beginning.
const unseen = /^<(?:style|script)\b/;
const heading = /<h2 id="[^"<>]*">([^<]*)<\/h2>/;
/** Where a new line begins; cells of a table stay on the line of their row. */
const breaks = /<\/?(?:p|tr|li|h\d|figure|figcaption|caption|text|dt|dd|summary)\b[^<>]*>/g;
const cells = /<(?:td|th)\b[^<>]*>/g;
const tags = /<[^<>]*>/g;
const entities: Readonly<Record<string, string>> = {
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&#39;": "'",
  "&amp;": "&",
};

const plain = (markup: string): string =>
  markup
    .replace(cells, " | ")
    .replace(tags, " ")
    .replace(/&(?:lt|gt|quot|#39|amp);/g, (entity) => entities[entity] as string)
    .replace(/\s+/g, " ")
    .replace(/^[ |]+|[ |]+$/g, "");

/** The page without its style and data. */
const seen = (html: string): string =>
  html
    .split(/(?=<\/?(?:style|script)\b)/)
    .filter((part) => !unseen.test(part))
    .join("");

/**
 * Every line that a report of ours prints, sheet by sheet, words of drawings included; not how they
 * look or where they stand. Cells of a row are parted by bars. For markup of this package only.
 */
export function printedLines(html: string): PrintedLine[] {
  const [before = "", ...sheets] = seen(html).split(/(?=<section class="sheet")/);
  return [before, ...sheets].flatMap((markup) => {
    const sheet = plain(heading.exec(markup)?.[1] ?? "Head of the page");
    return markup
      .split(breaks)
      .map(plain)
      .filter((text) => text !== "")
      .map((text) => ({ sheet, text }));
  });
}
