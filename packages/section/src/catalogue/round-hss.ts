import { cite } from "@hoopstay/core";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

type Row = readonly [outside: string, ...walls: string[]];

/** Round HSS whose rows were read: outside diameter, nominal walls, inches. */
const read: readonly Row[] = [
  ["1.660", "0.140"],
  ["1.900", "0.120", "0.145"],
  ["2.375", "0.125", "0.154", "0.188", "0.218", "0.250"],
  ["2.500", "0.125"],
  ["2.875", "0.125"],
  ["3.000", "0.125"],
];

/** The same table from memory: only that the size is rolled rests on it. */
const remembered: readonly Row[] = [
  ["1.900", "0.188"],
  ["2.500", "0.188", "0.250"],
  ["2.875", "0.188", "0.203", "0.250"],
  ["3.000", "0.188", "0.250"],
];

const sizes = (rows: readonly Row[], grade: "read" | "memory"): CatalogueSize[] =>
  rows.flatMap(([outside, ...walls]) =>
    walls.map((wall) => ({
      name: `HSS${outside}X${wall}`,
      aliases: [],
      shape: {
        kind: "round",
        outside: tradeInches(outside),
        wall: tradeInches(wall),
        convention: "AISC",
      },
      citation: cite("aisc-shapes-15", "round HSS, dimensions", grade),
    })),
  );

/** Round HSS to ASTM A500. */
export const roundHss = [...sizes(read, "read"), ...sizes(remembered, "memory")];
