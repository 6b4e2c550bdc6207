import {
  extremeAt,
  fixedFeet,
  type Hoop,
  type HoopLoad,
  hoopExtremes,
  hoopForcesAt,
  pinnedFeet,
} from "@hoopstay/frame";
import { describe, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import type { PublishedCase } from "../published/published-case.ts";
import { readPublished } from "../published/read-published.ts";
import {
  bareHoop,
  downAt,
  horizontalLoad,
  type SolvedHoop,
  sectionOf,
  segment,
  solvedHoop,
} from "./hoop-simple.ts";

const radius = 2.7;
/** Too small to show in the digits printed, large enough to keep ten of our own. */
const axialGive = 1e-9;
const degree = Math.PI / 180;

/** A semicircle under the unit load of a case, and the size of that load over the radius. */
function solve({ given }: PublishedCase): SolvedHoop & { size: number } {
  const line = segment(radius, Math.PI / 2);
  const crown = line.length / 2;
  const kinds: Readonly<Record<string, () => [HoopLoad, number][]>> = {
    crown: () => [[downAt(crown), 1]],
    horizontal: () => horizontalLoad(line, [crown, Number(given.at) * degree * radius]),
    weight: () => [[{ kind: "weight" }, 1]],
  };
  const loads = kinds[String(given.load)]?.() ?? [];
  const bare = bareHoop(line, sectionOf(axialGive, radius));
  const hoop: Hoop = given.hinge === "crown" ? { ...bare, hinges: [crown] } : bare;
  const feet = given.feet === "fixed" ? fixedFeet : pinnedFeet;
  return { ...solvedHoop(hoop, feet, loads), size: given.load === "crown" ? 1 : radius };
}

/** A printed column of a solved semicircle. */
function columnOf(
  { frame, response, size }: ReturnType<typeof solve>,
  column: string,
  at: unknown,
) {
  const found = new Float64Array(12);
  hoopExtremes(frame, response, found);
  const momentAt = (s: number): number => hoopForcesAt(frame, response, s).M / (size * radius);
  switch (column) {
    case "H":
      return (response[0] as number) / size;
    case "V":
      return (response[1] as number) / size;
    case "M_a":
      return momentAt(0);
    case "M_crown":
      return momentAt(frame.hoop.line.length / 2);
    case "at": {
      const place = found[extremeAt.momentLeast + 1] as number;
      return Math.min(place, frame.hoop.line.length - place) / radius / degree;
    }
    default:
      return at === undefined
        ? (found[extremeAt.momentLeast] as number) / (size * radius)
        : momentAt(Number(at) * degree * radius);
  }
}

describe.each(readPublished("statics", "hoop forces"))("$place", ({ cases }) => {
  test.each(cases.map((one) => [one.title, one] as const))("%s", (_, one) => {
    const solved = solve(one);
    for (const value of one.values) {
      expectPublished(columnOf(solved, value.quantity, one.given.at), value);
    }
  });
});
