import type { WindCase } from "@hoopstay/load";
import type { CheckId } from "@hoopstay/stability";

/** The single checks, and everything at once. */
export type SummaryId = CheckId | "together";

/** Owner's words for what a check is about. */
export const checkWords: Record<SummaryId, { readonly verb: string; readonly begins: string }> = {
  lift: { verb: "lift off", begins: "begins to lift" },
  "tip-right": { verb: "tip over to the right", begins: "begins to tip over to the right" },
  "tip-left": { verb: "tip over to the left", begins: "begins to tip over to the left" },
  "tip-front": { verb: "tip over to the front", begins: "begins to tip over to the front" },
  "tip-back": { verb: "tip over to the back", begins: "begins to tip over to the back" },
  slide: { verb: "slide", begins: "begins to slide" },
  together: { verb: "shift, all at once", begins: "begins to shift" },
};

const names = { across: ["right", "left"], along: ["front", "back"] } as const;

/** Direction the wind blows toward, by axis and by the house's own sides. */
export function directionOf({ across, along }: WindCase): string {
  const parts: string[] = [];
  if (across) parts.push(across.sense > 0 ? "+x (right)" : "-x (left)");
  if (along) parts.push(along.sense > 0 ? "+y (front)" : "-y (back)");
  return parts.join(" and ");
}

/** Short code of the direction, for the JSON and the tables. */
export const directionCode = ({ across, along }: WindCase): string =>
  [across && (across.sense > 0 ? "+x" : "-x"), along && (along.sense > 0 ? "+y" : "-y")]
    .filter(Boolean)
    .join(" ");

export const readingOf = ({ across }: WindCase): string =>
  across?.set?.reading ? `quarters of the ${across.set.reading}` : "no quarters";

export function setOf({ number, across, along, vertical }: WindCase): string {
  const parts = [across?.set?.id, along?.set?.id].filter(Boolean);
  const joined = parts.length > 0 ? parts.join(" + ") : "bare frame";
  return number === 3 || number === 4 ? `${joined}, vertical of ${vertical}` : joined;
}

export const insideOf = ({ inside }: WindCase): string =>
  inside === 0 ? "0" : inside > 0 ? `+${inside}` : String(inside);

/** Sides the wind comes from, in the owner's words. */
export function comesFrom(windCase: WindCase): string {
  const parts: string[] = [];
  const { across, along } = windCase;
  if (across) parts.push(`the ${names.across[across.sense > 0 ? 1 : 0]}`);
  if (along) parts.push(`the ${names.along[along.sense > 0 ? 1 : 0]}`);
  return parts.join(" and ");
}

/** Where the wind comes from, by the house's sides and by the compass where that is known. */
export const fromWords = (windCase: WindCase, frontBearing: number | null): string =>
  `from ${comesFrom(windCase)}${compassFrom(windCase, frontBearing)}`;

const points = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
];

/** Compass side the wind comes from, where the front's bearing is known. */
export function compassFrom({ across, along }: WindCase, frontBearing: number | null): string {
  if (frontBearing === null) return "";
  const x = across?.sense ?? 0;
  const y = along?.sense ?? 0;
  const from = frontBearing + Math.atan2(-x, -y);
  const eighth = Math.round((from * 4) / Math.PI);
  return ` (${points[((eighth % 8) + 8) % 8]})`;
}
