import { caseStride } from "@hoopstay/load";
import type { Belongs } from "../../model/part.ts";
import type { LoadSet } from "../../review/evaluate.ts";

/** Load cases in which the same parts of the house are gone, so that the same weight holds it. */
export interface HeldRows {
  readonly gone: readonly Belongs[];
  readonly count: number;
  readonly components: Float64Array;
  /** First row of each load set among them, by the set's number. */
  readonly firstOf: ReadonlyMap<number, number>;
}

function goneIn({ covering, ends }: LoadSet): Belongs[] {
  const gone: Belongs[] = covering === "bare" ? ["film"] : [];
  if (!ends.front) gone.push("front");
  if (!ends.back) gone.push("back");
  return gone;
}

/** The load cases of some sets, those together that the same weight has to stand. */
export function heldRows(sets: readonly LoadSet[]): HeldRows[] {
  const groups = new Map<string, { gone: Belongs[]; numbers: number[] }>();
  sets.forEach((set, number) => {
    const gone = goneIn(set);
    const key = gone.join(" ");
    const group = groups.get(key) ?? { gone, numbers: [] };
    group.numbers.push(number);
    groups.set(key, group);
  });
  return [...groups.values()].map(({ gone, numbers }) => {
    const firstOf = new Map<number, number>();
    const tables = numbers.map((number) => (sets[number] as LoadSet).table);
    let count = 0;
    tables.forEach((table, place) => {
      firstOf.set(numbers[place] as number, count);
      count += table.count;
    });
    const components = new Float64Array(count * caseStride);
    let at = 0;
    for (const table of tables) {
      components.set(table.components.subarray(0, table.count * caseStride), at);
      at += table.count * caseStride;
    }
    return { gone, count, components, firstOf };
  });
}
