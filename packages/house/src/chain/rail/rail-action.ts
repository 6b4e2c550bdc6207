import type { VerticalAnswer } from "./vertical-answer.ts";

/** Moment, torque and shear of a run of the hoops in plan, at both sides of every place. */
export interface PlanLines {
  readonly moment: Float64Array;
  readonly torque: Float64Array;
  readonly shear: Float64Array;
}

/** What weight and wind make of a run in plan, each per unit. */
interface InPlan {
  readonly still: PlanLines;
  readonly blown: PlanLines;
}

/** What a rail carries at each place looked at, each the greatest in size, N m and N. */
export class RailAction {
  readonly vertical: Float64Array;
  /** Greatest upright pull of each anchor of the rail, N. */
  readonly pulls: Float64Array;
  private readonly greatest: Partial<Record<"plan" | "torque" | "shear", Float64Array>> = {};

  /**
   * @param dead weight on the hoops, factored, N per metre of hoop
   * @param wind K_d q_h, factored, Pa
   */
  constructor(
    private readonly up: VerticalAnswer,
    private readonly runs: readonly InPlan[],
    private readonly dead: number,
    private readonly wind: number,
  ) {
    this.vertical = up.moments;
    this.pulls = up.pulls;
  }

  get plan(): Float64Array {
    this.greatest.plan ??= this.greatestOf("moment", new Float64Array(this.vertical.length));
    return this.greatest.plan;
  }

  get torque(): Float64Array {
    this.greatest.torque ??= this.greatestOf("torque", new Float64Array(this.vertical.length));
    return this.greatest.torque;
  }

  /** Both ways together. */
  get shear(): Float64Array {
    this.greatest.shear ??= this.greatestOf("shear", this.up.shears.slice(), (at, inPlan) =>
      Math.hypot(this.up.shears[at] as number, inPlan),
    );
    return this.greatest.shear;
  }

  private greatestOf(
    name: keyof PlanLines,
    into: Float64Array,
    together?: (at: number, inPlan: number) => number,
  ): Float64Array {
    const { dead, wind } = this;
    for (const { still, blown } of this.runs) {
      const [byWeight, byWind] = [still[name], blown[name]];
      for (let place = 0; place < byWeight.length; place += 1) {
        const at = place >> 1;
        const size = Math.abs(
          dead * (byWeight[place] as number) + wind * (byWind[place] as number),
        );
        into[at] = Math.max(into[at] as number, together ? together(at, size) : size);
      }
    }
    return into;
  }
}
