import { checkedImbalance } from "./balance.ts";
import { hoopBars } from "./bars.ts";
import { beamStiffness } from "./beam.ts";
import { breakPlaces } from "./breaks.ts";
import { hoopElements } from "./elements.ts";
import type { Hoop, HoopLoad } from "./hoop.ts";
import { checkApart, checkHoop } from "./hoop-input.ts";
import { hoopIntervals, type Intervals } from "./intervals.ts";
import { JointSolver } from "./joint-solver.ts";
import { loadTable } from "./load-table.ts";
import type { FrameParts } from "./recover.ts";
import {
  addRows,
  barWidth,
  footMovesAt,
  jointWidth,
  responseLayout,
  resultantAt,
  superpose,
} from "./response.ts";
import { hoopUnknowns } from "./unknowns.ts";

/** Rounding allowed to what must balance. */
const rounding = 1e-9;

/**
 * A hoop as a plane frame of exact circular and straight members, solved once with both feet
 * clamped, for unit loads and for unit displacements of its feet. Every other answer is a sum of
 * these responses (`response.ts` says what stands where in one). Nothing changes after it is made.
 */
export class HoopFrame {
  /** Numbers in a response. */
  readonly size: number;
  /** Forces on the feet for displacements of the feet, 6 by 6: x, z, turn left, then right. */
  readonly footStiffness: Float64Array;
  /** Response to each unit load, both feet clamped, one after another. */
  readonly clamped: Float64Array;
  /** The first six numbers of each of these. */
  readonly fixedFootForces: Float64Array;
  /** Response to each of the six unit displacements of the feet, one after another. */
  readonly footMoves: Float64Array;
  /** Places where N, V or M may jump or kink, the feet with them, rising. */
  readonly breaks: Float64Array;
  readonly intervals: Intervals;
  private readonly parts: FrameParts;

  /**
   * @param loads the unit loads, in the order in which their coefficients will be given
   * @throws Refusal for a hoop or a load that cannot be computed
   * @throws Error where the frame is a mechanism though both feet are clamped
   */
  constructor(
    readonly hoop: Hoop,
    readonly loads: readonly HoopLoad[],
  ) {
    checkHoop(hoop, loads);
    this.breaks = breakPlaces(hoop, loads);
    this.intervals = hoopIntervals(hoop.line, hoop.section, this.breaks);
    const { intervals } = this;
    const unknowns = hoopUnknowns(hoop, this.breaks);
    const joints = Array.from(unknowns.nodeBreak, (at) => this.breaks[at] as number);
    checkApart(joints, hoop.line.length);
    const table = loadTable(hoop, loads, intervals, unknowns);
    const elements = hoopElements(intervals, table, unknowns);
    const bars = hoopBars(hoop, intervals, unknowns);
    const layout = responseLayout(bars.count, hoop.joints.length, intervals.count);
    const beam = beamStiffness(hoop);
    const room = {
      unknown: new Int32Array(6),
      state: new Float64Array(3),
      place: new Float64Array(3),
    };
    this.parts = { intervals, unknowns, loads: table, elements, bars, layout, beam, room };
    this.size = layout.size;
    this.footStiffness = new Float64Array(36);
    this.clamped = new Float64Array(this.size * loads.length);
    this.fixedFootForces = new Float64Array(6 * loads.length);
    this.footMoves = new Float64Array(6 * this.size);
    this.solve();
  }

  /** Where the seven numbers of a bar stand in a response. */
  barAt(bar: number): number {
    return this.parts.layout.bars + barWidth * bar;
  }

  /** Length of a bar, m. */
  barLength(bar: number): number {
    return this.parts.bars.length[bar] as number;
  }

  /** Where the three numbers of a free joint stand in a response. */
  jointAt(joint: number): number {
    return this.parts.layout.joints + jointWidth * joint;
  }

  /** Where the states of the intervals start in a response. */
  get statesAt(): number {
    return this.parts.layout.intervals;
  }

  /** See `beamStiffness`, N/m. */
  get beam(): number {
    return this.parts.beam;
  }

  /**
   * The response to a combination of loads while the feet are displaced.
   *
   * @param coefficients of the loads
   * @param displaced x, z (m) and counter-clockwise turn (rad) of the left foot, then the right
   * @param into the response, `size` numbers
   */
  respond(coefficients: ArrayLike<number>, displaced: ArrayLike<number>, into: Float64Array): void {
    superpose(this.clamped, this.size, coefficients, into);
    addRows(this.footMoves, this.size, displaced, into);
  }

  private solve(): void {
    const { size, clamped, footMoves, fixedFootForces, footStiffness } = this;
    const { loads } = this.parts;
    const solver = new JointSolver(this, this.parts);
    for (let way = 0; way < 6; way += 1) {
      const response = footMoves.subarray(way * size, (way + 1) * size);
      response[footMovesAt + way] = 1;
      solver.moveFoot(way, response);
      checkedImbalance(this, response, rounding);
      for (let i = 0; i <= way; i += 1) {
        footStiffness[6 * i + way] = footStiffness[6 * way + i] = response[i] as number;
      }
    }
    for (let load = 0; load < loads.count; load += 1) {
      const response = clamped.subarray(load * size, (load + 1) * size);
      response.set(loads.resultant.subarray(3 * load, 3 * load + 3), resultantAt);
      solver.load(load, response);
      checkedImbalance(this, response, rounding);
      fixedFootForces.set(response.subarray(0, 6), 6 * load);
    }
  }
}
