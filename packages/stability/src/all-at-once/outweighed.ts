import type { JointWork } from "./joint-problem.ts";

/**
 * Whether a work cannot be worse than another: on level ground, where the two differ by weight
 * alone and what the heavier has more of has its centre between the base lines. The lighter's
 * answer, with that weight on the corners right under it, answers the heavier's, with as much
 * friction allowed or more.
 */
export function outweighs(heavy: JointWork, light: JointWork): boolean {
  const [one, other] = [heavy.problem, light.problem];
  const [more, less] = [one.terms.holding, other.terms.holding];
  const alike =
    heavy.tables === light.tables &&
    one.lines === other.lines &&
    one.pressure === other.pressure &&
    one.laterals === other.laterals &&
    one.terms.combination === other.terms.combination &&
    more.anchors === less.anchors &&
    more.friction === less.friction &&
    one.terms.downslope === 0 &&
    other.terms.downslope === 0;
  const extra = more.weight.W - less.weight.W;
  if (!alike || !(extra > 0)) return false;
  const x = (more.weight.W * more.weight.x - less.weight.W * less.weight.x) / extra;
  const y = (more.weight.W * more.weight.y - less.weight.W * less.weight.y) / extra;
  return one.lines.every(({ nx, ny, distance }) => nx * x + ny * y <= distance);
}
