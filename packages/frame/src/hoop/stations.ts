import type { Side } from "../rail/along-rail.ts";
import { forcesAfter, intervalAt } from "./along-hoop.ts";
import { flexibility, flexibilitySize } from "./flexibility.ts";
import type { HoopFrame } from "./hoop-frame.ts";
import { moveOn } from "./recover.ts";
import { intervalWidth } from "./response.ts";
import { step, stepSize } from "./step.ts";

/** Places on a hoop prepared once, to be read in many responses without trigonometry. */
export class HoopStations {
  readonly count: number;
  private readonly interval: Int32Array;
  private readonly length: Float64Array;
  private readonly steps: Float64Array;
  /** Flexibility up to each station, found when a shape is first asked for. */
  private give: Float64Array | null = null;

  /**
   * @param side which side of a jump is read, the right one if not said
   * @throws Refusal for a place beside the hoop
   */
  constructor(
    private readonly frame: HoopFrame,
    places: ArrayLike<number>,
    side: Side = "right",
  ) {
    const { intervals } = frame;
    this.count = places.length;
    this.interval = new Int32Array(this.count);
    this.length = new Float64Array(this.count);
    this.steps = new Float64Array(stepSize * this.count);
    const way = new Float64Array(stepSize);
    for (let station = 0; station < this.count; station += 1) {
      const s = places[station] as number;
      const i = intervalAt(intervals, s, side);
      const length = s - (intervals.start[i] as number);
      this.interval[station] = i;
      this.length[station] = length;
      const [cos, sin] = [intervals.cos[i] as number, intervals.sin[i] as number];
      step(intervals.curvature[i] as number, cos, sin, length, way);
      this.steps.set(way, stepSize * station);
    }
  }

  /** Writes N, V and M of each station, three numbers after another. */
  forces(response: Float64Array, into: Float64Array): void {
    for (let station = 0; station < this.count; station += 1) {
      const state = this.stateOf(station);
      const length = this.length[station] as number;
      forcesAfter(response, state, length, this.steps, stepSize * station, into, 3 * station);
    }
  }

  /** Writes displacement in x and z (m) and turn (rad) of each, three numbers after another. */
  shape(response: Float64Array, into: Float64Array): void {
    this.give ??= this.flexibilities();
    const place = new Float64Array(3);
    for (let station = 0; station < this.count; station += 1) {
      const at = stepSize * station;
      const [dx, dz] = [this.steps[at] as number, this.steps[at + 1] as number];
      const state = this.stateOf(station);
      moveOn(response, state, dx, dz, this.give, flexibilitySize * station, place);
      into.set(place, 3 * station);
    }
  }
  private stateOf(station: number): number {
    return this.frame.statesAt + intervalWidth * (this.interval[station] as number);
  }

  private flexibilities(): Float64Array {
    const { intervals, hoop } = this.frame;
    const give = new Float64Array(flexibilitySize * this.count);
    for (let station = 0; station < this.count; station += 1) {
      const i = this.interval[station] as number;
      const [cos, sin] = [intervals.cos[i] as number, intervals.sin[i] as number];
      const length = this.length[station] as number;
      const curvature = intervals.curvature[i] as number;
      flexibility(curvature, cos, sin, length, hoop.section, give, flexibilitySize * station);
    }
    return give;
  }
}
