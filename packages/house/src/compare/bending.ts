import type { ChainReview } from "@hoopstay/core";
import type { HouseBending } from "./stock/house-pieces.ts";
import type { BendingShare } from "./stock/joint-places.ts";

/** A value along a member; places in rising order. */
interface Along {
  readonly at: number;
  readonly value: number;
}

/** Straight between the points; outside them the nearest one. */
function valueAlong(points: readonly Along[], at: number): number {
  const after = points.findIndex((point) => point.at >= at);
  const last = points.at(-1);
  if (after < 0) return last?.value ?? 0;
  const b = points[after] as Along;
  const a = points[after - 1] ?? b;
  return b.at > a.at ? a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at) : b.value;
}

/**
 * Bending of a member of a length as a part of its greatest, whichever side the wind is from: the
 * greater of a place and its mirror image. Null where nothing bends.
 */
function shareOf(points: readonly Along[], length: number): BendingShare | null {
  const [first, last] = [points[0], points.at(-1)];
  const most = Math.max(0, ...points.map(({ value }) => Math.abs(value)));
  if (!first || !last || !(most > 0) || !(last.at > first.at)) return null;
  const size = points.map(({ at, value }) => ({ at, value: Math.abs(value) / most }));
  const place = (part: number): number => first.at + part * (last.at - first.at);
  return (along) => {
    const part = Math.min(1, Math.max(0, along / length));
    return Math.max(valueAlong(size, place(part)), valueAlong(size, place(1 - part)));
  };
}

/** Points of the hoop's line with their distance from the left foot. */
function alongHoop({ points }: ChainReview["hoop"]): Along[] {
  let at = 0;
  return points.map(({ x, z, moment }, index) => {
    const before = points[index - 1];
    if (before) at += Math.hypot(x - before.x, z - before.z);
    return { at, value: moment };
  });
}

/**
 * Where hoops and rails bend, from the load path's drawings: the governing case of the hoop, and all
 * bending lines of the rail.
 *
 * @param hoopLength of one hoop's tube, m
 */
export function bendingOf(
  { hoop, rail }: ChainReview,
  hoopLength: number,
  railLength: number,
): HouseBending {
  const lines = rail.lines
    .filter(({ measure }) => measure === "moment")
    .flatMap(({ points }) => shareOf(points, railLength) ?? []);
  return {
    hoop: shareOf(alongHoop(hoop), hoopLength),
    rail: lines.length > 0 ? (along) => Math.max(...lines.map((line) => line(along))) : null,
  };
}
