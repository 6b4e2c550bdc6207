import { label, px, type Spot } from "./svg.ts";

/**
 * A north needle.
 *
 * @param topBearing bearing of the top of the drawing, rad clockwise from north
 * @param size of the needle; 1 is 44 pixels long
 */
export function compass({ x, y }: Spot, topBearing: number, size = 1): string {
  const needle = `<path class="f" d="M0,-24L6,8L0,3L-6,8z"/><path class="o" d="M0,3V20"/>`;
  const head = {
    x: x - 34 * size * Math.sin(topBearing),
    y: y - 34 * size * Math.cos(topBearing) + 4,
  };
  const turn = px((-topBearing * 180) / Math.PI);
  const scale = size === 1 ? "" : ` scale(${size})`;
  const placed = `<g transform="translate(${px(x)} ${px(y)}) rotate(${turn})${scale}">${needle}</g>`;
  return `${placed}${label(head, "N", "middle", "h")}`;
}
