import { type Contact, deflectionRounding, forceRounding } from "./contact.ts";
import { capMargin, margin } from "./margins.ts";
import { giving, holding, holdNodes, idle } from "./support-set.ts";
import { bendRail } from "./three-moment.ts";

/** Rounds after which the sure search takes over. */
const rounds = 12;

/**
 * The quick search: bends the rail on the set at hand, changes the part of every support that has
 * left its own, and so on until none has. A set that it ends with is right, since no other set
 * meets all conditions; but it may end with none.
 *
 * @returns whether it ended with a set; `contact.bent` then is the rail on it
 */
export function settleAtOnce(contact: Contact): boolean {
  const { table, set, preload, held, space, bent } = contact;
  for (let round = 0; round < rounds; round += 1) {
    if (holdNodes(table, set, preload, held) < 2) return false;
    bendRail(space, held, 0, bent);
    if (!changeLeavers(contact)) return true;
  }
  return false;
}

/** Changes every support that has left its part; returns whether any has. */
function changeLeavers(contact: Contact): boolean {
  const { table, set, bent } = contact;
  const [leastForce, leastWay] = [-forceRounding(contact), -deflectionRounding(contact)];
  let changed = false;
  for (let i = 0; i < table.count; i += 1) {
    if (table.side[i] === 0) continue;
    if (set[i] === holding) {
      if (margin(contact, i, bent, 0) < leastForce) set[i] = idle;
      else if (capMargin(contact, i, bent, 0) < leastForce) set[i] = giving;
      else continue;
    } else if (margin(contact, i, bent, 0) < leastWay) set[i] = holding;
    else continue;
    changed = true;
  }
  return changed;
}
