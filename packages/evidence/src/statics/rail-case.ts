import type { Rail, RailLoads, RailSupport, SupportKind } from "@hoopstay/frame";

interface Extreme {
  readonly M: number;
  readonly x: number;
}

interface Spring {
  readonly x: number;
  readonly k: number | null;
  readonly cap?: number | null;
}

/** A case of `rail_cases.json`, with every key that occurs. */
export interface RailCase {
  readonly id: string;
  readonly description: string;
  readonly L: number;
  readonly EI: number;
  readonly q: number;
  readonly loads: readonly (readonly [number, number])[];
  readonly supports?: readonly Spring[];
  readonly unilateral?: boolean;
  readonly converged?: boolean;
  readonly anchors?: readonly Spring[];
  readonly ground?: readonly Spring[];
  readonly results: {
    readonly R?: readonly number[];
    readonly anchor_tension: readonly number[];
    readonly ground_push?: readonly number[];
    readonly active?: readonly boolean[];
    readonly M_max: Extreme;
    readonly M_min: Extreme;
    readonly V_absmax?: number;
    readonly M_at_supports?: readonly number[];
    readonly v_at_loads?: readonly number[];
    readonly v_at_anchors?: readonly number[];
    readonly v_at_ground?: readonly number[];
    readonly v_absmax?: { readonly v: number; readonly x: number };
  };
}

export const railOf = ({ L, EI }: RailCase): Rail => ({ length: L, stiffness: EI });

export const loadsOf = ({ q, loads }: RailCase): RailLoads => ({
  uniform: q,
  forces: loads.map(([x, force]) => ({ x, force })),
  couples: [],
});

/** Supports of a case in the order of its results: two-way ones, or anchors and then ground. */
export function supportsOf({ supports, anchors, ground }: RailCase): RailSupport[] {
  const as = (kind: SupportKind, springs: readonly Spring[] = []) =>
    springs.map(({ x, k, cap }): RailSupport => {
      const support = { kind, x, stiffness: k ?? ("rigid" as const) };
      return cap === undefined || cap === null ? support : { ...support, cap };
    });
  return [...as("two-way", supports), ...as("anchor", anchors), ...as("ground", ground)];
}
