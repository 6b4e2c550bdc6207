import { type Arc, arcHeightAt, arcPointAt } from "./arc.ts";
import { aboveGround, halfSpan, quarterOfSpan } from "./outline-formulas.ts";
import type { Shell } from "./shell.ts";

/** A point of the cross section: `x` downwind from the middle plane, `z` above ground, m. */
export interface Point {
  readonly x: number;
  readonly z: number;
}

/** How the standard's "quarters" are read: of the developed arc, or of the span. */
export type QuarterReading = "arc" | "span";

/** Corner points of the cross section from windward ground to leeward ground. */
export interface Outline {
  readonly windwardGround: Point;
  readonly windwardSpring: Point;
  readonly windwardQuarter: Point;
  readonly crown: Point;
  readonly leewardQuarter: Point;
  readonly leewardSpring: Point;
  readonly leewardGround: Point;
}

/** Where the windward quarter ends, seen from the middle plane and the springing line. */
function quarterPoint(arc: Arc, reading: QuarterReading): Point {
  if (reading === "arc") return arcPointAt(arc, 0.5);
  const x = quarterOfSpan.evaluate(arc.span);
  return { x, z: arcHeightAt(arc, x) };
}

/**
 * The outline of the shell with its quarter points by one reading. Straight legs are walls: the
 * quarters divide the arc between its springings only.
 */
export function outline(shell: Shell, reading: QuarterReading): Outline {
  const half = halfSpan.evaluate(shell.b);
  const { x, z } = quarterPoint(shell.arc, reading);
  const quarterHeight = aboveGround.evaluate(shell.springing, z);
  return {
    windwardGround: { x: -half, z: 0 },
    windwardSpring: { x: -half, z: shell.springing },
    windwardQuarter: { x: -x, z: quarterHeight },
    crown: { x: 0, z: shell.crown },
    leewardQuarter: { x, z: quarterHeight },
    leewardSpring: { x: half, z: shell.springing },
    leewardGround: { x: half, z: 0 },
  };
}
