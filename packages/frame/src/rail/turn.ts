import type { BentRail } from "./bent-rail.ts";
import type { Contact } from "./contact.ts";
import { margin } from "./margins.ts";
import type { PathEvent } from "./path-event.ts";
import { idle } from "./support-set.ts";

/**
 * A rail held at one node only, because a support elsewhere has just left its part, turns about that
 * node the way the leaver lets it, at unchanged forces. The leaver goes on, and what holds at the node
 * stays there: none of these stops the turn.
 *
 * @param startBent the rail under the start loads, on the set before the leaver left
 * @param event the leaver, and its place on the path from there to the true loads
 * @returns the support that stops the turn, or -1 where none does
 */
export function turnUntilHeld(
  contact: Pick<Contact, "table" | "set" | "held" | "preload" | "bent">,
  startBent: BentRail,
  { at: t, support: leaver }: Pick<PathEvent, "at" | "support">,
): number {
  const { table, set, held, bent } = contact;
  const pivot = bent.x[held.nodes[0] as number] as number;
  const arm = (i: number): number => (bent.x[table.node[i] as number] as number) - pivot;
  const onward = (i: number): number => (table.side[i] as number) * (set[i] === idle ? 1 : -1);
  const turn = onward(leaver) / arm(leaver);
  let [caught, least] = [-1, Number.POSITIVE_INFINITY];
  for (let i = 0; i < table.count; i += 1) {
    const rate = onward(i) * turn * arm(i);
    if (rate >= 0) continue;
    const left = (1 - t) * margin(contact, i, startBent, 1) + t * margin(contact, i, bent, 0);
    const needed = Math.max(0, left) / -rate;
    if (needed < least) [caught, least] = [i, needed];
  }
  return caught;
}
