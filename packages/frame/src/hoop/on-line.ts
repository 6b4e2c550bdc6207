import { type Complaint, Refusal } from "@hoopstay/core";
import type { Side } from "../rail/along-rail.ts";
import { complain, within } from "./complaints.ts";
import type { HoopLine } from "./hoop-line.ts";
import type { PlanePoint } from "./hoop-piece.ts";
import { step, stepSize } from "./step.ts";

/**
 * The piece that a place lies on. Where two meet it is the one on the given side.
 *
 * @throws Refusal for a place beside the line
 */
function pieceAt({ start, count, length }: HoopLine, s: number, side: Side): number {
  refuse(within("s", s, length));
  let piece = count - 1;
  while (piece > 0 && ((start[piece] as number) > s || (side === "left" && start[piece] === s))) {
    piece -= 1;
  }
  return piece;
}

/**
 * The point at a place.
 *
 * @throws Refusal for a place beside the line
 */
export function pointOnLine(line: HoopLine, s: number): PlanePoint {
  const piece = pieceAt(line, s, "right");
  const way = wayOn(line, piece, s);
  return {
    x: (line.x[piece] as number) + (way[0] as number),
    z: (line.z[piece] as number) + (way[1] as number),
  };
}

/**
 * Direction in which the line runs at a place, a unit vector. The outer face lies to its left.
 *
 * @param side which side of a kink, the right one if not said
 * @throws Refusal for a place beside the line
 */
export function tangentOnLine(line: HoopLine, s: number, side: Side = "right"): PlanePoint {
  const way = wayOn(line, pieceAt(line, s, side), s);
  return { x: way[2] as number, z: way[3] as number };
}

function wayOn(line: HoopLine, piece: number, s: number): Float64Array {
  const angle = line.heading[piece] as number;
  const way = new Float64Array(stepSize);
  const length = s - (line.start[piece] as number);
  step(line.curvature[piece] as number, Math.cos(angle), Math.sin(angle), length, way);
  return way;
}

/**
 * The place where the line first reaches a height, coming from the left foot or from the right one.
 *
 * @param z height on the axis of the pieces, m
 * @throws Refusal for a height that the line does not reach, or below the foot on that side
 */
export function placeAtHeight(line: HoopLine, z: number, side: Side): number {
  const { count, start } = line;
  const foot = line.z[side === "left" ? 0 : count] as number;
  if (z === foot) return side === "left" ? 0 : line.length;
  for (let i = 0; z > foot && i < count; i += 1) {
    const piece = side === "left" ? i : count - 1 - i;
    const way = riseOn(line, piece, z, side);
    if (way !== undefined) return (start[piece] as number) + way;
  }
  const expected = `a height that the hoop reaches above its ${side} foot at ${foot} m`;
  throw new Refusal([complain("out-of-range", "z", z, expected, "check the height")]);
}

/** Way along a piece to where it has height `z`, rising as seen from the foot of that side. */
function riseOn(line: HoopLine, piece: number, z: number, side: Side): number | undefined {
  const length = (line.start[piece + 1] as number) - (line.start[piece] as number);
  const angle = line.heading[piece] as number;
  const curvature = line.curvature[piece] as number;
  const rise = z - (line.z[piece] as number);
  if (curvature === 0) return onPiece(rise / Math.sin(angle), length);
  // The height above the centre of the circle, over the radius: the cosine of the heading.
  const lean = rise * curvature + Math.cos(angle);
  // Rounding at the crown is cut off.
  if (lean > 1 + 1e-12) return undefined;
  const slope = Math.acos(Math.min(lean, 1));
  const turn = side === "left" ? angle - slope : angle + slope;
  const full = 2 * Math.PI;
  return [turn, turn - full, turn + full]
    .map((one) => onPiece(one / curvature, length))
    .find((way) => way !== undefined);
}

/** Rounding at the ends of a piece is cut off. */
function onPiece(way: number, length: number): number | undefined {
  const slack = 1e-9 * length;
  if (!(way >= -slack && way <= length + slack)) return undefined;
  return Math.min(Math.max(way, 0), length);
}

function refuse(complaints: readonly Complaint[]): void {
  if (complaints.length > 0) throw new Refusal(complaints);
}
