import type { SoilClass } from "./soil-class.ts";

/** Sand, gravel, non-plastic silt: strength by friction. rad; moist unit weight N/m3. */
export interface Sand {
  readonly likeness: "sand";
  readonly frictionAngle: number;
  readonly unitWeight: number;
}

/** Clay, plastic silt: undrained strength Pa; total unit weight N/m3. */
export interface Clay {
  readonly likeness: "clay";
  readonly shearStrength: number;
  readonly unitWeight: number;
  /** State of the ground in which the strength was found. */
  readonly measured: "wet" | "dry";
}

/** State for which the anchor is rated. Frozen ground is rated as wet: frost leaves. */
export interface GroundState {
  readonly wetness: "wet" | "dry" | "frozen";
  /** Depth of the water table below ground, m, where known. */
  readonly waterTable?: number;
}

/** Ground whose values an engineer or a laboratory gave. */
export interface MeasuredSoil {
  readonly basis: "theory";
  readonly values: Sand | Clay;
  readonly state: GroundState;
}

/** Ground known by its class only; null where no clue was given. */
export interface PresumedSoil {
  readonly basis: "presumptive";
  readonly soilClass: SoilClass | null;
  /** Sand-like or clay-like by the owner's answer. */
  readonly likeness: "sand" | "clay" | "unknown";
  /** State of the ground when the clues were taken; unknown counts as dry. */
  readonly measured: "wet" | "dry";
  readonly state: GroundState;
}

export type Soil = MeasuredSoil | PresumedSoil;
