import {
  extremeAt,
  fixedFeet,
  type Hoop,
  HoopFrame,
  type HoopLine,
  type HoopLoad,
  hoopExtremes,
  hoopForcesAt,
  hoopLine,
  pinnedFeet,
  responsesOnFeet,
  superpose,
} from "@hoopstay/frame";
import type { Computations, Given } from "../published/given.ts";
import { gaussPoints } from "./gauss-points.ts";

const radius = 2.7;
const I = 2.16e-7;
/** E I over E A R^2: too small to show in the digits printed, large enough to keep ten of our own. */
const axialGive = 1e-9;

const semicircle = (): HoopLine =>
  hoopLine([{ kind: "arc", centre: { x: 0, z: 0 }, radius, fromAngle: Math.PI, toAngle: 0 }]);

const downAt = (s: number): HoopLoad => ({ kind: "point", s, x: 0, z: -1, couple: 0 });

/**
 * A unit load per horizontal length as point loads: Gauss's sum over the angle, exact where what it
 * does is smooth in the load's place, so split at the given places.
 */
function horizontalLoad(line: HoopLine, splits: readonly number[]): [HoopLoad, number][] {
  const places = [0, ...splits, line.length].sort((a, b) => a - b);
  return places.slice(1).flatMap((to, i) => {
    const from = places[i] as number;
    return gaussPoints(16).map(({ point, weight }): [HoopLoad, number] => {
      const s = from + ((to - from) * (1 + point)) / 2;
      const across = Math.cos((line.heading[0] as number) - s / radius);
      return [downAt(s), (weight / 2) * (to - from) * across];
    });
  });
}

/** A semicircle under the unit load of a case, and the size of that load over the radius. */
function solved(given: Given) {
  const line = semicircle();
  const crown = line.length / 2;
  const kinds: Readonly<Record<string, () => [HoopLoad, number][]>> = {
    crown: () => [[downAt(crown), 1]],
    horizontal: () => horizontalLoad(line, [crown, given.number("at") * radius]),
    weight: () => [[{ kind: "weight" }, 1]],
  };
  const loads = kinds[given.text("load")]?.() ?? [];
  const section = { A: I / (axialGive * radius * radius), I, E: 2e11 };
  const hinges = given.plain("hinge") === "crown" ? [crown] : [];
  const hoop: Hoop = { line, section, hinges, joints: [], bars: [] };
  const frame = new HoopFrame(
    hoop,
    loads.map(([load]) => load),
  );
  const response = new Float64Array(frame.size);
  const feet = given.text("feet") === "fixed" ? fixedFeet : pinnedFeet;
  const factors = loads.map(([, factor]) => factor);
  superpose(responsesOnFeet(frame, feet), frame.size, factors, response);
  return { frame, response, size: given.text("load") === "crown" ? 1 : radius };
}

/** How forces in a semicircular hoop are computed, per unit load and radius. */
export const hoopComputations: Computations = {
  "hoop forces": (given, column) => {
    const { frame, response, size } = solved(given);
    const { length } = frame.hoop.line;
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
        return momentAt(length / 2);
      case "at": {
        const place = found[extremeAt.momentLeast + 1] as number;
        return Math.min(place, length - place) / radius;
      }
      default:
        return given.has("at")
          ? momentAt(given.number("at") * radius)
          : (found[extremeAt.momentLeast] as number) / (size * radius);
    }
  },
};
