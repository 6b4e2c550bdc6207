import type { EnvelopeAreas, Hill, SpeedBasis, WallName } from "@hoopstay/load";
import type { CheckId, CombinationId, Weight } from "@hoopstay/stability";

/** A number of the independent calculation; `inf` where there is no bound. */
export type Listed = number | "inf";

/** What one house of the independent calculation is made of, SI. */
export interface IndependentInput {
  readonly shape: "round" | "pointed";
  readonly span: number;
  readonly rise: number;
  readonly length: number;
  readonly spacing: number;
  readonly tube: number;
  readonly zs: number;
  readonly aperture: EnvelopeAreas;
  readonly missing: readonly WallName[];
  readonly edition: "7-16" | "7-22";
  readonly exposure: "B" | "C" | "D";
  readonly speed: number;
  readonly basis: SpeedBasis;
  readonly elevation: number | null;
  readonly hill: {
    readonly shape: Hill["shape"];
    readonly height: number;
    readonly half_length: number;
    readonly distance: number | null;
  } | null;
  readonly weights: readonly [Weight, Weight];
  readonly rail_ends: { readonly front: number; readonly back: number };
  readonly rail_width: number;
  readonly q_allow: number;
  readonly mu: number;
  readonly slope: {
    readonly angle: number;
    readonly downhill: readonly [number, number] | null;
  } | null;
  readonly anchors: readonly {
    readonly x: number;
    readonly y: number;
    readonly T: number;
    readonly u: readonly [number, number, number];
  }[];
}

/** Ratio, code speed and (ASD only) working gust of one check, and its ratio under least load. */
type IndependentCheck = Readonly<Record<CombinationId, readonly Listed[]>> & {
  readonly least: Readonly<Record<CombinationId, Listed>>;
};

export interface IndependentCase {
  readonly id: string;
  readonly input: IndependentInput;
  readonly q: number;
  readonly class: string;
  readonly GCpi: readonly number[];
  readonly least_loads: readonly (readonly number[])[];
  readonly anchored: Readonly<Record<CheckId, IndependentCheck>>;
  readonly bare: Readonly<Record<CheckId, IndependentCheck>>;
  readonly load_case_count: number;
  readonly load_cases: readonly (readonly number[])[];
}

export const numberOf = (listed: Listed | undefined): number =>
  listed === "inf" ? Number.POSITIVE_INFINITY : (listed ?? Number.NaN);
