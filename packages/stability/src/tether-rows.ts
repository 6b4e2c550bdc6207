import type { Anchor } from "./holding.ts";
import { type ActionTable, stride } from "./outcome.ts";
import { partsAlong, type TetherParts } from "./slide.ts";

/**
 * What the tethers do along the wind of every row of a table on level ground, worked out once for
 * all weights and combinations: only the scale on the allowable pulls differs. Rows as in
 * `SlideRow`.
 */
export class TetherRows {
  private readonly parts: TetherParts[] = [];

  constructor({ components, count }: ActionTable, anchors: readonly Anchor[]) {
    for (let row = 0; row < 2 * count; row += 1) {
      const at = (row >> 1) * stride;
      const fx = components[at + (row % 2 === 1 ? 6 : 0)] as number;
      const fy = components[at + 1] as number;
      const h = Math.sqrt(fx * fx + fy * fy);
      const size = h > 0 ? h : 1;
      this.parts.push(partsAlong(anchors, 1, fx / size, fy / size));
    }
  }

  at(row: number, scale: number): TetherParts {
    const known = this.parts[row] as TetherParts;
    if (scale === 1) return known;
    const { against, left, right, middle } = known;
    return {
      against: scale * against,
      left: scale * left,
      right: scale * right,
      middle: scale * middle,
    };
  }
}
