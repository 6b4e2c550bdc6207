import { at, line, polyline, type Spot } from "../drawing/svg.ts";
import type { Station } from "./hoop-stage.ts";

const reach = 38;
const least = 0.15;

/** A place on a drawn line where a number is worth printing. */
export interface Peak {
  readonly place: number;
  readonly value: number;
}

/** The largest value of every stretch of one sign; what is small beside the largest is left out. */
export function peaksOf(values: readonly number[]): Peak[] {
  const most = Math.max(...values.map(Math.abs), 0);
  const found: Peak[] = [];
  values.forEach((value, place) => {
    const last = found.at(-1);
    if (last === undefined || Math.sign(value) !== Math.sign(last.value))
      found.push({ place, value });
    else if (Math.abs(value) > Math.abs(last.value)) found.splice(-1, 1, { place, value });
  });
  return found.filter(({ value }) => most > 0 && Math.abs(value) >= least * most);
}

/** Values drawn across a line, plus outward: the filled shape and the tip of every value. */
export function across(
  stations: readonly Station[],
  values: readonly number[],
): { readonly tips: readonly Spot[]; readonly markup: string } {
  const most = Math.max(...values.map(Math.abs), 0);
  const tips = stations.map(({ spot, out }, place) => {
    const size = most === 0 ? 0 : (reach * (values[place] ?? 0)) / most;
    return { x: spot.x + size * out.x, y: spot.y + size * out.y };
  });
  const every = Math.max(1, Math.round(stations.length / 40));
  const ordinates = stations.flatMap(({ spot }, place) =>
    place % every === 0 ? [line(spot, tips[place] as Spot, "g")] : [],
  );
  const spots = stations.map(({ spot }) => spot);
  const shape = `<path class="lobe" d="M${[...spots, ...tips.toReversed()].map(at).join("L")}z"/>`;
  return { tips, markup: `${shape}${ordinates.join("")}${polyline(spots, "o")}` };
}
