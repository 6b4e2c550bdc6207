import type { LoadSet } from "../../review/evaluate.ts";
import { caseOneOf, windDirections } from "../case-one.ts";
import type { WindDirection } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import type { RowCase } from "../link.ts";
import { type AlongPush, alongPush } from "./end-pushes.ts";

/** What pushes along the house in one load set, direction and inside pressure. */
export interface WallCase {
  readonly set: LoadSet;
  readonly direction: WindDirection;
  readonly caseIndex: number;
  readonly push: AlongPush;
}

/** Load case 1 of every load set: the end walls feel the same whatever roof set it is. */
export function wallCases({ evaluation }: ChainContext): WallCase[] {
  const { shell, states } = evaluation;
  return [...new Set(states.map(({ set }) => set))].flatMap((set) =>
    windDirections.flatMap((direction) =>
      set.insideCoefficients.map((inside) => ({
        set,
        direction,
        caseIndex: caseOneOf(set, direction, inside),
        push: alongPush(shell, set, direction, inside),
      })),
    ),
  );
}

/** The greatest push into the house on one of its end walls, and out of it, m2. */
export const inwardPush = ({ front, back }: AlongPush): number => Math.max(0, -front, back);
export const outwardPush = ({ front, back }: AlongPush): number => Math.max(0, front, -back);

/** The case of each load set and direction in which something is greatest; none where it is nought. */
export function greatestCases(
  cases: readonly WallCase[],
  of: (push: AlongPush) => number,
): { readonly windCase: WallCase; readonly size: number }[] {
  const worst = new Map<LoadSet, Map<WindDirection, { windCase: WallCase; size: number }>>();
  for (const windCase of cases) {
    const size = of(windCase.push);
    if (!(size > 0)) continue;
    const own = worst.get(windCase.set) ?? new Map();
    worst.set(windCase.set, own);
    const known = own.get(windCase.direction);
    if (!known || size > known.size) own.set(windCase.direction, { windCase, size });
  }
  return [...worst.values()].flatMap((own) => [...own.values()]);
}

export const rowCaseOf = ({ set, direction, caseIndex }: WallCase): RowCase => ({
  direction,
  form: "end walls by main-frame pressure",
  sets: new Map([[set, caseIndex]]),
});
