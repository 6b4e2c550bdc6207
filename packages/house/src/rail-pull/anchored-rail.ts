import { type RailOutcome, RailSolver, type RailSupport } from "@hoopstay/frame";
import type { Balances } from "./balanced-forces.ts";
import { forcesOf, type RailLoad, type RailLoads } from "./rail-loads.ts";
import type { RailCompliance } from "./rail-on-ground.ts";
import { giving, holding, idle, type SupportSet, SupportSets } from "./support-sets.ts";

/** Rounds after which the sure search of the rail solver takes over. */
const rounds = 16;
/** Rounding allowed to a deflection, as a part of the greatest. */
const rounding = 1e-10;

/**
 * A rail on its anchors, solved for many loads. It walks from set of supports to set until none has
 * left its part: such a set is right, since no other meets all conditions. Sets and what they do are
 * kept, so most loads cost a sum of six columns. Where the walk does not end, the rail solver of the
 * frame package decides, as it does for a rail with fewer than two anchors.
 */
export class AnchoredRail {
  /** Upright pull of each anchor under the load solved last, N. */
  readonly pulls: Float64Array;
  /** The set at work, or null where the rail solver had to decide. */
  atWork: SupportSet | null = null;
  private readonly sets: SupportSets;
  private readonly lies: Float64Array;
  private readonly next: Uint8Array;
  private current: SupportSet | null = null;
  private readonly start: Uint8Array;
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
    const { size, ground } = this.sets;
    this.pulls = new Float64Array(stiffness.length);
    this.lies = new Float64Array(size);
    this.next = new Uint8Array(size);
    this.start = Uint8Array.from({ length: size }, (_, i) =>
      i >= ground && i - ground !== missing ? holding : idle,
    );
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
    this.current ??= this.sets.of(this.start);
    for (let round = 0; round < rounds && this.current; round += 1) {
      if (this.settled(load, this.current)) {
        this.readPulls();
        this.atWork = this.current;
        return "held";
      }
      this.current = this.sets.of(this.next);
    }
    this.current = null;
    this.atWork = null;
    return this.surely(load);
  }

  /** Lays the rail on a set; writes the set that follows, and says whether it is the same. */
  private settled(load: RailLoad, set: SupportSet): boolean {
    set.lay(load, this.lies);
    const { parts } = set;
    const { ground, size, stiffness, cap } = this.sets;
    const { lies, next, missing } = this;
    let greatest = 0;
    for (let i = 0; i < size; i += 1) greatest = Math.max(greatest, Math.abs(lies[i] as number));
    const least = -rounding * greatest;
    let same = true;
    for (let i = 0; i < size; i += 1) {
      const part = parts[i] as number;
      const lie = lies[i] as number;
      let after = part;
      if (i >= ground) {
        if (i - ground === missing) after = idle;
        else if (part === holding ? lie < least : -lie < least) after = holding - part;
      } else if (part === idle) {
        if (lie < least) after = holding;
      } else {
        const left = lie + (cap[i] as number) / (stiffness[i] as number);
        if (part === giving) {
          if (left > -least) after = holding;
        } else if (-lie < least) after = idle;
        else if (left < least) after = giving;
      }
      next[i] = after;
      if (after !== part) same = false;
    }
    return same;
  }

  private readPulls(): void {
    const { ground, stiffness } = this.sets;
    for (let j = 0; j < this.pulls.length; j += 1) {
      const pull = (stiffness[ground + j] as number) * (this.lies[ground + j] as number);
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
