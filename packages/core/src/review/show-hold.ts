import type { System } from "../quantity/dimension.ts";
import { figures, show, unitOf } from "../quantity/show.ts";
import { type Citation, gradeWords } from "../source/citation.ts";
import { sources } from "../source/registry.ts";
import type { AnchorRow, RungId } from "./hold-review.ts";
import { showMeasured, speedLimit } from "./measured.ts";

/** Hours an action takes, as a range; parts of an hour in minutes. */
export function showHours({ low, high }: { readonly low: number; readonly high: number }): string {
  const one = (hours: number): string =>
    hours < 1 ? `${Math.round(hours * 60)} min` : `${figures(hours, hourUnit, 2)} h`;
  if (one(low) === one(high)) return one(low);
  const short = low < 1 === high < 1 ? one(low).replace(/ (min|h)$/, "") : one(low);
  return `${short} to ${one(high)}`;
}

const hourUnit = { symbol: "h", factor: 1, system: "si", spellings: ["h"] } as const;

/** A gust in whole units, as a forecast gives it. */
export function showGust(speed: number, system: System): string {
  if (!Number.isFinite(speed)) return speed > 0 ? "no limit" : "none";
  const { factor } = unitOf("speed", system);
  return show(speed, "speed", system, speed / factor >= 99.5 ? 3 : 2);
}

/** A gust that something stands, in whole units: rounded down, so that no more is promised. */
export const showGustLimit = (speed: number, system: System): string =>
  showMeasured(speedLimit(speed), system);

/** Short names of the rungs, for a drawing and for a line of text. */
export const rungNames: Readonly<Record<RungId, string>> = {
  "end-walls": "end walls back in",
  close: "close it",
  tighten: "tighten the tethers",
  add: "more anchors or ballast",
  people: "people away",
  animals: "animals out",
  strip: "strip the cover",
  leave: "leave it",
};

/** A source in words, where no list of sources stands beside it. */
export const citationWords = ({ source, place, grade }: Citation): string =>
  grade === "judgement"
    ? `${place} (${gradeWords[grade]})`
    : `${sources[source].title}: ${place} (${gradeWords[grade]})`;

/** Where an anchor stands, from the middle of the house: side, and how far to the front or back. */
export function showPlace({ side, along }: AnchorRow, system: System): string {
  const end = along < 0 ? "back" : "front";
  const reach =
    Math.abs(along) < 5e-4 ? "halfway" : `${show(Math.abs(along), "length", system)} ${end}`;
  return `${side}, ${reach}`;
}
