import { bentRail } from "./bent-rail.ts";
import type { Contact } from "./contact.ts";
import { nextEvent } from "./path-event.ts";
import { pressSupports } from "./press-supports.ts";
import type { RailOutcome } from "./rail.ts";
import { holding, holdNodes, startSet } from "./support-set.ts";
import { bendRail } from "./three-moment.ts";
import { turnUntilHeld } from "./turn.ts";

/**
 * The sure search. It starts from a rail that lies straight with every support pressed into its
 * range, its loads just balancing those forces, and lets start loads and pressing fade out while the
 * true loads grow, linearly in t from 0 to 1. On the way supports change their part one at a time.
 *
 * Why it ends: at each t the rail minimises a convex energy, so the t at which one set of supports
 * is right form one interval; no set comes twice and there are finitely many. Why it can say "not
 * held": loads that the supports can balance form a convex set, the start lies inside, and a rail
 * that turns without end marks its border. Rounding could still make sets recur: then the count of
 * events ends it as unsettled.
 */
export function followPath(contact: Contact): RailOutcome {
  startSet(contact.table, contact.set);
  const outcome = followEvents(contact);
  contact.preload.fill(0);
  return outcome;
}

function followEvents(contact: Contact): RailOutcome {
  const { table, set, preload, held, space, bent } = contact;
  const startForce = new Float64Array(space.x.length);
  const startCouple = new Float64Array(space.x.length);
  const start = { ...space, force: startForce, couple: startCouple, uniform: 0 };
  const startBent = bentRail(bent.x, bent.stiffness);
  pressSupports(contact, startForce);
  if (holdNodes(table, set, preload, held) < 2) return "not-held";
  let at = 0;
  for (let events = 0; events <= 100 + 20 * table.count; events += 1) {
    bendRail(start, held, 1, startBent);
    bendRail(space, held, 0, bent);
    const event = nextEvent(contact, startBent, at);
    if (event === undefined) return "held";
    at = event.at;
    set[event.support] = event.part;
    if (holdNodes(table, set, preload, held) < 2) {
      const caught = turnUntilHeld(contact, startBent, event);
      if (caught < 0) return "not-held";
      set[caught] = holding;
      holdNodes(table, set, preload, held);
    }
  }
  return "unsettled";
}
