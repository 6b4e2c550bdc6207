import { cite, FOOT, formula } from "@hoopstay/core";
import type { Exposure } from "./edition/edition.ts";

const condition = (number: number) =>
  cite("asce-7-16", `26.8.1, condition ${number}, as in 7-22`, "memory");
const height = ["H", "height of the hill", "length"] as const;
const half = ["L_h", "half-length, as entered", "length"] as const;

export const hillPlace = formula({
  id: "hill-condition-3",
  symbol: "c_3",
  name: "distance from the crest over half-length: up to 1 the upper half",
  measure: "ratio",
  arguments: [["x", "distance from the crest", "length"], half],
  expression: "abs(x) / L_h",
  citation: condition(3),
  evaluate: (x, length) => Math.abs(x) / length,
});

export const hillSteepness = formula({
  id: "hill-condition-4",
  symbol: "c_4",
  name: "steepness over the least that counts: from 1 on",
  measure: "ratio",
  arguments: [height, half],
  expression: "H / L_h / 0.2",
  citation: condition(4),
  evaluate: (rise, length) => rise / length / 0.2,
});

export const hillRise = formula({
  id: "hill-condition-5",
  symbol: "c_5",
  name: "height over the least that counts: from 1 on",
  measure: "ratio",
  arguments: [height, ["H_0", "least height: 15 ft in exposure C and D, 60 ft in B", "length"]],
  expression: "H / H_0",
  citation: condition(5),
  evaluate: (rise, least) => rise / least,
});

/** H_0, m. */
export const leastHillRise = (exposure: Exposure): number => (exposure === "B" ? 60 : 15) * FOOT;

/** Without a hill. */
export const noHillCitation = cite("asce-7-16", "26.8.2: K_zt = 1 without a hill", "memory");
