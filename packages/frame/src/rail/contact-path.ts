import { type BentRail, bentRail } from "./bent-rail.ts";
import { type Contact, deflectionRounding, forceRounding } from "./contact.ts";
import { capMargin, margin } from "./margins.ts";
import type { RailOutcome } from "./rail.ts";
import { giving, holding, holdNodes, idle, startSet } from "./support-set.ts";
import { bendRail } from "./three-moment.ts";
import { turnUntilHeld } from "./turn.ts";

/** Where on the path which support takes which part. */
interface Event {
  at: number;
  support: number;
  part: number;
}

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
  const { table, set, preload, held, space, bent } = contact;
  const startForce = new Float64Array(space.x.length);
  const startCouple = new Float64Array(space.x.length);
  const start = { ...space, force: startForce, couple: startCouple, uniform: 0 };
  const startBent = bentRail(bent.x, bent.stiffness);
  startSet(table, set);
  pressAll(contact, start.force);
  const event: Event = { at: 0, support: -1, part: holding };
  let outcome: RailOutcome = "unsettled";
  for (let events = 0; events <= 100 + 20 * table.count; events += 1) {
    if (holdNodes(table, set, preload, held) < 2) {
      const caught = turnUntilHeld(contact, startBent, event.at, event.support);
      if (caught >= 0) {
        set[caught] = holding;
        continue;
      }
      outcome = "not-held";
      break;
    }
    bendRail(start, held, 1, startBent);
    bendRail(space, held, 0, bent);
    if (!nextEvent(contact, startBent, event)) {
      outcome = "held";
      break;
    }
    set[event.support] = event.part;
  }
  preload.fill(0);
  return outcome;
}

/** Presses every holding one-way support, each a little otherwise so that no two leave together. */
function pressAll({ table, set, preload, size }: Contact, startForce: Float64Array): void {
  for (let i = 0; i < table.count; i += 1) {
    if (set[i] !== holding) continue;
    const uneven = 1 + ((((i + 1) * (Math.sqrt(5) - 1)) / 2) % 1);
    const press = Math.min((uneven * size) / table.count, (table.cap[i] as number) * uneven * 0.25);
    const force = (table.side[i] as number) * press;
    const node = table.node[i] as number;
    preload[i] = force;
    startForce[node] = (startForce[node] as number) - force;
  }
}

/** Finds the first event after `event.at`, if there is one before t = 1. */
function nextEvent(contact: Contact, startBent: BentRail, event: Event): boolean {
  const { table, set, bent } = contact;
  const [leastForce, leastWay] = [-forceRounding(contact), -deflectionRounding(contact)];
  const from = event.at;
  let found = false;
  const consider = (i: number, part: number, first: number, last: number, least: number) => {
    if (last >= least) return;
    const at = Math.max(from, first > 0 ? first / (first - last) : 0);
    if (found && at >= event.at) return;
    found = true;
    event.at = at;
    event.support = i;
    event.part = part;
  };
  for (let i = 0; i < table.count; i += 1) {
    if (table.side[i] === 0) continue;
    const [first, last] = [margin(contact, i, startBent, 1), margin(contact, i, bent, 0)];
    if (set[i] !== holding) {
      consider(i, holding, first, last, leastWay);
      continue;
    }
    consider(i, idle, first, last, leastForce);
    if (table.cap[i] === Number.POSITIVE_INFINITY) continue;
    const [below, above] = [capMargin(contact, i, startBent, 1), capMargin(contact, i, bent, 0)];
    consider(i, giving, below, above, leastForce);
  }
  return found;
}
