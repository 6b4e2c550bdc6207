import { assembleStiffness } from "./assemble.ts";
import { type Framed, loadSize } from "./balance.ts";
import { loose } from "./beam.ts";
import { eliminate, reduce, substituteBack } from "./eliminate.ts";
import { greatestLeftOver, leftOver } from "./left-over.ts";
import { type FrameParts, noLoad, recover } from "./recover.ts";
import { addRows } from "./response.ts";

/** What joints may leave over, as a part of the loads' size, and in how many rounds. */
const settled = 1e-12;
const rounds = 5;
/** How far a hoop may gape at its joints: rounding. */
const gaping = 1e-9;

/** Displacements of the joints between clamped feet, and the responses that follow from them. */
export class JointSolver {
  private readonly matrix: Float64Array;
  /** Forces on all unknowns, then their displacements in the same place. */
  private readonly unknown: Float64Array;
  private readonly more: Float64Array;
  private readonly free: number;

  /** @throws Error where the joints can move without force */
  constructor(
    private readonly frame: Framed,
    private readonly parts: FrameParts,
  ) {
    const { unknowns, elements, bars } = parts;
    this.free = unknowns.free;
    const size = this.free + 6;
    this.matrix = assembleStiffness(unknowns, elements, bars);
    this.unknown = new Float64Array(size);
    this.more = new Float64Array(frame.size);
    const stands = eliminate(this.matrix, size, this.free);
    if (!stands || this.isLoose()) throw new Error(mechanism);
  }

  /** Writes the response to a unit load: what members between held joints leave over moves these. */
  load(load: number, response: Float64Array): void {
    this.unknown.fill(0);
    this.settle(load, response);
  }

  /** Writes the response to a unit displacement of a foot, one of six. */
  moveFoot(way: number, response: Float64Array): void {
    const { matrix, unknown, free } = this;
    unknown.fill(0);
    unknown[free + way] = 1;
    substituteBack(matrix, free + 6, free, unknown);
    this.settle(noLoad, response);
  }

  /**
   * Whether a joint moves or turns out of all proportion to how the hoop bends: one that hangs on
   * nothing else has no stiffness of its own for its pivot to be small beside.
   */
  private isLoose(): boolean {
    const { matrix, free, parts } = this;
    const least = loose * parts.beam;
    return parts.unknowns.lever.some((lever, i) => {
      return (matrix[i * (free + 7)] as number) < least * lever ** 2;
    });
  }

  private yieldToForces(): void {
    const { matrix, unknown, free } = this;
    reduce(matrix, free + 6, free, unknown);
    unknown.fill(0, free);
    substituteBack(matrix, free + 6, free, unknown);
  }

  /**
   * Puts on the joints what the members leave over there, and again, until nothing is left. One
   * solution lacks as many digits as its stiffest member is beyond the softest way to move, ten at
   * worst; each round lacks as many of what the one before left. What does not settle is as good as
   * a mechanism.
   */
  private settle(load: number, response: Float64Array): void {
    const { frame, parts, unknown, free, more } = this;
    this.recover(load, response);
    for (let round = 0; ; round += 1) {
      leftOver(parts, load, response, unknown);
      for (let i = 0; i < 6; i += 1) response[i] = 0 - (unknown[free + i] as number);
      const off = greatestLeftOver(parts.unknowns, unknown);
      if (off <= settled * loadSize(frame, response)) return;
      if (round === rounds) throw new Error(mechanism);
      this.yieldToForces();
      this.recover(noLoad, more);
      addRows(more, frame.size, [1], response);
    }
  }

  private recover(load: number, response: Float64Array): void {
    const gap = recover(this.parts, load, this.unknown, response);
    if (!(gap <= gaping)) throw new Error(`fault of its own: the hoop gapes by ${gap}`);
  }
}

const mechanism = "the hoop is a mechanism: its joints and bars can move without force";
