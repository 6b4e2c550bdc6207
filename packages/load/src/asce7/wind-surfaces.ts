import type { Shell } from "../shell/shell.ts";
import type { QuarterReading } from "../shell/zones.ts";
import {
  acrossParent,
  alongParent,
  bareParent,
  type EndsPresent,
  type FrameTubes,
  type InsideLoad,
  insideLoad,
  type Obstacle,
  type ParentLoad,
  type Sense,
} from "./parent-loads.ts";
import { archedAcross, coveredAlong, freeAcross, freeAlong, type RoofLoad } from "./roof-loads.ts";

/** What of the house the wind finds: a closed or partly open shell, an open one, or bare tubes. */
export type Covering = "covered" | "open" | "bare";

/** The house as the wind sees it, whatever its state. */
export interface WindBody {
  readonly shell: Shell;
  readonly obstacles: readonly Obstacle[];
  readonly frame: FrameTubes;
  /** A reviewer may fix one reading of the quarter; both run otherwise. */
  readonly reading?: QuarterReading;
}

/** One parent load of a direction with the coefficient set it came from. */
export interface DirectedLoad {
  readonly sense: Sense;
  readonly set: RoofLoad | null;
  readonly load: ParentLoad;
}

/** Everything outside and inside pressure can do to one arrangement of panels. */
export interface WindSurfaces {
  readonly covering: Covering;
  readonly ends: EndsPresent;
  readonly across: readonly (readonly DirectedLoad[])[];
  readonly along: readonly (readonly DirectedLoad[])[];
  readonly inside: InsideLoad;
}

/** Coefficient sets of a covering, shared by every arrangement of end walls. */
export interface RoofSets {
  readonly across: readonly RoofLoad[];
  readonly along: readonly RoofLoad[];
}

/**
 * Coefficient sets of a covered or an open shell. An open house keeps the worst of the free-roof
 * sets and of the covered ones without inside pressure, so both stand in its list.
 */
export function roofSetsOf(body: WindBody, covering: Covering): RoofSets {
  if (covering === "bare") return { across: [], along: [] };
  const across = archedAcross(body.shell, body.reading);
  const along = coveredAlong(body.shell);
  if (covering === "covered") return { across, along };
  return {
    across: [...freeAcross(body.shell), ...across],
    along: [...freeAlong(body.shell), ...along],
  };
}

const senses: readonly Sense[] = [1, -1];

/** The parent loads of one covering and arrangement of end walls, both ways on both axes. */
export function windSurfaces(
  body: WindBody,
  covering: Covering,
  ends: EndsPresent,
  sets: RoofSets,
): WindSurfaces {
  const { shell, obstacles, frame } = body;
  if (covering === "bare") {
    const bare = (axis: "across" | "along") =>
      senses.map((sense) => [
        { sense, set: null, load: bareParent(shell, axis, sense, ends, frame, obstacles) },
      ]);
    const inside = { fy: 0, fz: 0, mx: 0 };
    return { covering, ends, across: bare("across"), along: bare("along"), inside };
  }
  return {
    covering,
    ends,
    across: senses.map((sense) =>
      sets.across.map((set) => ({
        sense,
        set,
        load: acrossParent(shell, set.force, sense, ends, obstacles),
      })),
    ),
    along: senses.map((sense) =>
      sets.along.map((set) => ({
        sense,
        set,
        load: alongParent(shell, set.force, sense, ends, obstacles),
      })),
    ),
    inside: insideLoad(shell, ends),
  };
}
