import { roundedOutline } from "../hollow-rectangle/rounded-outline.ts";
import { cornerRadii } from "../tube/corner-radii.ts";
import { refuseImpossible } from "../tube/impossible.ts";
import type { RectangularTube, RoundTube, Tube } from "../tube/tube.ts";
import { densityOf } from "./mass-per-length.ts";
import { gravity, zincDensity } from "./steel.ts";
import { steelArea } from "./steel-area.ts";
import { angleTolerance, barTolerance, type Tolerance, wallTolerance } from "./tolerance.ts";
import { zincOnOneFace } from "./zinc.ts";

/** A low and a high estimate of the same thing. */
export interface Estimate {
  readonly low: number;
  readonly high: number;
}

/**
 * Weight per length, low and high. Low resists the wind: the wall at the thin end of its tolerance
 * and no zinc. High loads the tractor: the wall at the thick end, and zinc on both faces of
 * galvanized tube. Solid bars, flats and angles: factors on the nominal weight.
 *
 * Left out: couplings, threads, bolts, weld metal, water inside the tube.
 *
 * Source: ASTM A500/A500M-21 and EN 10219-2:2006, wall tolerance of 10 % [memory]; ASTM A513 for
 * tube outside the listed standards [second-hand]; ASTM A123/A123M-24, table 1 [second-hand];
 * judgement for solid sections.
 *
 * @param tube section, m
 * @returns N/m
 * @throws Refusal as `refuseImpossible`
 * @example // 1.900 in by 0.065 in: zinc adds 0.063 lb/ft, 0.92 N/m, to the high weight
 */
export function weightPerLength(tube: Tube): Estimate {
  refuseImpossible(tube);
  const { low, high } = toleranceOf(tube);
  if (tube.kind !== "round" && tube.kind !== "rectangular") {
    const nominal = densityOf(tube) * gravity.value * steelArea(tube, 1);
    return { low: low * nominal, high: high * nominal };
  }
  const unit = densityOf(tube) * gravity.value;
  const zinc = tube.galvanized ? zincMassPerLength(tube) * gravity.value : 0;
  return { low: unit * steelArea(tube, low), high: unit * steelArea(tube, high) + zinc };
}

/**
 * Tolerance used for a section, with its source: on the wall of tube, on the weight of the rest.
 *
 * @param tube section
 * @returns factors on the nominal value
 */
export function toleranceOf(tube: Tube): Tolerance {
  switch (tube.kind) {
    case "round":
    case "rectangular":
      return wallTolerance[tube.convention];
    case "angle":
      return angleTolerance;
    default:
      return barTolerance;
  }
}

/**
 * Mass of zinc on both faces of hot-dipped tube.
 *
 * @param tube round or rectangular tube, m; taken as galvanized
 * @returns kg/m
 * @example // 1.900 in by 0.065 in: 0.063 lb/ft = 0.094 kg/m
 */
export function zincMassPerLength(tube: RoundTube | RectangularTube): number {
  return zincDensity.value * zincOnOneFace(tube.wall) * bothOutlines(tube);
}

/** Outer plus inner outline of a tube at its nominal wall, m. */
export function bothOutlines(tube: RoundTube | RectangularTube): number {
  const { wall } = tube;
  if (tube.kind === "round") return 2 * Math.PI * (tube.outside - wall);
  const radii = cornerRadii(tube.convention, wall);
  return (
    roundedOutline(tube.depth, tube.width, radii.outside * wall) +
    roundedOutline(tube.depth - 2 * wall, tube.width - 2 * wall, radii.inside * wall)
  );
}
