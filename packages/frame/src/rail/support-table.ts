import type { RailSupport, SupportKind } from "./rail.ts";

/** The supports of a rail, in columns. */
export interface SupportTable {
  readonly count: number;
  readonly node: Int32Array;
  /** 1 where the support pushes up, -1 where it pulls down, 0 where it does both. */
  readonly side: Int8Array;
  /** Spring stiffness, N/m, infinite where rigid, and its inverse. */
  readonly stiffness: Float64Array;
  readonly flexibility: Float64Array;
  /** Force at which the support gives, N; infinite where it never does. */
  readonly cap: Float64Array;
}

const sides = { "two-way": 0, anchor: -1, ground: 1 } as const satisfies Record<
  SupportKind,
  number
>;

export function supportTable(supports: readonly RailSupport[], node: Int32Array): SupportTable {
  const stiffness = Float64Array.from(supports, (support) =>
    support.stiffness === "rigid" ? Number.POSITIVE_INFINITY : support.stiffness,
  );
  return {
    count: supports.length,
    node,
    side: Int8Array.from(supports, ({ kind }) => sides[kind]),
    stiffness,
    flexibility: stiffness.map((k) => 1 / k),
    cap: Float64Array.from(supports, ({ cap }) => cap ?? Number.POSITIVE_INFINITY),
  };
}
