import type { Contact } from "./contact.ts";
import { holding } from "./support-set.ts";

/**
 * Presses every holding one-way support, each a little otherwise so that no two leave together: with
 * one to two even shares of the loads, but not over half of its cap. `startForce` takes the loads that
 * balance this, with the rail undeflected.
 */
export function pressSupports(
  { table, set, preload, size }: Pick<Contact, "table" | "set" | "preload" | "size">,
  startForce: Float64Array,
): void {
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
