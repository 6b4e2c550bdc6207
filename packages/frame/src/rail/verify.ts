import type { Contact } from "./contact.ts";
import { margin } from "./margins.ts";
import type { RailOutcome } from "./rail.ts";
import { holding } from "./support-set.ts";

/** Imbalance allowed to a result, as a part of the sum of the sizes of all loads. */
const allowed = 1e-9;

/**
 * Checks a result from the outside: the given forces of the supports balance the loads in sum and
 * about the left end, and no idle or giving support should hold. A result that fails is unsettled.
 */
export function checkedOutcome(contact: Contact, reactions: Float64Array): RailOutcome {
  const { space, table, set, bent, size } = contact;
  const { x, force, couple, uniform } = space;
  const length = x[x.length - 1] as number;
  let up = uniform * length;
  let turning = (uniform * length * length) / 2;
  for (let node = 0; node < x.length; node += 1) {
    up += force[node] as number;
    turning += (force[node] as number) * (x[node] as number) + (couple[node] as number);
  }
  let [greatest, astray] = [0, 0];
  for (let i = 0; i < table.count; i += 1) {
    const node = table.node[i] as number;
    up += reactions[i] as number;
    turning += (reactions[i] as number) * (x[node] as number);
    greatest = Math.max(greatest, Math.abs(bent.deflection[node] as number));
    if (set[i] !== holding) astray = Math.min(astray, margin(contact, i, bent, 0));
  }
  const balanced = Math.abs(up) <= allowed * size && Math.abs(turning) <= allowed * size * length;
  return balanced && astray >= -allowed * greatest ? "held" : "unsettled";
}
