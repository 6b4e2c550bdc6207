import { flat } from "./escape.ts";

/** One column of a table: its heading, and whether its cells are numbers. */
export interface Column {
  readonly heading: string;
  /** Markup of the heading, where it is more than words. */
  readonly markup?: string;
  readonly numeric?: boolean;
}

export const words = (heading: string): Column => ({ heading });
export const numbers = (heading: string): Column => ({ heading, numeric: true });

/** Columns of numbers are told by their place, so that cells need no class of their own. */
function headOf(columns: readonly Column[]): string {
  const cells = columns.map(
    ({ heading, markup }) => `<th scope="col">${markup ?? flat(heading)}</th>`,
  );
  return `<thead><tr>${cells.join("")}</tr></thead>`;
}

const numericPlaces = (columns: readonly Column[]): string =>
  columns.flatMap(({ numeric }, place) => (numeric ? [`n${place + 1}`] : [])).join(" ");

/**
 * A table in its own scrolling box, which the keyboard reaches.
 *
 * @param caption markup of the caption; `label` says the same in words and is unique on the page
 * @param rows markup of the rows: arrays of cells, the first one a row heading, or whole markup
 */
export function table(
  label: string,
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly string[] | string)[],
  kind = "",
): string {
  const body = rows.map((row) => (typeof row === "string" ? row : rowOf(row))).join("\n");
  const classes = `${numericPlaces(columns)} ${kind}`.trim();
  return `<div class="box" role="region" tabindex="0" aria-label="${flat(label)}">
<table class="${classes}"><caption>${caption}</caption>${headOf(columns)}
<tbody>${body}</tbody></table></div>`;
}

/** A row whose first cell names it; the end tags of cells go without saying in HTML. */
export const rowOf = ([first = "", ...others]: readonly string[]): string =>
  `<tr><th scope="row">${first}${others.map((cell) => `<td>${cell}`).join("")}</tr>`;

/** A list of typed or fixed sentences; nothing where there are none. */
export const list = (items: readonly string[]): string =>
  items.length === 0 ? "" : `<ul>${items.map((item) => `<li>${item}</li>`).join("\n")}</ul>`;
