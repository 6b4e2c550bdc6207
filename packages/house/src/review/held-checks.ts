import {
  type ActionTable,
  type CheckTerms,
  type CombinationId,
  combinations,
  type Extremes,
  extremesOf,
  type Governing,
  governingOutcomes,
  type WorstOfChecks,
  worstOfChecks,
} from "@hoopstay/stability";
import type { Hold, HoldId } from "./hold.ts";

/** Every check of one table in one hold and combination; outcomes are written out when read. */
export class HeldChecks {
  private written: readonly Governing[] | undefined;

  constructor(
    readonly hold: HoldId,
    readonly combination: CombinationId,
    readonly worst: WorstOfChecks,
    private readonly terms: CheckTerms,
    private readonly table: ActionTable,
    private readonly extremes: Extremes,
  ) {}

  get checks(): readonly Governing[] {
    this.written ??= governingOutcomes(this.worst, this.terms, this.table, this.extremes);
    return this.written;
  }
}

/**
 * The checks of a table in every hold and combination.
 *
 * @param rows the table's numbers, where they stand already
 * @param pressure stands in for the design pressure where the table holds forces
 */
export function checkHolds(
  holds: readonly Hold[],
  table: ActionTable,
  rows: ActionTable,
  pressure?: number,
): HeldChecks[] {
  const found: HeldChecks[] = [];
  for (const { id, terms, lines, holdings } of holds) {
    const extremes = extremesOf(rows, lines, holdings[0]?.anchors);
    for (const combination of combinations) {
      const design = terms[combination.id];
      const at = pressure === undefined ? design : { ...design, pressure };
      const worst = worstOfChecks(at, table, extremes);
      found.push(new HeldChecks(id, combination.id, worst, at, table, extremes));
    }
  }
  return found;
}

export function heldIn(
  found: readonly HeldChecks[],
  hold: HoldId,
  combination: CombinationId,
): readonly Governing[] {
  const held = found.find((one) => one.hold === hold && one.combination === combination);
  if (!held) throw new Error(`no checks for ${hold} ${combination}`);
  return held.checks;
}
