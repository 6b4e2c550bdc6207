import { footSharesAt } from "@hoopstay/load";
import { type Combination, type CombinationId, combinations } from "@hoopstay/stability";
import type { Ballast, House } from "../model/house-model.ts";
import type { Hold } from "../review/hold.ts";
import { type RailSide, sideSign } from "./case-on-rails.ts";
import type { RailShapes, StationForces } from "./rail-shapes.ts";

/** Moments of a slope's downslope pull about the x and the y axis, N m. */
export interface SlopeMoments {
  readonly mx: number;
  readonly my: number;
}

/** What a weight estimate does to each rail, factored. */
export interface DeadOnRails {
  readonly weight: "low" | "high";
  readonly columns: Readonly<Record<RailSide, StationForces>>;
  /** Moments that may act or not; the rest lies between them. */
  readonly slopes: readonly SlopeMoments[];
  /** Of those, the ones that all others lie between. */
  readonly outerSlopes: readonly SlopeMoments[];
}

export const combinationOf = (id: CombinationId): Combination =>
  combinations.find((one) => one.id === id) as Combination;

const fixedOf = ({ ballast }: House): Ballast[] => ballast.filter(({ fixed }) => fixed);

/**
 * The weights of an arrangement on the rails: normal to the ground, divided across by the lever of
 * the centre of gravity, along each rail even over its length and linear over the hoops so that the
 * centre is right. Fixed ballast stands on its own bay. A slope's downslope pull at the centre of
 * gravity tips the house; where it would relieve it is left out, each axis by itself, and where its
 * direction is unknown each axis takes it in full, both ways: the square around the circle.
 */
export function deadOnRails(
  house: House,
  shapes: RailShapes,
  hold: Hold,
  combination: CombinationId,
): DeadOnRails[] {
  const { dead, slope: onSlope } = combinationOf(combination);
  return hold.terms[combination].holdings.map(({ terms }): DeadOnRails => {
    const { weight, slope } = terms.holding;
    const angle = slope?.angle ?? 0;
    let overturning = terms.downslope * weight.z;
    for (const { weight: block, z } of fixedOf(house)) {
      overturning += onSlope * block * Math.sin(angle) * z;
    }
    const column = (side: RailSide): StationForces => {
      const share = (x: number): number => 0.5 + (sideSign[side] * x) / house.lines.span;
      const normal = terms.deadNormal * share(weight.x);
      const middle = (house.rail.front - house.rail.back) / 2;
      const own = shapes.rail.map(
        (even, at) => -normal * (even + (weight.y - middle) * (shapes.turning[at] as number)),
      );
      for (const { x, y, weight: block } of fixedOf(house)) {
        const down = dead * block * Math.cos(angle) * share(x);
        const shares = shapes.atStations(footSharesAt(shapes.feet, y));
        for (let at = 0; at < own.length; at += 1) {
          own[at] = (own[at] as number) - down * (shares[at] as number);
        }
      }
      return own;
    };
    return {
      weight: weight.name,
      columns: { right: column("right"), left: column("left") },
      ...slopeMoments(overturning, slope?.downhill ?? null),
    };
  });
}

/** Slope moments to run; each axis with and without its part. */
function slopeMoments(
  overturning: number,
  downhill: readonly [number, number] | null,
): Pick<DeadOnRails, "slopes" | "outerSlopes"> {
  if (overturning === 0) {
    const level = [{ mx: 0, my: 0 }];
    return { slopes: level, outerSlopes: level };
  }
  const parts = (along: number | null): number[] => {
    if (along === null) return [-overturning, overturning, 0];
    return along === 0 ? [0] : [along * overturning, 0];
  };
  const [across, along] = downhill ?? [null, null];
  const pair = (mys: number[], mxs: number[]) =>
    mys.flatMap((my) => mxs.map((mx) => ({ mx: -mx, my })));
  return {
    slopes: pair(parts(across), parts(along)),
    outerSlopes: pair(parts(across).slice(0, 2), parts(along).slice(0, 2)),
  };
}
