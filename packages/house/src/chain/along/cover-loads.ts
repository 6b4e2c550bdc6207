import { archComponent, effectiveArea } from "@hoopstay/load";
import type { LoadSet } from "../../review/evaluate.ts";
import {
  coefficientOf,
  componentGroups,
  type NetComponent,
  netComponent,
} from "../component/component-groups.ts";
import type { ChainContext } from "../context.ts";
import type { PurlinLine } from "./purlin-lines.ts";

/** What the cover presses on a line: pressure and width. */
export interface CoverLoad {
  readonly pressure: NetComponent;
  readonly width: number;
}

/** The line of a kind that the cover presses most, near an end, for each load set with the film on. */
export function coverLoads({ evaluation }: ChainContext, lines: readonly PurlinLine[]) {
  const { shell, house } = evaluation;
  const loads = new Map<LoadSet, CoverLoad>();
  for (const group of componentGroups(evaluation, ({ covering }) => covering !== "bare")) {
    const pressed = lines.flatMap(({ part, archShare, width }): CoverLoad[] => {
      const across = width * shell.arc.length;
      const area = effectiveArea.evaluate(house.spacing, across);
      const outside = archComponent(group.table, archShare, true, area);
      if (!part.underCover || !outside) return [];
      const pressure = netComponent(group, outside, "inward", "cover on a purlin near an end");
      return coefficientOf(pressure) > 0 ? [{ pressure, width: across }] : [];
    });
    const most = pressed.reduce<CoverLoad | null>(
      (a, b) => (a && load(a) >= load(b) ? a : b),
      null,
    );
    if (most) for (const set of group.sets) loads.set(set, most);
  }
  return loads;
}

const load = ({ pressure, width }: CoverLoad): number => coefficientOf(pressure) * width;
