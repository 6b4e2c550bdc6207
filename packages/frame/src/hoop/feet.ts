import { Refusal } from "@hoopstay/core";
import { loose } from "./beam.ts";
import { complain } from "./complaints.ts";
import { eliminate, reduce, substituteBack } from "./eliminate.ts";
import type { HoopFrame } from "./hoop-frame.ts";
import { addRows } from "./response.ts";

/**
 * How the two feet are held: six spring stiffnesses (N/m in x and z, N m/rad; left, then right) to
 * ground that does not move. Infinity holds, zero lets go.
 */
export type FeetSupport = readonly [number, number, number, number, number, number];

const held = Number.POSITIVE_INFINITY;

/** Both feet held, free to turn. */
export const pinnedFeet: FeetSupport = [held, held, 0, held, held, 0];
/** Both feet held in every way. */
export const fixedFeet: FeetSupport = [held, held, held, held, held, held];
/** The left foot pinned, the right one free to turn and to slide sideways. */
export const rightRoller: FeetSupport = [held, held, 0, 0, held, 0];

function checkSupport(support: FeetSupport): void {
  const complaints = support.flatMap((stiffness, way) =>
    stiffness >= 0
      ? []
      : [
          complain(
            Number.isNaN(stiffness) ? "not-a-number" : "out-of-range",
            `support.${way}`,
            stiffness,
            "a stiffness of zero or more",
            "check the spring",
          ),
        ],
  );
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** The same hoop on feet that are not clamped: a small problem on top of the solved frame. */
class SupportedFeet {
  private readonly ways: readonly number[];
  private readonly matrix: Float64Array;
  private readonly right: Float64Array;

  constructor(frame: HoopFrame, support: FeetSupport) {
    checkSupport(support);
    this.ways = [0, 1, 2, 3, 4, 5].filter((way) => support[way] !== held);
    const size = this.ways.length;
    this.matrix = new Float64Array(size * size);
    this.right = new Float64Array(size);
    for (const [i, way] of this.ways.entries()) {
      for (const [j, other] of this.ways.entries()) {
        const spring = i === j ? (support[way] as number) : 0;
        this.matrix[i * size + j] = (frame.footStiffness[6 * way + other] as number) + spring;
      }
    }
    if (!eliminate(this.matrix, size, size) || this.isLoose(frame)) {
      throw new Error("the hoop is a mechanism: on these feet it can move without force");
    }
  }

  /** Whether a foot moves or turns, all else yielding, out of all proportion to how the hoop bends. */
  private isLoose({ hoop, beam }: HoopFrame): boolean {
    const least = loose * beam;
    return this.ways.some((way, i) => {
      const lever = way % 3 === 2 ? hoop.line.length : 1;
      return (this.matrix[i * (this.ways.length + 1)] as number) < least * lever ** 2;
    });
  }

  /** Displacements of the feet for their forces while clamped, six numbers from `at` on. */
  displace(clampedForces: Float64Array, at: number, into: Float64Array): void {
    const { ways, matrix, right } = this;
    const size = ways.length;
    for (let i = 0; i < size; i += 1)
      right[i] = 0 - (clampedForces[at + (ways[i] as number)] as number);
    reduce(matrix, size, size, right);
    substituteBack(matrix, size, size, right);
    into.fill(0, 0, 6);
    for (let i = 0; i < size; i += 1) into[ways[i] as number] = right[i] as number;
  }
}

/**
 * The response to each unit load on feet held in a given way, one after another, `frame.size`
 * numbers each.
 *
 * @throws Refusal for a stiffness below zero
 * @throws Error where the hoop is a mechanism on these feet
 */
export function responsesOnFeet(frame: HoopFrame, support: FeetSupport): Float64Array {
  const feet = new SupportedFeet(frame, support);
  const responses = frame.clamped.slice();
  const displaced = new Float64Array(6);
  const { size } = frame;
  for (let load = 0; load < frame.loads.length; load += 1) {
    feet.displace(frame.fixedFootForces, 6 * load, displaced);
    addRows(frame.footMoves, size, displaced, responses.subarray(load * size, (load + 1) * size));
  }
  return responses;
}
