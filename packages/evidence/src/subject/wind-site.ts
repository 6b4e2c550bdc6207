import {
  asce716,
  asce722,
  type Exposure,
  elevationFactor,
  fromService,
  type Hill,
  type HillShape,
  hillFactorOf,
  hillRows,
  pressureFactors,
} from "@hoopstay/load";
import type { Computations, Given } from "../published/given.ts";

const exposures: readonly string[] = ["B", "C", "D"];
const editionOf = (given: Given) => (given.text("edition") === "7-22" ? asce722 : asce716);

const exposureCoefficient = (given: Given, exposure: string, height: number): number => {
  if (!exposures.includes(exposure)) throw new Error(`exposure ${exposure}`);
  const place = { edition: editionOf(given), exposure: exposure as Exposure };
  return pressureFactors(place, height).kz;
};

/** A hill whose half-length is 1, so that printed ratios are its lengths. */
const hillOf = (shape: string, steepness: number, distance: number | undefined): Hill => {
  const plain = { shape: shape as HillShape, height: steepness, halfLength: 1 };
  return distance === undefined ? plain : { ...plain, distance };
};

const pressureAt = (given: Given): number => {
  const edition = editionOf(given);
  const { kd, kzt, ke } = pressureFactors({ edition, exposure: "C" }, 0);
  const kz = given.has("Kz")
    ? given.number("Kz")
    : exposureCoefficient(given, given.text("exposure"), given.number("height"));
  return edition.velocityPressure.evaluate(kz, kzt, kd, ke, given.number("speed"));
};

/** Toward the surface, Pa, at a given or computed velocity pressure. */
function netPressure(given: Given, velocity: number): number {
  const outside = given.has("GCp") ? given.number("GCp") : given.number("G") * given.number("Cp");
  return editionOf(given).pressure.evaluate(velocity, 0.85, outside, given.number("GCpi"));
}

/** How each printed quantity of a place, a hill or a speed is computed, SI. */
export const siteComputations: Computations = {
  "exposure coefficient": (given, column) =>
    exposureCoefficient(given, column, given.number("height")),
  "height and exposure adjustment": (given, column) => {
    const base = 30 * 0.3048;
    const height = Math.max(given.number("height"), column === "B" ? base : 0);
    return exposureCoefficient(given, column, height) / exposureCoefficient(given, "B", base);
  },
  "hill constants": (given, column) => {
    const row = hillRows[given.text("shape") as HillShape];
    return row[column as keyof typeof row];
  },
  "hill shape factor": (given, column) =>
    hillFactorOf(hillOf(column, given.number("steepness"), 0), "C", 0).k1,
  "hill distance factor": (given, column) => {
    const [shape = "", side] = column.split("_");
    const distance = given.number("distance") * (side === "upwind" ? -1 : 1);
    return hillFactorOf(hillOf(shape, 0.4, distance), "C", 0).k2;
  },
  "hill height factor": (given, column) =>
    hillFactorOf(hillOf(column, 0.4, 0), "C", given.number("height")).k3,
  "hill factor": (given) => {
    const distance = given.has("distance") ? given.number("distance") : undefined;
    const hill = hillOf(given.text("shape"), given.number("steepness"), distance);
    return hillFactorOf(hill, given.text("exposure") as Exposure, given.number("height")).kzt;
  },
  "elevation factor": (given) => elevationFactor.evaluate(given.number("elevation")),
  "velocity pressure": pressureAt,
  "net pressure": (given) => netPressure(given, given.number("q")),
  "net pressure at speed": (given) => netPressure(given, pressureAt(given)),
  "roof field uplift": (given) =>
    -netPressure(given, pressureAt(given) * given.number("importance")),
  "service speed": (given) => given.number("speed") / fromService.evaluate(1),
  directionality: () => pressureFactors({ edition: asce716, exposure: "C" }, 0).kd,
};
