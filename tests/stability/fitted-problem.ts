import {
  type Anchor,
  asd,
  baseLines,
  checkTerms,
  type JointProblem,
  jointProblems,
  type LateralHold,
  type Slope,
  type Weight,
} from "@hoopstay/stability";

/** A house of six by twelve metres on its rails, its weight in the middle. */
export const weight: Weight = { name: "low", W: 10_000, x: 0, y: 0, z: 1 };
export const dead = 0.6 * weight.W;
const bearing = { halfSpan: 3, front: 6, back: 6, railWidth: 0.1, allowable: 1e15 };
export const down = [0, 0, -1] as const;

export interface Fitted {
  readonly anchors?: readonly Anchor[];
  readonly friction?: number;
  readonly slope?: Slope;
  readonly laterals?: readonly (LateralHold | null)[];
  readonly heavy?: Partial<Weight>;
}

/** The problem of that house at a pressure at which the factored wind is one newton per unit. */
export function problem({
  anchors = [],
  friction = 0.3,
  slope,
  laterals,
  heavy,
}: Fitted): JointProblem {
  const holding = { weight: { ...weight, ...heavy }, anchors, slope: slope ?? null, friction };
  const lines = baseLines(bearing, weight.W, anchors.length > 0);
  const [found] = jointProblems(checkTerms([holding], lines, asd, 1 / 0.6), laterals);
  if (!found) throw new Error("one weight, one problem");
  return found;
}

export const fourAnchors = (pull: number, toward: Anchor["toward"] = down): Anchor[] =>
  [-3, 3].flatMap((x) => [-5, 5].map((y) => ({ x, y, pull, toward })));
