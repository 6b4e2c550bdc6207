import {
  asce716,
  componentNet,
  componentPressure,
  componentRatioOf,
  cornerOutward,
  effectiveArea,
  gablePerimeter,
  pressureFactors,
  wallInward,
  wallOutward,
} from "@hoopstay/load";
import { describe, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { readPublished } from "../published/read-published.ts";
import { worthOf } from "./printed-units.ts";

type Compute = (given: (key: string) => number, column: string) => number;

const coefficient: Compute = (given, column) => {
  if (column === "effective") return effectiveArea.evaluate(given("span"), given("width"));
  const columns: Record<string, () => number> = {
    inward: () => wallInward.evaluate(given("area")),
    outward: () => wallOutward.evaluate(given("area")),
    corner: () => cornerOutward.evaluate(given("area")),
    gable_inward: () => gablePerimeter(given("slope")).inward.evaluate(given("area")),
    gable_outward: () => gablePerimeter(given("slope")).outward.evaluate(given("area")),
  };
  return columns[column]?.() ?? Number.NaN;
};

const computations: Readonly<Record<string, Compute>> = {
  "component coefficient": coefficient,
  "component net pressure": (given, column) => {
    const place = { edition: asce716, exposure: "B" } as const;
    const q = pressureFactors(place, given("height")).perSpeedSquared * given("speed") ** 2;
    const outside = coefficient(given, column);
    const inside = [given("GCpi"), -given("GCpi")];
    const net = componentNet({ inward: outside, outward: outside }, inside, 1);
    const toward = column === "inward" || column === "gable_inward";
    return componentPressure.evaluate(q, toward ? net.inward : net.outward);
  },
  "component exposure coefficient": (given, exposure) => {
    const place = { edition: asce716, exposure: exposure as "B" | "C" | "D" };
    const height = given("height");
    return pressureFactors(place, height).kz * componentRatioOf(place, height);
  },
};

const folders = ["asce-7-05", "asce-7-10", "asce-7-16", "asce-7-guide", "bnbc-2020"] as const;
const isComponent = ({ quantity }: PublishedFile): boolean => quantity in computations;

function compute(file: PublishedFile, { given }: PublishedCase, column: string): number {
  const worth = (key: string): number => worthOf(file.units[key] ?? "1");
  const si = (key: string): number => Number(given[key]) * worth(key);
  return (computations[file.quantity]?.(si, column) ?? Number.NaN) / worth(column);
}

for (const file of folders.flatMap((folder) => readPublished(folder)).filter(isComponent)) {
  describe(file.file, () => {
    for (const one of file.cases) {
      for (const value of one.values) {
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}`, () => {
          expectPublished(compute(file, one, value.quantity), value);
        });
      }
    }
  });
}
