import { type Contact, contact } from "../../packages/frame/src/rail/contact.ts";
import { railNodes } from "../../packages/frame/src/rail/rail-nodes.ts";
import { supportTable } from "../../packages/frame/src/rail/support-table.ts";
import type { LoadedRail } from "./arbitrary-rail.ts";

/** A rail with its loads, ready to be searched. */
export function prepared({ rail, loads, supports }: LoadedRail): Contact {
  const places = [...loads.forces, ...loads.couples].map(({ x }) => x);
  const { x, ofPlace, ofSupport } = railNodes(rail, places, supports);
  const made = contact(x, rail.stiffness, supportTable(supports, ofSupport));
  const { space } = made;
  space.uniform = loads.uniform;
  made.size = Math.abs(loads.uniform) * rail.length;
  const add = (to: Float64Array, place: number, value: number) => {
    const node = ofPlace[place] ?? NaN;
    to[node] = (to[node] ?? NaN) + value;
  };
  for (const [i, { force }] of loads.forces.entries()) {
    add(space.force, i, force);
    made.size += Math.abs(force);
  }
  for (const [i, { couple }] of loads.couples.entries()) {
    add(space.couple, loads.forces.length + i, couple);
    made.size += Math.abs(couple) / rail.length;
  }
  return made;
}
