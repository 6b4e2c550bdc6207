import { label, line, type Spot } from "./svg.ts";

const tick = ({ x, y }: Spot): string => line({ x: x - 4, y: y + 4 }, { x: x + 4, y: y - 4 });

/** A dimension line across the page, its words above it. */
export function across(fromX: number, toX: number, y: number, words: string): string {
  const from = { x: fromX, y };
  const to = { x: toX, y };
  const middle = { x: (fromX + toX) / 2, y: y - 5 };
  return `<g class="dim">${line(from, to)}${tick(from)}${tick(to)}</g>${label(middle, words, "middle")}`;
}

/** A dimension line up the page, its words beside it, a share of the way up. */
export function upright(
  x: number,
  fromY: number,
  toY: number,
  words: string,
  side: "left" | "right",
  share = 0.5,
): string {
  const from = { x, y: fromY };
  const to = { x, y: toY };
  const beside = { x: x + (side === "left" ? -7 : 7), y: fromY + share * (toY - fromY) + 4 };
  const anchor = side === "left" ? "end" : "start";
  return `<g class="dim">${line(from, to)}${tick(from)}${tick(to)}</g>${label(beside, words, anchor, "h")}`;
}
