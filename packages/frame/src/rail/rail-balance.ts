import { type Argument, derived, type Formula, sumOf } from "@hoopstay/core";
import { anchorsOf, momentAboutRailEnd, type WorkedFormula } from "./rail-formulas.ts";
import type { RailSolution } from "./rail-reactions.ts";

/** Both sides of a balance; their values are equal where the rail is in equilibrium. */
export interface Balance {
  /** What the loads, the ground and two-way supports do. */
  readonly loads: WorkedFormula;
  /** What the anchors do against it. */
  readonly anchors: WorkedFormula;
}

/** Sum of forces: what lifts the rail, less what weighs on it, is what all anchors hold. */
export function forceBalance(solution: RailSolution): Balance {
  const cited = derived("sum of vertical forces on the rail");
  const loads = actions(solution).map(({ force, ...named }) => term("F", named, force, "force"));
  const anchors = anchorsOf(solution).map(({ reaction }, i) =>
    term("T", { index: i + 1, name: `tension of anchor ${i + 1}` }, 0 - reaction, "force"),
  );
  return {
    loads: sum("lift-on-anchors", "U", "lift left for the anchors", "force", loads, cited),
    anchors: sum("sum-of-tensions", "T_sum", "sum of all tensions", "force", anchors, cited),
  };
}

/** Sum of moments about the rail's left end, counter-clockwise, with the levers of each force. */
export function momentBalance(
  solution: RailSolution,
): Balance & { readonly levers: readonly WorkedFormula[] } {
  const cited = derived("sum of moments about the rail's left end");
  const lever = (force: number, x: number): WorkedFormula => ({
    formula: momentAboutRailEnd as unknown as Formula,
    inputs: [force, x],
  });
  const acting = actions(solution);
  const anchors = anchorsOf(solution);
  const levers = [
    ...acting.map(({ force, x }) => lever(force, x)),
    ...anchors.map(({ reaction, x }) => lever(0 - reaction, x)),
  ];
  const moments = levers.map(({ inputs: [force = 0, x = 0] }) => force * x);
  const loads = acting.map((named, i) => term("M", named, moments[i] as number, "moment"));
  const couples = solution.loads.couples.map(({ couple }, i) =>
    term("C", { index: i + 1, name: `couple ${i + 1} on the rail` }, couple, "moment"),
  );
  const held = anchors.map((_, i) =>
    term(
      "M_T",
      { index: i + 1, name: `moment of the tension of anchor ${i + 1}` },
      moments[acting.length + i] as number,
      "moment",
    ),
  );
  const [id, symbol] = ["turning-on-anchors", "M_U"];
  const name = "moment left for the anchors";
  return {
    levers,
    loads: sum(id, symbol, name, "moment", [...loads, ...couples], cited),
    anchors: sum("sum-of-anchor-moments", "M_sum", "moment of all tensions", "moment", held, cited),
  };
}

interface Action {
  readonly index: number;
  readonly name: string;
  readonly force: number;
  readonly x: number;
}

/** Every force on the rail but those of anchors. */
function actions({ rail, loads, supports }: RailSolution): Action[] {
  const { uniform, forces } = loads;
  const pushes = supports.filter(({ kind }) => kind !== "anchor");
  return [
    { name: "uniform load, at mid-length", force: uniform * rail.length, x: rail.length / 2 },
    ...forces.map(({ force, x }, i) => ({ name: `load ${i + 1} on the rail`, force, x })),
    ...pushes.map(({ kind, reaction, x }) => ({
      name: kind === "ground" ? "push of the ground" : "force of a two-way support",
      force: reaction,
      x,
    })),
  ].map((action, i) => ({ ...action, index: i + 1 }));
}

interface Term extends Argument {
  readonly value: number;
}

const term = (
  letter: string,
  { index, name }: { readonly index: number; readonly name: string },
  value: number,
  measure: "force" | "moment",
): Term => ({ symbol: `${letter}_${index}`, name, measure, value });

function sum(
  id: string,
  symbol: string,
  name: string,
  measure: "force" | "moment",
  terms: readonly Term[],
  citation: ReturnType<typeof derived>,
): WorkedFormula {
  const named = terms.map(({ value: _, ...argument }) => argument);
  return {
    formula: sumOf(id, symbol, name, measure, named, citation),
    inputs: terms.map(({ value }) => value),
  };
}
