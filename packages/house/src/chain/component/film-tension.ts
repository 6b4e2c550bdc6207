import { derived, formula } from "@hoopstay/core";
import { archComponent, flatArea } from "@hoopstay/load";
import type { Worksheet } from "@hoopstay/strength";
import type { ChainContext } from "../context.ts";
import {
  coefficientOf,
  componentGroups,
  type NetComponent,
  netComponent,
  workPressure,
} from "./component-groups.ts";

const filmTension = formula({
  id: "film-tension",
  symbol: "t",
  name: "pull of film that hangs from its edges, per length of edge",
  measure: "force-per-length",
  arguments: [
    ["p", "net pressure toward the film", "pressure"],
    ["R", "greatest radius of the shell's arcs", "length"],
  ],
  expression: "max(0, -p) * R",
  citation: derived("film held at its edges only: a ring under even pressure"),
  evaluate: (p, radius) => Math.max(0, -p) * radius,
});

/** Shares of the arch that stand for an outer quarter and for the centre half. */
const quarterAndCentre = [0.1, 0.5] as const;

/**
 * Film lifted off its hoops near an end of the house, where suction is greatest, for every group of
 * load sets with the film on. Edges farther in carry less.
 */
export function liftedFilms({ evaluation }: ChainContext): NetComponent[] {
  return componentGroups(evaluation, ({ covering }) => covering !== "bare").map((group) =>
    quarterAndCentre
      .map((share) => {
        const outside = archComponent(group.table, share, true, flatArea);
        if (!outside) throw new Error("a covered arch has components");
        return netComponent(group, outside, "outward", "film near an end of the house");
      })
      .reduce((a, b) => (coefficientOf(b) < coefficientOf(a) ? b : a)),
  );
}

/** Pull per length of edge, N/m, at a factored K_d q_h, on a sheet. */
export const workTension = (
  sheet: Worksheet,
  q: number,
  film: NetComponent,
  radius: number,
): number => sheet.work(filmTension, [workPressure(sheet, q, film), radius]);
