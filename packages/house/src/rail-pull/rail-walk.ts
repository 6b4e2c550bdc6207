import type { LaidLoad } from "./rail-loads.ts";
import { giving, holding, idle, type SupportSet, type SupportSets } from "./support-sets.ts";

/** Rounds after which the walk is given up. */
const rounds = 16;
/** Rounding allowed to a deflection, as a part of the greatest. */
const rounding = 1e-10;

/**
 * Walks from set of supports to set until none has left its part: such a set is right, since no
 * other meets all conditions. Each walk begins where the one before ended.
 */
export class RailWalk {
  /** Deflection at every support under the load that was walked last, m. */
  readonly lies: Float64Array;
  private readonly next: Uint8Array;
  private readonly start: Uint8Array;
  private current: SupportSet | null = null;

  /** @param missing an anchor that is not there, or -1 */
  constructor(
    private readonly sets: SupportSets,
    private readonly missing = -1,
  ) {
    const { size, ground } = sets;
    this.lies = new Float64Array(size);
    this.next = new Uint8Array(size);
    this.start = Uint8Array.from({ length: size }, (_, i) =>
      i >= ground && i - ground !== missing ? holding : idle,
    );
  }

  /** The set that works under a load, or null where the walk does not end. */
  settle(load: LaidLoad): SupportSet | null {
    this.current ??= this.sets.of(this.start);
    for (let round = 0; round < rounds && this.current; round += 1) {
      if (this.settled(load, this.current)) return this.current;
      this.current = this.sets.of(this.next);
    }
    this.current = null;
    return null;
  }

  /** Lays the rail on a set; writes the set that follows, and says whether it is the same. */
  private settled(load: LaidLoad, set: SupportSet): boolean {
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
}
