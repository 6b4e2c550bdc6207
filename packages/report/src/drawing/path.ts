import type { Spot } from "./svg.ts";

const distance = (one: Spot, other: Spot): number => Math.hypot(other.x - one.x, other.y - one.y);

/** Length of a line through spots, in pixels. */
export const lengthOf = (spots: readonly Spot[]): number =>
  spots.slice(1).reduce((sum, spot, place) => sum + distance(spots[place] as Spot, spot), 0);

/** A share of the way along a line: where that is, and the unit normal that points away from `inside`. */
export function along(
  spots: readonly Spot[],
  share: number,
  inside: Spot,
): { readonly spot: Spot; readonly normal: Spot } {
  let left = share * lengthOf(spots);
  let place = 0;
  while (place < spots.length - 2) {
    const piece = distance(spots[place] as Spot, spots[place + 1] as Spot);
    if (left <= piece) break;
    left -= piece;
    place += 1;
  }
  const from = spots[place] ?? inside;
  const to = spots[place + 1] ?? from;
  const piece = distance(from, to) || 1;
  const part = Math.min(1, left / piece);
  const spot = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
  const normal = { x: (to.y - from.y) / piece, y: (from.x - to.x) / piece };
  const outward = normal.x * (spot.x - inside.x) + normal.y * (spot.y - inside.y) >= 0;
  return { spot, normal: outward ? normal : { x: -normal.x, y: -normal.y } };
}
