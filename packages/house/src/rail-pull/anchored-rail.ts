import { type RailOutcome, RailSolver, type RailSupport } from "@hoopstay/frame";
import type { Balances } from "./balanced-forces.ts";
import { forcesOf, type RailLoad, type RailLoads } from "./rail-loads.ts";
import type { RailCompliance } from "./rail-on-ground.ts";
import { RailWalk } from "./rail-walk.ts";
import { type SupportSet, SupportSets } from "./support-sets.ts";

/**
 * A rail on its anchors, solved for many loads by a walk over sets of supports. Sets and what they do
 * are kept, so most loads cost a sum of six columns. Where the walk does not end, the rail solver of
 * the frame package decides, as it does for a rail with fewer than two anchors.
 */
export class AnchoredRail {
  /** Upright pull of each anchor under the load solved last, N. */
  readonly pulls: Float64Array;
  /** The set at work, or null where the rail solver had to decide. */
  atWork: SupportSet | null = null;
  private readonly sets: SupportSets;
  private readonly walk: RailWalk;
  private sure: RailSolver | undefined;

  /** @param missing an anchor that is not there, or -1 */
  constructor(
    readonly from: RailCompliance,
    readonly loads: RailLoads,
    readonly stiffness: readonly number[],
    readonly balances: Balances,
    readonly missing = -1,
    sets?: SupportSets,
  ) {
    this.sets = sets ?? new SupportSets(from, loads.columns, stiffness);
    this.walk = new RailWalk(this.sets, missing);
    this.pulls = new Float64Array(stiffness.length);
  }

  /** The same rail with one anchor missing; it shares the sets already known. */
  without(anchor: number): AnchoredRail {
    return new AnchoredRail(
      this.from,
      this.loads,
      this.stiffness,
      this.balances,
      anchor,
      this.sets,
    );
  }

  solve(load: RailLoad): RailOutcome {
    this.atWork = this.walk.settle(load);
    if (!this.atWork) return this.surely(load);
    this.readPulls();
    return "held";
  }

  private readPulls(): void {
    const { ground, stiffness } = this.sets;
    const { lies } = this.walk;
    for (let j = 0; j < this.pulls.length; j += 1) {
      const pull = (stiffness[ground + j] as number) * (lies[ground + j] as number);
      this.pulls[j] = j === this.missing ? 0 : Math.max(0, pull);
    }
  }

  private surely(load: RailLoad): RailOutcome {
    const { on, anchors } = this.from;
    const present = anchors.map((_, j) => j).filter((j) => j !== this.missing);
    this.sure ??= new RailSolver(on.rail, on.stations, [
      ...on.ground,
      ...present.map(
        (j): RailSupport => ({
          kind: "anchor",
          x: anchors[j] as number,
          stiffness: this.stiffness[j] as number,
        }),
      ),
    ]);
    const outcome = this.sure.solve(0, forcesOf(this.loads, load));
    this.pulls.fill(outcome === "held" ? 0 : Number.NaN);
    if (outcome === "held") {
      present.forEach((j, at) => {
        this.pulls[j] = 0 - (this.sure?.reactions[on.ground.length + at] as number);
      });
    }
    return outcome;
  }
}
