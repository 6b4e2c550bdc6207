import { label, type Spot } from "./svg.ts";

const signWidth = 6.9;
const lineHeight = 14;

/** Words wanted at a spot: to its left, about it or to its right, by the sign of `side`. */
export interface Wanted {
  readonly spot: Spot;
  readonly words: string;
  readonly side: number;
}

/** Labels kept within the width of a drawing, each moved down where another one stands already. */
export function apart(wanted: readonly Wanted[], width: number): string {
  const taken: { left: number; right: number; y: number }[] = [];
  return wanted
    .map(({ spot, words, side }) => {
      const size = signWidth * words.length;
      const from = Math.abs(side) < 0.3 ? spot.x - size / 2 : side < 0 ? spot.x - size : spot.x;
      const left = Math.max(3, Math.min(width - 3 - size, from));
      const right = left + size;
      let { y } = spot;
      while (
        taken.some(
          (one) => left < one.right && right > one.left && Math.abs(y - one.y) < lineHeight,
        )
      )
        y += 1;
      taken.push({ left, right, y });
      return label({ x: left, y }, words, "start", "h");
    })
    .join("");
}
