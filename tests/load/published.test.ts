import { describe, test } from "vitest";
import { expectPublished } from "../published/expect-published.ts";
import { readPublished } from "../published/read-published.ts";
import { computeWind, isWind } from "./published-wind.ts";

const folders = ["bnbc-2020", "asce-7-16", "asce-7-22", "ibc-2012", "statics"] as const;

for (const file of folders.flatMap((folder) => readPublished(folder)).filter(isWind)) {
  describe(file.file, () => {
    for (const one of file.cases) {
      for (const value of one.values) {
        const known = value.disagreement ? " (disagrees)" : "";
        test(`${one.title}, ${value.quantity} ${value.printed} ${value.unit}${known}`, () => {
          expectPublished(computeWind(file, one, value.quantity), value);
        });
      }
    }
  });
}
