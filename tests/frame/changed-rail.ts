import type { LoadedRail } from "./arbitrary-rail.ts";

/**
 * For turns of the stiff rail about each support, both ways: work of the loads less the most that
 * the supports can take. A load is out of reach exactly where one of these is positive; between
 * these turns the excess is linear.
 */
export function turnsOf({ rail, loads, supports }: LoadedRail): number[] {
  const { uniform, forces, couples } = loads;
  const near = 1e-9 * rail.length;
  if (supports.every(({ x }) => Math.abs(x - (supports[0]?.x ?? 0)) <= near))
    return [Number.POSITIVE_INFINITY];
  return supports.flatMap((pivot) =>
    [1, -1].map((sense) => {
      const lift = (x: number): number => sense * (x - pivot.x);
      const work =
        uniform * rail.length * lift(rail.length / 2) +
        forces.reduce((sum, { x, force }) => sum + force * lift(x), 0) +
        couples.reduce((sum, { couple }) => sum + sense * couple, 0);
      const taken = supports.map(({ kind, x, cap = Number.POSITIVE_INFINITY }) => {
        const way = kind === "anchor" ? lift(x) : kind === "ground" ? -lift(x) : Math.abs(lift(x));
        return way > near ? cap * way : 0;
      });
      return work - taken.reduce((sum, one) => sum + one, 0);
    }),
  );
}

/** The loads of a rail times a factor. */
export function scaled({ loads }: LoadedRail, factor: number): LoadedRail["loads"] {
  return {
    uniform: factor * loads.uniform,
    forces: loads.forces.map(({ x, force }) => ({ x, force: factor * force })),
    couples: loads.couples.map(({ x, couple }) => ({ x, couple: factor * couple })),
  };
}

/** A rail seen from behind. */
export function mirrorOf({ rail, loads, supports }: LoadedRail): LoadedRail {
  const over = (x: number): number => rail.length - x;
  return {
    rail,
    loads: {
      uniform: loads.uniform,
      forces: loads.forces.map(({ x, force }) => ({ x: over(x), force })),
      couples: loads.couples.map(({ x, couple }) => ({ x: over(x), couple: -couple })),
    },
    supports: supports.map((support) => ({ ...support, x: over(support.x) })),
  };
}
