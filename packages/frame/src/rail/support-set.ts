import type { HeldNodes } from "./held-nodes.ts";
import type { SupportTable } from "./support-table.ts";

/** Parts of supports, as kept in a set: the order of the names in `SupportPart`. */
export const idle = 0;
export const holding = 1;
export const giving = 2;

/** A set of supports at work: the part of each. */
export type SupportSet = Uint8Array;

/**
 * The set to start from: every support holds. Of two rigid supports at one place, an anchor and the
 * ground, only the first does, or their share would be open.
 */
export function startSet({ count, node, flexibility }: SupportTable, set: SupportSet): void {
  for (let i = 0; i < count; i += 1) {
    set[i] = holding;
    if ((flexibility[i] as number) > 0) continue;
    for (let j = 0; j < i; j += 1) if (node[j] === node[i] && flexibility[j] === 0) set[i] = idle;
  }
}

/**
 * What holds the nodes under a set of supports.
 *
 * @param preload force of each holding support where the rail is undeflected, N, up positive
 * @returns how many nodes are held; under two, the rail can turn or move off
 */
export function holdNodes(
  { count, node, side, stiffness, cap }: SupportTable,
  set: SupportSet,
  preload: Float64Array,
  held: HeldNodes,
): number {
  held.stiffness.fill(0);
  held.constant.fill(0);
  held.preload.fill(0);
  for (let i = 0; i < count; i += 1) {
    const at = node[i] as number;
    if (set[i] === holding) {
      held.stiffness[at] = (held.stiffness[at] as number) + (stiffness[i] as number);
      if (stiffness[i] !== Number.POSITIVE_INFINITY) {
        held.preload[at] = (held.preload[at] as number) + (preload[i] as number);
      }
    } else if (set[i] === giving) {
      held.constant[at] = (held.constant[at] as number) + (side[i] as number) * (cap[i] as number);
    }
  }
  held.count = 0;
  for (let at = 0; at < held.stiffness.length; at += 1) {
    if ((held.stiffness[at] as number) > 0) held.nodes[held.count++] = at;
  }
  return held.count;
}
