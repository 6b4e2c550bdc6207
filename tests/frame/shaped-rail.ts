import type { RailSupport } from "@hoopstay/frame";
import { type BentRail, bentRail } from "../../packages/frame/src/rail/bent-rail.ts";
import { type Contact, contact } from "../../packages/frame/src/rail/contact.ts";
import { supportTable } from "../../packages/frame/src/rail/support-table.ts";

/** One support at each node, the nodes at 0, 1, 2 m and so on unless said, nothing bent yet. */
export function supportAtEach(
  supports: readonly Omit<RailSupport, "x">[],
  x: readonly number[] = [...supports.keys()],
): Contact {
  const placed = supports.map((support, i) => ({ ...support, x: x[i] ?? NaN }));
  const table = supportTable(placed, Int32Array.from(supports.keys()));
  return contact(Float64Array.from(x), 1, table);
}

/** A rail of the same nodes that lies as told. */
export function lyingAt({ bent: { x } }: Contact, deflection: readonly number[]): BentRail {
  const bent = bentRail(x, 1);
  bent.deflection.set(deflection);
  return bent;
}
