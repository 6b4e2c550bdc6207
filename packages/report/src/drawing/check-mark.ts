import { at, px, type Spot } from "./svg.ts";

const corners: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  lift: [
    [0, -6],
    [5.5, 4.5],
    [-5.5, 4.5],
  ],
  "tip-right": [
    [6, 0],
    [-4.5, 5.5],
    [-4.5, -5.5],
  ],
  "tip-left": [
    [-6, 0],
    [4.5, 5.5],
    [4.5, -5.5],
  ],
  "tip-front": [
    [0, -6],
    [6, 0],
    [0, 6],
    [-6, 0],
  ],
  "tip-back": [
    [0, 6],
    [5.5, -4.5],
    [-5.5, -4.5],
  ],
  slide: [
    [-5, -5],
    [5, -5],
    [5, 5],
    [-5, 5],
  ],
};

/** The shape that stands for a check; filled for the one that gives way first. */
export function checkMark(check: string, { x, y }: Spot, filled: boolean): string {
  const shape = corners[check];
  const kind = filled ? "f" : "o";
  if (!shape) return `<circle class="${kind}" cx="${px(x)}" cy="${px(y)}" r="5"/>`;
  const path = shape.map(([dx, dy]) => at({ x: x + dx, y: y + dy })).join("L");
  return `<path class="${kind}" d="M${path}z"/>`;
}
