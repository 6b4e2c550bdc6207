import type { WindCase } from "@hoopstay/load";

/** Cases that differ only in the even load of a rail and in the inside pressure. */
export interface CaseFamily {
  readonly cases: readonly number[];
  /**
   * Cases that all others are means of: least and greatest even load at least and at greatest inside
   * pressure. At one inside pressure the cases of a family differ by their even load alone, by the
   * same amounts at each, and all that inside pressure does is in proportion to it.
   */
  readonly cornersOf: (evenLoad: (index: number) => number) => readonly number[];
}

/**
 * Cases of a table by what lies unevenly along the rails: the wind along the ridge and whose uplift
 * acts. Across the ridge every coefficient set, either way, loads a rail evenly, and the end walls
 * the same.
 */
export function familiesOf(cases: readonly WindCase[]): CaseFamily[] {
  const families = new Map<unknown, Map<string, number[]>>();
  cases.forEach(({ along, across, vertical }, index) => {
    // Where the uplift of the wind across acts, sets along the ridge differ by nothing on the rails.
    const of = vertical === "along" ? along : (along?.sense ?? 0);
    const kinds = families.get(of) ?? new Map<string, number[]>();
    families.set(of, kinds);
    const kind = `${vertical} ${across !== null}`;
    const list = kinds.get(kind) ?? [];
    kinds.set(kind, list);
    list.push(index);
  });
  return [...families.values()]
    .flatMap((kinds) => [...kinds.values()])
    .map((members) => familyOf(cases, members));
}

function familyOf(cases: readonly WindCase[], members: readonly number[]): CaseFamily {
  const insideOf = (index: number): number => (cases[index] as WindCase).inside;
  const values = members.map(insideOf);
  const [least, greatest] = [Math.min(...values), Math.max(...values)];
  const outer = [...new Set([least, greatest])].map((inside) =>
    members.filter((index) => insideOf(index) === inside),
  );
  return {
    cases: members,
    cornersOf: (evenLoad) => [
      ...new Set(
        outer.flatMap((indices) => {
          const loads = indices.map(evenLoad);
          return [Math.min(...loads), Math.max(...loads)].map(
            (load) => indices[loads.indexOf(load)] as number,
          );
        }),
      ),
    ],
  };
}
