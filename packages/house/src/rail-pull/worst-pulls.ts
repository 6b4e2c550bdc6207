import type { RailOutcome } from "@hoopstay/frame";
import type { AnchoredRail } from "./anchored-rail.ts";
import type { RailSide } from "./case-on-rails.ts";
import { energyAtMost, noneBeyond } from "./pull-bound.ts";
import type { RailLoad, RailLoadFamily, RailLoads } from "./rail-loads.ts";
import type { SupportSet } from "./support-sets.ts";

/** An anchor's greatest upright pull, N, the load it comes from, and which stiffness it was run at. */
export interface WorstPull {
  readonly pull: number;
  /** Null where no load pulls on it. */
  readonly load: RailLoad | null;
  /** Place in `stiffnessTimes`. */
  readonly run: number;
}

/** The worst pull of each anchor of a rail, back to front, under the loads of either side. */
export type PullsBySide = Readonly<Record<RailSide, readonly WorstPull[]>>;

/** What all loads do to one rail. */
export type RailPulls =
  | { readonly outcome: "held"; readonly worst: PullsBySide }
  | { readonly outcome: "above"; readonly anchor: number; readonly pull: WorstPull }
  | { readonly outcome: Exclude<RailOutcome, "held">; readonly load: RailLoad };

/**
 * Families in the order in which they are tried: greatest lift first. One that made a layout fail
 * moves to the front: it will most likely fail the next one too.
 */
export class TrialOrder {
  readonly families: RailLoadFamily[];

  constructor({ families, loads }: RailLoads) {
    const lift = (family: RailLoadFamily): number =>
      Math.max(...family.corners.map((at) => (loads[at] as RailLoad).parts[0]));
    const measured = families.map((family) => ({ family, most: lift(family) }));
    measured.sort((a, b) => b.most - a.most);
    this.families = measured.map(({ family }) => family);
  }

  toFront(place: number): void {
    const [family] = this.families.splice(place, 1);
    if (family) this.families.unshift(family);
  }
}

/** What a family is told of its loads. */
interface Taking {
  /** Whether a load provably changes nothing. */
  readonly passedOver: (id: number) => boolean;
  /** Takes in a load after it is solved; false ends the family. */
  readonly take: (id: number) => boolean;
}

/**
 * Solves a family on one rail: its corners, and the loads between them unless the same supports work
 * under all corners.
 *
 * @returns the load under which the rail is not held, or null
 */
export function solveFamily(
  { loads }: RailLoads,
  { corners, inner }: RailLoadFamily,
  rail: AnchoredRail,
  { passedOver, take }: Taking,
): { readonly outcome: Exclude<RailOutcome, "held">; readonly load: RailLoad } | null {
  let shared: SupportSet | null = null;
  let together = true;
  for (let list = corners, all = false; ; list = inner(), all = true) {
    for (let at = 0; at < list.length; at += 1) {
      const id = list[at] as number;
      if (all && corners.includes(id)) continue;
      if (passedOver(id)) {
        together = false;
        continue;
      }
      const load = loads[id] as RailLoad;
      const outcome = rail.solve(load);
      if (outcome !== "held") return { outcome, load };
      shared ??= rail.atWork;
      if (rail.atWork === null || rail.atWork !== shared) together = false;
      if (!take(id)) return null;
    }
    if (together || all) return null;
  }
}

/**
 * The greatest upright pull of each anchor of a rail under every load of some families.
 *
 * @param runs the rail at each stiffness of its anchors
 * @param most upright pull of each anchor above which the search ends, N
 * @param only the loads of one side
 * @param from upright pull of each anchor up to which nothing need be told, N: the worst pulls then
 *   are those beyond it
 */
export function worstPulls(
  all: RailLoads,
  order: TrialOrder,
  runs: readonly AnchoredRail[],
  most?: readonly number[],
  only?: RailSide,
  from?: readonly number[],
): RailPulls {
  const anchors = runs[0]?.pulls.length ?? 0;
  const nothing = (): WorstPull[] =>
    Array.from({ length: anchors }, () => ({ pull: 0, load: null, run: 0 }));
  const worst = { right: nothing(), left: nothing() };
  const start = (): Float64Array => Float64Array.from(from ?? nothing().map(() => 0));
  const known = { right: start(), left: start() };
  const { families } = order;
  for (let place = 0; place < families.length; place += 1) {
    const family = families[place] as RailLoadFamily;
    const { side } = family;
    if (only !== undefined && side !== only) continue;
    const [own, above] = [known[side], { anchor: -1 }];
    for (let run = 0; run < runs.length && above.anchor < 0; run += 1) {
      const rail = runs[run] as AnchoredRail;
      const { pulls, stiffness } = rail;
      const { groundStiffness } = rail.from;
      const failed = solveFamily(all, family, rail, {
        passedOver: (id) => {
          const balance = rail.balances.of(id);
          if (!balance) return false;
          return noneBeyond(
            energyAtMost(balance, stiffness),
            balance.lift,
            stiffness,
            -1,
            groundStiffness,
            own,
          );
        },
        take: (id) => {
          for (let j = 0; j < anchors; j += 1) {
            const pull = pulls[j] as number;
            if (pull <= (own[j] as number)) continue;
            own[j] = pull;
            worst[side][j] = { pull, load: all.loads[id] as RailLoad, run };
            if (most && pull > (most[j] as number)) above.anchor = j;
          }
          return above.anchor < 0;
        },
      });
      if (failed || above.anchor >= 0) order.toFront(place);
      if (failed) return failed;
    }
    const { anchor } = above;
    if (anchor >= 0) {
      return { outcome: "above", anchor, pull: worst[side][anchor] as WorstPull };
    }
  }
  return { outcome: "held", worst };
}
