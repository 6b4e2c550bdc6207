import { cite, constant, formula, judged, POUND_PER_SQUARE_FOOT } from "@hoopstay/core";
import type { Shell } from "../shell/shell.ts";
import { groundRowRuns } from "./arched-roof.ts";
import type { Obstacle, Sense } from "./parent-loads.ts";
import type { Covering } from "./wind-surfaces.ts";

const clause = cite("asce-7-16", "27.1.5", "second-hand");

export const leastOnWalls = constant(
  "least-on-walls",
  "p_min,w",
  "least load on walls, strength level (16 psf)",
  16 * POUND_PER_SQUARE_FOOT,
  "pressure",
  clause,
);
export const leastOnRoof = constant(
  "least-on-roof",
  "p_min,r",
  "least load on the vertical projection of the roof, strength level (8 psf)",
  8 * POUND_PER_SQUARE_FOOT,
  "pressure",
  clause,
);
export const lowerHalfCitation = judged(
  "a ground-sprung arch is wall-like low down: 16 psf also on its lower half; worse kept",
);

export const leastForce = formula({
  id: "least-force",
  symbol: "F_min",
  name: "least load on one face",
  measure: "force",
  arguments: [
    [
      "p_min",
      "least pressure: 16 psf on walls, 8 psf on the roof's vertical projection",
      "pressure",
    ],
    ["A", "face, seen along the wind", "area"],
  ],
  expression: "p_min * A",
  citation: clause,
  evaluate: (pressure, area) => pressure * area,
});

/** One least load at strength level: horizontal force, N, and the height it acts at, m. */
export interface LeastLoad {
  readonly id: string;
  readonly words: string;
  readonly axis: "across" | "along";
  readonly sense: Sense;
  readonly force: number;
  readonly height: number;
  readonly bands: readonly LeastBand[];
}

/** A face with its least pressure: m2, the height of its middle, Pa. */
export interface LeastBand {
  readonly area: number;
  readonly height: number;
  readonly pressure: number;
}

/**
 * The least loads of a covering, both ways on both axes. A required check of its own: no uplift,
 * no limit speed. It does not apply to bare tubes.
 */
export function leastLoads(
  shell: Shell,
  covering: Covering,
  obstacles: readonly Obstacle[],
): LeastLoad[] {
  if (covering === "bare") return [];
  const loads: LeastLoad[] = [];
  const wall = leastOnWalls.value;
  const outside = obstacles.filter((obstacle) => obstacle.outside);
  const add = (id: string, words: string, axis: LeastLoad["axis"], bands: LeastBand[]): void => {
    const boxes = outside.map(({ z, areaAcross, areaAlong }) => ({
      area: axis === "across" ? areaAcross : areaAlong,
      height: z,
      pressure: wall,
    }));
    let force = 0;
    let moment = 0;
    const all = [...bands, ...boxes];
    for (const { area, height, pressure } of all) {
      force += pressure * area;
      moment += pressure * area * height;
    }
    for (const sense of [1, -1] as const) {
      loads.push({ id, words, axis, sense, force, height: moment / force, bands: all });
    }
  };
  for (const [id, words, bands] of acrossBands(shell, covering)) add(id, words, "across", bands);
  const end = { area: shell.endArea, height: shell.endCentroid, pressure: wall };
  add("least-end", "16 psf on the flat end area", "along", [end]);
  return loads;
}

function acrossBands(shell: Shell, covering: Covering): [string, string, LeastBand[]][] {
  const { L, f, springing, crown } = shell;
  const wall = leastOnWalls.value;
  const roof = leastOnRoof.value;
  if (covering === "open") {
    const whole = { area: L * crown, height: crown / 2, pressure: wall };
    return [["least-open", "16 psf on the frontal area of an open house", [whole]]];
  }
  const strip = { area: L * springing, height: springing / 2, pressure: wall };
  const arch = { area: L * f, height: springing + f / 2, pressure: roof };
  const bands: [string, string, LeastBand[]][] = [
    ["least", "16 psf on the strip, 8 psf on the arch", [strip, arch]],
  ];
  if (groundRowRuns(springing / f)) {
    const lower = { area: (L * f) / 2, height: springing + f / 4, pressure: wall };
    const upper = { area: (L * f) / 2, height: springing + (3 * f) / 4, pressure: roof };
    bands.push(["least-lower", "16 psf also on the lower half of the arch", [strip, lower, upper]]);
  }
  return bands;
}
