import type { Zone } from "../resultant/zone.ts";
import type { Shell } from "../shell/shell.ts";
import { gustFactor } from "./constants.ts";
import { type HoopPressureRow, hoopRows, type LoadsOfCases } from "./hoop-row.ts";
import { hoopSection, hoopStretchCount } from "./hoop-section.ts";
import type { HoopTributary } from "./hoop-tributary.ts";
import { sideWall } from "./walls.ts";

/**
 * Rows of wind across the ridge, load case 1, the same for every hoop. None with the film off.
 */
export function acrossHoopRows(shell: Shell, loads: LoadsOfCases): HoopPressureRow[] {
  const section = hoopSection(shell);
  const middles = Array.from({ length: hoopStretchCount }, (_, stretch) => {
    const [a, b] = [section[stretch], section[stretch + 1]];
    return ((a?.x ?? 0) + (b?.x ?? 0)) / 2;
  });
  const { across } = loads.surfaces;
  return hoopRows(loads, across, 0, ["+x", "-x"], ({ zones }, sense) => {
    const values = middles.map((x, stretch) => coefficientAt(zones, stretch, x));
    return sense > 0 ? values : values.reverse();
  });
}

/** The coefficient of a stretch, in wind coordinates: strips first and last, the arch between. */
function coefficientAt(zones: readonly Zone[], stretch: number, x: number): number {
  if (stretch === 0) return (zones[0] as Zone).coefficient;
  if (stretch === hoopStretchCount - 1) return (zones[zones.length - 1] as Zone).coefficient;
  let at = 1;
  while (x > (zones[at] as Zone).b.x) at += 1;
  return (zones[at] as Zone).coefficient;
}

/**
 * Rows of wind along the ridge, load case 1, for one hoop: suction on the whole arch as the mean
 * over the length it carries, side-wall suction on both strips. The end hoop to windward takes the
 * first zone's suction on all it carries. Wind on the end walls does not load a hoop in its plane.
 * None with the film off.
 */
export function alongHoopRows(
  shell: Shell,
  loads: LoadsOfCases,
  { from, to }: HoopTributary,
): HoopPressureRow[] {
  const strip = gustFactor.value * sideWall.value;
  const { across, along } = loads.surfaces;
  const first = across.reduce((count, sets) => count + sets.length, 0);
  return hoopRows(loads, along, first, ["+y", "-y"], ({ zones }, sense) => {
    const suction =
      sense > 0 ? meanAlong(shell, zones, from, to) : meanAlong(shell, zones, -to, -from);
    const outside = new Array<number>(hoopStretchCount).fill(suction);
    outside[0] = strip;
    outside[hoopStretchCount - 1] = strip;
    return outside;
  });
}

/** Mean coefficient over a stretch of the house, distances along the wind from mid-length. */
function meanAlong({ L }: Shell, zones: readonly Zone[], from: number, to: number): number {
  if (from <= -L / 2) return (zones[0] as Zone).coefficient;
  let sum = 0;
  for (const zone of zones) {
    if (from >= zone.from && to <= zone.to) return zone.coefficient;
    sum += zone.coefficient * Math.max(0, Math.min(to, zone.to) - Math.max(from, zone.from));
  }
  return sum / (to - from);
}
