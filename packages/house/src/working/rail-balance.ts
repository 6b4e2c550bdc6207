import { type Chapter, derived, formula, taken } from "@hoopstay/core";
import { RailSolver, type RailSupport } from "@hoopstay/frame";
import { caseStride } from "@hoopstay/load";
import type { RailAnchor } from "../layout/layout.ts";
import { complianceOf, onSide, sineOf } from "../rail-pull/anchor-pulls.ts";
import { railUplift, sideSign } from "../rail-pull/case-on-rails.ts";
import { forcesOf, type RailLoad, type RailLoads } from "../rail-pull/rail-loads.ts";
import { uprightStiffness } from "../rail-pull/tether.ts";
import { factoredWeight } from "./holding-steps.ts";
import { mustAgree } from "./must-agree.ts";
import { workOnce } from "./work-once.ts";

const railWeight = formula({
  id: "rail-weight",
  symbol: "D_r",
  name: "weight on one rail",
  measure: "force",
  arguments: [
    ["D_n", "factored weight normal to the ground", "force"],
    ["n", "1 for the right rail, -1 for the left", "ratio"],
    ["x", "place across of the weight, right is plus", "length"],
    ["b", "span, centre to centre of the feet", "length"],
  ],
  expression: "D_n * (1 / 2 + n * x / b)",
  citation: derived("lever rule across the two rails"),
  evaluate: (weight, side, x, span) => weight * (1 / 2 + (side * x) / span),
});

const anchorBalance = formula({
  id: "anchor-balance",
  symbol: "T_v",
  name: "upright pull: what lifts the rail, less what else holds it",
  measure: "force",
  arguments: [
    ["gamma_W", "wind factor of the combination", "ratio"],
    ["F_rail", "uplift of the rail", "force"],
    ["D_r", "weight on the rail", "force"],
    ["B_r", "fixed ballast, less what the slope lifts", "force"],
    ["N_r", "push of the ground", "force"],
    ["T_o", "upright pull of its other anchors", "force"],
  ],
  expression: "gamma_W * F_rail - D_r - B_r + N_r - T_o",
  citation: derived("balance of one rail, up and down"),
  evaluate: (factor, wind, weight, ballast, ground, others) =>
    factor * wind - weight - ballast + ground - others,
});

const total = (forces: ArrayLike<number>): number =>
  Array.from(forces).reduce((sum, one) => sum + one, 0);

/** What ground and anchors of a rail do under one load, by the rail solver: N, up is plus. */
function reactionsOf(loads: RailLoads, own: readonly RailAnchor[], load: RailLoad, times: number) {
  const { on, anchors } = complianceOf(loads, own);
  const supports = own.map((anchor, at): RailSupport => {
    const stiffness = times * uprightStiffness.evaluate(anchor.stiffness, sineOf(anchor));
    return { kind: "anchor", x: anchors[at] as number, stiffness };
  });
  const solver = new RailSolver(on.rail, on.stations, [...on.ground, ...supports]);
  solver.solve(0, forcesOf(loads, load));
  const all = Array.from(solver.reactions);
  return {
    ground: total(all.slice(0, on.ground.length)),
    pulls: all.slice(on.ground.length).map((reaction) => -reaction),
  };
}

/** The upright pull of an anchor as the balance of its rail under the load that governs it. */
export function railBalance(
  chapter: Chapter,
  loads: RailLoads,
  anchors: readonly RailAnchor[],
  {
    anchor,
    upright,
    governs: load,
    stiffnessTimes,
  }: {
    readonly anchor: RailAnchor;
    readonly upright: number;
    readonly governs: RailLoad;
    readonly stiffnessTimes: number;
  },
  note: string,
): void {
  const { evaluation, combination: id } = loads;
  const { set } = load.state;
  const held = set.holds[0]?.terms[id].holdings.find(
    ({ terms }) => terms.holding.weight.name === load.weight,
  );
  if (!held) throw new Error(`no ${load.weight} weight`);
  const { combination, holding, deadNormal } = held.terms;
  const { weight, slope } = holding;
  const n = sideSign[load.side];
  const { span } = evaluation.house.lines;
  const component = (place: number): number =>
    evaluation.pressure * (set.table.components[load.caseIndex * caseStride + place] as number);
  const lift = chapter.work(railUplift, [component(2), n, component(4), span], { note });
  workOnce(chapter, factoredWeight, [combination.dead, weight.W, slope?.angle ?? 0]);
  const down = workOnce(chapter, railWeight, [deadNormal, n, weight.x, span]);
  // Loads that are alike on both rails stand once: this one may have been made of the other's.
  const own = onSide(anchors, anchor.side);
  const { ground, pulls } = reactionsOf(loads, own, load, stiffnessTimes);
  const others = total(pulls) - (pulls[own.indexOf(anchor)] as number);
  const whole = total(forcesOf(loads, load));
  const rest = combination.wind * lift - down - whole;
  const size = Math.abs(whole) + ground + total(pulls);
  const ballast = Math.abs(rest) > 1e-9 * size ? rest : 0;
  const show = (symbol: string, name: string, origin: string, value: number): number => {
    if (value === 0) return 0;
    const place = derived("rail as a beam on ground and anchors, worst of all loads");
    return chapter.work(taken(origin, symbol, symbol, name, value, "force", place), []);
  };
  const solved = "found by a solver";
  const pull = chapter.work(anchorBalance, [
    combination.wind,
    lift,
    down,
    show("B_r", "fixed ballast and slope", "as laid on the rail", ballast),
    show("N_r", "push of the ground", solved, ground),
    show("T_o", "upright pull of its other anchors", solved, others),
  ]);
  mustAgree(`the pull of ${anchor.name}`, pull, upright, size);
}
