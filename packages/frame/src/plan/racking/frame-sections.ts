import type { FrameElement } from "./frame-element.ts";
import type { FrameSection } from "./plan-frame.ts";

/**
 * Cross-sections of a member: its first end, where its moment peaks between the ends, its last end.
 *
 * @param ends forces and couples on its two ends, in its axes
 */
export function sectionsOf(element: FrameElement, ends: readonly number[]): FrameSection[] {
  const { length: h, along, acrossFrom: q, acrossTo } = element;
  const [axial, shear, moment] = [-(ends[0] as number), ends[1] as number, -(ends[2] as number)];
  const rise = (acrossTo - q) / h;
  const at = (way: number): FrameSection => ({
    at: way,
    axial: axial - along * way,
    shear: shear + way * (q + (way * rise) / 2),
    moment: moment + way * (shear + way * (q / 2 + (way * rise) / 6)),
  });
  const root = Math.sqrt(Math.max(0, q * q - 2 * rise * shear));
  const stable = -q - (q < 0 ? -root : root);
  const peaks = [(2 * shear) / stable, stable / rise].filter((way) => way > 0 && way < h);
  return [at(0), ...peaks.sort((a, b) => a - b).map(at), at(h)];
}
