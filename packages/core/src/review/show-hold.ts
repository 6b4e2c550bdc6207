import type { System } from "../quantity/dimension.ts";
import { figures, show, unitOf } from "../quantity/show.ts";
import type { AnchorRow } from "./hold-review.ts";

/** Hours an action takes, as a range; parts of an hour in minutes. */
export function showHours({ low, high }: { readonly low: number; readonly high: number }): string {
  const one = (hours: number): string =>
    hours < 1 ? `${Math.round(hours * 60)} min` : `${figures(hours, hourUnit, 2)} h`;
  if (one(low) === one(high)) return one(low);
  if (low < 1 || high < 1) return `${one(low)} to ${one(high)}`;
  return `${figures(low, hourUnit, 2)} to ${one(high)}`;
}

const hourUnit = { symbol: "h", factor: 1, system: "si", spellings: ["h"] } as const;

/** A gust in whole units, as a forecast gives it. */
export function showGust(speed: number, system: System): string {
  if (!Number.isFinite(speed)) return speed > 0 ? "no limit" : "none";
  const { factor } = unitOf("speed", system);
  return show(speed, "speed", system, speed / factor >= 99.5 ? 3 : 2);
}

/** Where an anchor stands, from the middle of the house: side, and how far to the front or back. */
export function showPlace({ side, along }: AnchorRow, system: System): string {
  const end = along < 0 ? "back" : "front";
  const reach =
    Math.abs(along) < 5e-4 ? "halfway" : `${show(Math.abs(along), "length", system)} ${end}`;
  return `${side}, ${reach}`;
}
