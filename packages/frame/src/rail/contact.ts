import { type BentRail, bentRail } from "./bent-rail.ts";
import { type HeldNodes, heldNodes } from "./held-nodes.ts";
import { type SupportSet, startSet } from "./support-set.ts";
import type { SupportTable } from "./support-table.ts";
import { type ThreeMomentSpace, threeMomentSpace } from "./three-moment-space.ts";

/** A rail on one-way supports, with the loads of one case: what the searches for the set share. */
export interface Contact {
  readonly table: SupportTable;
  readonly set: SupportSet;
  readonly held: HeldNodes;
  /** Force of each support where the rail is undeflected: zero but at the start of a path. */
  readonly preload: Float64Array;
  readonly space: ThreeMomentSpace;
  readonly bent: BentRail;
  /** Sum of the sizes of all loads, N. */
  size: number;
}

export function contact(x: Float64Array, stiffness: number, table: SupportTable): Contact {
  const set = new Uint8Array(table.count);
  startSet(table, set);
  return {
    table,
    set,
    held: heldNodes(x.length),
    preload: new Float64Array(table.count),
    space: threeMomentSpace(x),
    bent: bentRail(x, stiffness),
    size: 0,
  };
}

/** Rounding allowed to a force or a deflection, as a part of the greatest. */
const rounding = 1e-10;

export const forceRounding = (contact: Contact): number => rounding * contact.size;

export function deflectionRounding({ bent: { deflection } }: Contact): number {
  let greatest = 0;
  for (let node = 0; node < deflection.length; node += 1) {
    greatest = Math.max(greatest, Math.abs(deflection[node] as number));
  }
  return rounding * greatest;
}
