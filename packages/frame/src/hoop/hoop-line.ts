import { type HoopPiece, lengthOf, startOf } from "./hoop-piece.ts";
import { checkPieces } from "./line-input.ts";
import { step, stepSize } from "./step.ts";

/**
 * A hoop's centre line from the left foot over the top to the right foot. Places on it are measured
 * along it from the left foot (developed length s, m).
 */
export interface HoopLine {
  /** How many pieces it has. */
  readonly count: number;
  /** Developed length, m. */
  readonly length: number;
  /** Place where each piece starts, and the end: `count` + 1 numbers, as are the points. */
  readonly start: Float64Array;
  readonly x: Float64Array;
  readonly z: Float64Array;
  /** Direction in which each piece starts, rad from +x, counter-clockwise. */
  readonly heading: Float64Array;
  /** Turn to the right per length, 1/m; zero for a straight piece. */
  readonly curvature: Float64Array;
}

/**
 * Joins pieces to a line. Each piece is moved (by at most a millionth of the pieces' size) to start
 * exactly where the one before ends.
 *
 * @throws Refusal for pieces without length, an arc that runs counter-clockwise, or a gap
 */
export function hoopLine(pieces: readonly HoopPiece[]): HoopLine {
  checkPieces(pieces);
  const count = pieces.length;
  const start = new Float64Array(count + 1);
  const x = new Float64Array(count + 1);
  const z = new Float64Array(count + 1);
  const heading = new Float64Array(count);
  const curvature = new Float64Array(count);
  const way = new Float64Array(stepSize);
  const first = startOf(pieces[0] as HoopPiece);
  x[0] = first.x;
  z[0] = first.z;
  for (const [i, piece] of pieces.entries()) {
    const angle =
      piece.kind === "arc"
        ? piece.fromAngle - Math.PI / 2
        : Math.atan2(piece.to.z - piece.from.z, piece.to.x - piece.from.x);
    const turn = piece.kind === "arc" ? 1 / piece.radius : 0;
    heading[i] = angle;
    curvature[i] = turn;
    const length = lengthOf(piece);
    step(turn, Math.cos(angle), Math.sin(angle), length, way);
    start[i + 1] = (start[i] as number) + length;
    x[i + 1] = (x[i] as number) + (way[0] as number);
    z[i + 1] = (z[i] as number) + (way[1] as number);
  }
  return { count, length: start[count] as number, start, x, z, heading, curvature };
}
