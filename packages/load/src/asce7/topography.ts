import { cite, formula } from "@hoopstay/core";
import type { Exposure } from "./edition/edition.ts";

export type HillShape = "ridge" | "escarpment" | "hill";

/** A hill, ridge or escarpment the house stands on or near, m. */
export interface Hill {
  readonly shape: HillShape;
  readonly height: number;
  /** L_h: horizontal distance upwind from the crest to half the height. */
  readonly halfLength: number;
  /** From the crest, positive downwind; absent where only "on a visible hill" is known. */
  readonly distance?: number;
}

export interface HillFactor {
  readonly k: number;
  readonly mu: number;
  readonly gamma: number;
  readonly steepness: number;
  readonly length: number;
  readonly k1: number;
  readonly k2: number;
  readonly k3: number;
  readonly kzt: number;
  readonly placeKnown: boolean;
}

const figure = cite("bnbc-2020", "figure 6.2.4 (ASCE 7-16 figure 26.8-1)", "read");

/** Rows of figure 26.8-1: K_1/(H/L_h) by exposure, gamma, mu upwind and downwind. */
export const hillRows: Record<
  HillShape,
  Record<Exposure, number> & { gamma: number; upwind: number; downwind: number }
> = {
  ridge: { B: 1.3, C: 1.45, D: 1.55, gamma: 3, upwind: 1.5, downwind: 1.5 },
  escarpment: { B: 0.75, C: 0.85, D: 0.95, gamma: 2.5, upwind: 1.5, downwind: 4 },
  hill: { B: 0.95, C: 1.05, D: 1.15, gamma: 4, upwind: 1.5, downwind: 1.5 },
};

const height = ["H", "height of the hill", "length"] as const;
const half = ["L", "half-length of the hill, as entered", "length"] as const;

export const countedSteepness = formula({
  id: "hill-steepness",
  symbol: "s",
  name: "steepness of the hill, as it counts",
  measure: "ratio",
  arguments: [height, half],
  expression: "min(0.5, H / L)",
  citation: figure,
  evaluate: (rise, length) => Math.min(0.5, rise / length),
});

export const countedLength = formula({
  id: "hill-length",
  symbol: "L_h",
  name: "half-length of the hill, as it counts",
  measure: "length",
  arguments: [half, height],
  expression: "max(L, 2 * H)",
  citation: figure,
  evaluate: (length, rise) => Math.max(length, 2 * rise),
});

export const hillShapeFactor = formula({
  id: "hill-k1",
  symbol: "K_1",
  name: "hill shape and height factor",
  measure: "ratio",
  arguments: [
    ["k", "K_1 over steepness, by shape and exposure", "ratio"],
    ["s", "steepness H/L_h, 0.5 at most", "ratio"],
  ],
  expression: "k * s",
  citation: figure,
  evaluate: (k, steepness) => k * steepness,
});

export const hillDistanceFactor = formula({
  id: "hill-k2",
  symbol: "K_2",
  name: "reduction with distance from the crest",
  measure: "ratio",
  arguments: [
    ["x", "distance from the crest", "length"],
    ["mu", "attenuation by distance", "ratio"],
    ["L_h", "half-length of the hill (2H where H/L_h is above 0.5)", "length"],
  ],
  expression: "max(0, 1 - abs(x) / (mu * L_h))",
  citation: figure,
  evaluate: (x, mu, length) => Math.max(0, 1 - Math.abs(x) / (mu * length)),
});

export const hillHeightFactor = formula({
  id: "hill-k3",
  symbol: "K_3",
  name: "reduction with height above ground",
  measure: "ratio",
  arguments: [
    ["gamma", "attenuation by height", "ratio"],
    ["z", "height above ground", "length"],
    ["L_h", "half-length of the hill (2H where H/L_h is above 0.5)", "length"],
  ],
  expression: "exp(-gamma * z / L_h)",
  citation: figure,
  evaluate: (gamma, z, length) => Math.exp((-gamma * z) / length),
});

export const hillFactor = formula({
  id: "hill-factor",
  symbol: "K_zt",
  name: "hill factor",
  measure: "ratio",
  arguments: [
    ["K_1", "shape and height", "ratio"],
    ["K_2", "distance", "ratio"],
    ["K_3", "height above ground", "ratio"],
  ],
  expression: "(1 + K_1 * K_2 * K_3)^2",
  citation: cite("asce-7-16", "eq. 26.8-1", "second-hand"),
  evaluate: (k1, k2, k3) => (1 + k1 * k2 * k3) ** 2,
});

/**
 * The hill factor at height z. An entered hill always counts: where the standard would let it be
 * left out (26.8.1) the factor stays, on the safe side. With the place on the hill unknown
 * K_2 = K_3 = 1.
 */
export function hillFactorOf(hill: Hill, exposure: Exposure, z: number): HillFactor {
  const row = hillRows[hill.shape];
  const steepness = countedSteepness.evaluate(hill.height, hill.halfLength);
  const length = countedLength.evaluate(hill.halfLength, hill.height);
  const placeKnown = hill.distance !== undefined;
  const x = hill.distance ?? 0;
  const mu = x > 0 ? row.downwind : row.upwind;
  const k1 = hillShapeFactor.evaluate(row[exposure], steepness);
  const k2 = placeKnown ? hillDistanceFactor.evaluate(x, mu, length) : 1;
  const k3 = placeKnown ? hillHeightFactor.evaluate(row.gamma, z, length) : 1;
  const kzt = hillFactor.evaluate(k1, k2, k3);
  const { gamma } = row;
  return { k: row[exposure], mu, gamma, steepness, length, k1, k2, k3, kzt, placeKnown };
}
