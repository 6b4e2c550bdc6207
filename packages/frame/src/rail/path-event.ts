import type { BentRail } from "./bent-rail.ts";
import { type Contact, deflectionRounding, forceRounding } from "./contact.ts";
import { capMargin, margin } from "./margins.ts";
import { giving, holding, idle } from "./support-set.ts";

/** Where on the path, 0 to 1, which support takes which part. */
export interface PathEvent {
  readonly at: number;
  readonly support: number;
  readonly part: number;
}

/**
 * The first event from the place `from` on, if there is one before the path's end; of two at one
 * place the first support's.
 *
 * @param startBent the rail at the start of the path, on the set at hand; at its end it is
 *   `contact.bent`, and between them all is linear
 */
export function nextEvent(
  contact: Contact,
  startBent: BentRail,
  from: number,
): PathEvent | undefined {
  const { table, set, bent } = contact;
  const [leastForce, leastWay] = [-forceRounding(contact), -deflectionRounding(contact)];
  let event: PathEvent | undefined;
  const consider = (support: number, part: number, first: number, last: number, least: number) => {
    if (last >= least) return;
    const at = Math.max(from, first > 0 ? first / (first - last) : 0);
    if (event === undefined || at < event.at) event = { at, support, part };
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
  return event;
}
