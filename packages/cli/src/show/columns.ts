import { visible } from "./visible.ts";

const width = 80;
const indent = "  ";

/** One line of a table: what it is about, and a cell for each column; a heading has no cells. */
export interface TableRow {
  readonly about: string;
  /** Stands behind it, and is not cut. */
  readonly after?: string;
  readonly cells: readonly string[];
}

const cutTo = (text: string, size: number): string =>
  text.length > size ? `${text.slice(0, size - 1)}~` : text;

/**
 * A table as wide as the screen: the words on the left, columns of equal width set to the right.
 *
 * @param most widest the words may be
 */
export function tableLines(rows: readonly TableRow[], most: number): string[] {
  const columns = Math.max(1, ...rows.map(({ cells }) => cells.length));
  const whole = ({ about, after = "" }: TableRow): string => `${visible(about)}${after}`;
  const set = rows.filter(({ cells }) => cells.length > 0);
  const words = Math.min(most, Math.max(0, ...set.map((row) => whole(row).length)));
  const each = Math.min(18, Math.floor((width - indent.length - words) / columns) - 1);
  return rows.map(({ about, after = "", cells }) => {
    if (cells.length === 0) return indent + cutTo(visible(about), width - indent.length);
    const row = cells.map((cell) => cutTo(visible(cell), each).padStart(each + 1)).join("");
    const start = `${cutTo(visible(about), words - after.length)}${after}`.padEnd(words);
    return `${indent}${start}${row}`.trimEnd();
  });
}
