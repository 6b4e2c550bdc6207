import type { BaseLine } from "../base-line.ts";
import type { CheckTerms } from "../check-terms.ts";
import type { HoldingTerms } from "../holding.ts";
import type { ActionTable } from "../outcome.ts";

/**
 * What a vertical shaft takes besides the pull of its tether, where the tether is made fast
 * directly to it (design basis, section 7, side and slanted pull). Allowable values, N; `cosDelta`
 * and `sinDelta` are those of the angle between tether and shaft.
 */
export interface LateralHold {
  /** Allowable pull along the shaft. */
  readonly Q: number;
  /** Allowable pull across the shaft, H_lat. */
  readonly H: number;
  readonly cosDelta: number;
  readonly sinDelta: number;
}

/** One house held by one weight estimate, for the equilibrium of everything at once. */
export interface JointProblem {
  /** Weight, anchors, slope, friction and combination. */
  readonly terms: HoldingTerms;
  /** Base lines as the single checks have them: right, left, front and back moved in, unmoved. */
  readonly lines: readonly BaseLine[];
  /** K_d q_h at the wind factor 1, Pa. */
  readonly pressure: number;
  /** By anchor: null where a line hangs between tether and shaft. None has one if left out. */
  readonly laterals?: readonly (LateralHold | null)[];
}

/** A house held by one weight, and the load cases it has to stand. Works may share a problem. */
export interface JointWork {
  readonly problem: JointProblem;
  readonly tables: readonly ActionTable[];
}

/** The problem of each weight estimate of a check. */
export function jointProblems(
  { holdings, pressure }: CheckTerms,
  laterals?: readonly (LateralHold | null)[],
): JointProblem[] {
  const lines = holdings[0]?.lines.map(({ line }) => line) ?? [];
  return holdings.map(({ terms }) => ({
    terms,
    lines,
    pressure,
    ...(laterals ? { laterals } : {}),
  }));
}

/** A corner of the base lines, m. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

/**
 * The four corners on which the ground pushes: end lines moved in. What holds on moved-in ends
 * holds on unmoved ones, so these alone decide: a push with its friction at a point of a rail is
 * the same six sums as two pushes with friction at that rail's ends, shared by the lever, and the
 * shared frictions keep their bounds and their vector sum. Only an inset longer than the whole
 * bearing would leave the rail; then the unmoved corners are run too.
 */
export function cornerSets(lines: readonly BaseLine[]): readonly (readonly Corner[])[] {
  const at = (check: BaseLine["check"], moved: boolean): number | null =>
    lines.find((line) => line.check === check && line.moved === moved)?.distance ?? null;
  const [right, left] = [at("tip-right", false) ?? 0, at("tip-left", false) ?? 0];
  const rectangle = (front: number, back: number): Corner[] => [
    { x: right, y: front },
    { x: right, y: -back },
    { x: -left, y: front },
    { x: -left, y: -back },
  ];
  const moved = rectangle(at("tip-front", true) ?? 0, at("tip-back", true) ?? 0);
  const [front, back] = [at("tip-front", false), at("tip-back", false)];
  if (front === null || back === null) return [moved];
  const onRail = moved.every(({ y }) => y <= front && y >= -back);
  return onRail ? [moved] : [moved, rectangle(front, back)];
}
