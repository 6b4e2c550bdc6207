import type { BentRail } from "./bent-rail.ts";
import type { Contact } from "./contact.ts";
import { margin } from "./margins.ts";
import { holding, idle } from "./support-set.ts";

/**
 * A rail held at one node only, because `leaver` has just left its part, turns about that node the
 * way the leaver lets it, at unchanged forces.
 *
 * @param startBent the rail under the start loads, on the set before the leaver left
 * @param t place on the path from there to the true loads
 * @returns the support that stops the turn, or -1 where none does
 */
export function turnUntilHeld(
  contact: Contact,
  startBent: BentRail,
  t: number,
  leaver: number,
): number {
  const { table, set, held, bent } = contact;
  if (held.count === 0 || leaver < 0) return -1;
  const pivot = bent.x[held.nodes[0] as number] as number;
  const arm = (i: number): number => (bent.x[table.node[i] as number] as number) - pivot;
  const onward = (i: number): number => (table.side[i] as number) * (set[i] === idle ? 1 : -1);
  const turn = onward(leaver) / arm(leaver);
  let [caught, least] = [-1, Number.POSITIVE_INFINITY];
  for (let i = 0; i < table.count; i += 1) {
    if (i === leaver || set[i] === holding) continue;
    const rate = onward(i) * turn * arm(i);
    if (rate >= 0) continue;
    const left = (1 - t) * margin(contact, i, startBent, 1) + t * margin(contact, i, bent, 0);
    const needed = Math.max(0, left) / -rate;
    if (needed < least) [caught, least] = [i, needed];
  }
  return caught;
}
