import type { Bolt } from "../bolt/bolt-strength.ts";
import { refuse, requireLength } from "../common/require.ts";
import { requireWall, type Wall } from "../common/wall.ts";
import { requireHoleRow } from "./hole-row.ts";

/** One of the two tubes of a sleeve. m. */
export interface SleevedTube extends Wall {
  readonly outside: number;
  /** Middle of the nearest hole to the end of this tube inside the sleeve; null where unknown. */
  readonly endDistance: number | null;
}

/** A hoop on its stub, one tube in the other, held by a row of bolts right through both. m. */
export interface SleeveJoint {
  readonly hoop: SleevedTube;
  readonly stub: SleevedTube;
  readonly overlap: number;
  readonly bolt: Omit<Bolt, "grip" | "planes">;
  readonly count: number;
  /** Bolt to bolt along the tubes; null where unknown or where there is one bolt. */
  readonly spacing: number | null;
  /** null where unknown: the standard hole of this bolt. */
  readonly holeDiameter: number | null;
  /** Washers under head and nut. */
  readonly washers: boolean;
}

export type TubeName = "hoop" | "stub";

/** Refuses a sleeve that cannot exist. */
export function requireSleeve(joint: SleeveJoint): void {
  const { hoop, stub, bolt, overlap } = joint;
  for (const [name, tube] of [["the hoop", hoop] as const, ["the stub", stub] as const]) {
    requireWall(tube, name);
    requireLength(tube.outside, `an outside diameter of ${name}`);
    if (tube.outside < 2.5 * tube.wall) {
      const expected = `a diameter of ${name} of at least 2.5 walls`;
      refuse("out-of-range", expected, tube.outside, "Check the wall.");
    }
    if (tube.endDistance !== null) requireLength(tube.endDistance, `an end distance in ${name}`);
  }
  requireLength(overlap, "a sleeve length");
  requireHoleRow({ ...joint, diameter: bolt.diameter });
}

/** The tube outside of the other. */
export const outerTube = ({ hoop, stub }: SleeveJoint): TubeName =>
  hoop.outside >= stub.outside ? "hoop" : "stub";
