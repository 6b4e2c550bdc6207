import { label, px, type Spot } from "./svg.ts";

/**
 * North on a plan whose front is on the right of the page.
 *
 * @param frontBearing bearing of the front, rad clockwise from north
 */
export function compass({ x, y }: Spot, frontBearing: number): string {
  const turn = 90 - (frontBearing * 180) / Math.PI;
  const needle = `<path class="f" d="M0,-24L6,8L0,3L-6,8z"/><path class="o" d="M0,3V20"/>`;
  const angle = (turn * Math.PI) / 180;
  const head = { x: x + 34 * Math.sin(angle), y: y - 34 * Math.cos(angle) + 4 };
  const placed = `<g transform="translate(${px(x)} ${px(y)}) rotate(${px(turn)})">${needle}</g>`;
  return `${placed}${label(head, "N", "middle", "h")}`;
}
