import {
  type BarJoint,
  type FeetSupport,
  type HoopBar,
  type HoopLine,
  type HoopLoad,
  type HoopPiece,
  hoopLine,
  type PlanePoint,
} from "@hoopstay/frame";
import type { LoadedHoop } from "./hoop-arbitrary.ts";

/** The pieces of a line, each stretched by `k` and, if asked, turned over left for right. */
function piecesOf(line: HoopLine, k: number, over: boolean): HoopPiece[] {
  const side = over ? -1 : 1;
  const point = (i: number) => ({
    x: side * k * (line.x[i] as number),
    z: k * (line.z[i] as number),
  });
  const pieces = Array.from({ length: line.count }, (_, i): HoopPiece => {
    const curvature = line.curvature[i] as number;
    const [start, end] = [point(i), point(i + 1)];
    if (curvature === 0) {
      return over
        ? { kind: "straight", from: end, to: start }
        : { kind: "straight", from: start, to: end };
    }
    const radius = k / curvature;
    const length = (line.start[i + 1] as number) - (line.start[i] as number);
    const first = (line.heading[i] as number) + Math.PI / 2;
    const last = first - length * curvature;
    const [fromAngle, toAngle] = over ? [Math.PI - last, Math.PI - first] : [first, last];
    const begin = over ? end : start;
    return {
      kind: "arc",
      centre: {
        x: begin.x - radius * Math.cos(fromAngle),
        z: begin.z - radius * Math.sin(fromAngle),
      },
      radius,
      fromAngle,
      toAngle,
    };
  });
  return over ? pieces.reverse() : pieces;
}

const movedJoint = (at: BarJoint, move: (s: number) => number): BarJoint =>
  "s" in at ? { s: move(at.s) } : at;

/** A hoop, its loads and feet seen from behind. */
export function mirrorOf({ hoop, feet, loads }: LoadedHoop): LoadedHoop {
  const line = hoopLine(piecesOf(hoop.line, 1, true));
  const over = (s: number): number => Math.min(line.length, Math.max(0, line.length - s));
  const [a, b, c, d, e, f] = feet;
  const turned: FeetSupport = [d, e, f, a, b, c];
  return {
    hoop: {
      ...hoop,
      line,
      hinges: hoop.hinges.map(over),
      joints: hoop.joints.map(({ x, z }) => ({ x: -x, z })),
      bars: hoop.bars.map((bar) => ({
        ...bar,
        from: movedJoint(bar.from, over),
        to: movedJoint(bar.to, over),
      })),
    },
    feet: turned,
    loads: loads.map(([load, factor]): readonly [HoopLoad, number] => {
      if (load.kind === "normal") {
        return [{ kind: "normal", from: over(load.to), to: over(load.from) }, factor];
      }
      if (load.kind === "push") return [load, -factor];
      if (load.kind !== "point") return [load, factor];
      const { s, x, z, couple } = load;
      return [{ kind: "point", s: over(s), x: -x, z, couple: -couple }, factor];
    }),
  };
}

/**
 * A hoop turned a quarter about the origin, counter-clockwise: (x, z) comes to (-z, x), so that what
 * was its weight pushes it along +x, and what pushed it lifts it.
 */
export function quarterTurned({ hoop, feet, loads }: LoadedHoop): LoadedHoop {
  const quarter = ({ x, z }: PlanePoint): PlanePoint => ({ x: -z, z: x });
  const pieces = piecesOf(hoop.line, 1, false).map((piece): HoopPiece => {
    if (piece.kind === "straight") {
      return { kind: "straight", from: quarter(piece.from), to: quarter(piece.to) };
    }
    const fromAngle = piece.fromAngle + Math.PI / 2;
    const toAngle = piece.toAngle + Math.PI / 2;
    return { ...piece, centre: quarter(piece.centre), fromAngle, toAngle };
  });
  const line = hoopLine(pieces);
  const along = (s: number): number => Math.min(line.length, s);
  const [a, b, c, d, e, f] = feet;
  return {
    hoop: {
      ...hoop,
      line,
      joints: hoop.joints.map(quarter),
      bars: hoop.bars.map((bar) => ({
        ...bar,
        from: movedJoint(bar.from, along),
        to: movedJoint(bar.to, along),
      })),
    },
    feet: [b, a, c, e, d, f],
    loads: loads.map(([load, factor]): readonly [HoopLoad, number] => {
      if (load.kind === "weight") return [{ kind: "push" }, factor];
      if (load.kind === "push") return [{ kind: "weight" }, -factor];
      if (load.kind === "normal") return [{ ...load, to: along(load.to) }, factor];
      if (load.kind !== "point") return [load, factor];
      return [{ ...load, s: along(load.s), ...quarter(load) }, factor];
    }),
  };
}

/** Every length times `k`, sections with it, at equal loads per length; springs as stiff in shape. */
export function onScale({ hoop, feet, loads }: LoadedHoop, k: number): LoadedHoop {
  const line = hoopLine(piecesOf(hoop.line, k, false));
  const along = (s: number): number => Math.min(line.length, s * k);
  const section = ({ A, I, E }: HoopBar["section"]) => ({ A: A * k ** 2, I: I * k ** 4, E });
  const [a, b, c, d, e, f] = feet;
  return {
    hoop: {
      line,
      section: section(hoop.section),
      hinges: hoop.hinges.map(along),
      joints: hoop.joints.map(({ x, z }) => ({ x: k * x, z: k * z })),
      bars: hoop.bars.map((bar) => ({
        ...bar,
        from: movedJoint(bar.from, along),
        to: movedJoint(bar.to, along),
        section: section(bar.section),
      })),
    },
    feet: [a * k, b * k, c * k ** 3, d * k, e * k, f * k ** 3],
    loads: loads.map(([load, factor]): readonly [HoopLoad, number] => {
      if (load.kind === "normal") {
        return [{ kind: "normal", from: along(load.from), to: along(load.to) }, factor];
      }
      if (load.kind !== "point") return [load, factor];
      const { s, x, z, couple } = load;
      return [{ kind: "point", s: along(s), x: x * k, z: z * k, couple: couple * k * k }, factor];
    }),
  };
}
