import type { BentRail } from "./bent-rail.ts";
import type { HeldNodes } from "./held-nodes.ts";
import { holding, idle, type SupportSet } from "./support-set.ts";
import type { SupportTable } from "./support-table.ts";

/**
 * Supports with what they have where the rail is undeflected. `preload` is the force of each, N, up
 * positive; `part` is how much of it is at work, 0 to 1.
 */
export interface PreloadedSupports {
  readonly table: SupportTable;
  readonly set: SupportSet;
  readonly held: HeldNodes;
  readonly preload: Float64Array;
}

/** Force of a one-way support in its own direction, N, while it holds. */
export function effort(
  { table, held, preload }: PreloadedSupports,
  i: number,
  bent: BentRail,
  part: number,
): number {
  const side = table.side[i] as number;
  const node = table.node[i] as number;
  const stiffness = table.stiffness[i] as number;
  if (stiffness === Number.POSITIVE_INFINITY) {
    return side * ((bent.reaction[node] as number) - part * (held.preload[node] as number));
  }
  return side * (part * (preload[i] as number) - stiffness * (bent.deflection[node] as number));
}

/**
 * How far a one-way support is from leaving its part; negative where it has. While it holds, the
 * force it still has, N; else the way to the place where it holds again, m.
 */
export function margin(
  supports: PreloadedSupports,
  i: number,
  bent: BentRail,
  part: number,
): number {
  const { table, set, preload } = supports;
  if (set[i] === holding) return effort(supports, i, bent, part);
  const side = table.side[i] as number;
  const flexibility = table.flexibility[i] as number;
  const start = part * side * (preload[i] as number) * flexibility;
  const pressed = start - side * (bent.deflection[table.node[i] as number] as number);
  return set[i] === idle ? -pressed : pressed - (table.cap[i] as number) * flexibility;
}

/** How far a holding support is from its cap, N. */
export const capMargin = (
  supports: PreloadedSupports,
  i: number,
  bent: BentRail,
  part: number,
): number => (supports.table.cap[i] as number) - effort(supports, i, bent, part);
