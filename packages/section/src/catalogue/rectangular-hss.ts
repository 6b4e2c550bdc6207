import { cite } from "@hoopstay/core";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

type Row = readonly [depth: string, width: string, ...walls: string[]];

/** Square and rectangular HSS whose rows were read: depth, width, nominal walls, inches. */
const read: readonly Row[] = [
  ["2", "2", "1/8", "3/16", "1/4"],
  ["2", "1", "1/8"],
  ["2", "1-1/2", "1/8"],
  ["2-1/4", "2-1/4", "1/8"],
  ["2-1/2", "2-1/2", "1/8", "1/4"],
  ["2-1/2", "1-1/2", "1/8"],
  ["3", "3", "1/8", "3/16", "1/4"],
  ["3", "2", "1/8", "3/16", "1/4"],
  ["3-1/2", "3-1/2", "1/8"],
  ["4", "2", "1/8", "1/4"],
  ["4", "3", "3/16", "1/4"],
  ["4", "4", "1/8", "3/16", "1/4"],
];

/** The same table from memory: only that the size is rolled rests on it. */
const remembered: readonly Row[] = [
  ["2", "1", "3/16"],
  ["2", "1-1/2", "3/16"],
  ["2-1/4", "2-1/4", "3/16", "1/4"],
  ["2-1/2", "2-1/2", "3/16", "5/16"],
  ["2-1/2", "1", "1/8", "3/16"],
  ["2-1/2", "1-1/2", "3/16", "1/4"],
  ["2-1/2", "2", "1/8", "3/16", "1/4"],
  ["3", "3", "5/16", "3/8"],
  ["3", "1", "1/8", "3/16"],
  ["3", "1-1/2", "1/8", "3/16", "1/4"],
  ["3", "2", "5/16"],
  ["3", "2-1/2", "1/8", "3/16", "1/4", "5/16"],
  ["3-1/2", "3-1/2", "3/16", "1/4", "5/16", "3/8"],
  ["3-1/2", "1-1/2", "1/8", "3/16", "1/4"],
  ["3-1/2", "2-1/2", "1/8", "3/16", "1/4", "5/16", "3/8"],
  ["4", "1-1/2", "1/8", "3/16", "1/4", "5/16"],
  ["4", "2", "3/16", "5/16", "3/8"],
  ["4", "3", "1/8", "5/16", "3/8"],
  ["4", "4", "5/16", "3/8", "1/2"],
  ["5", "2", "1/8", "3/16", "1/4"],
  ["5", "3", "1/8", "3/16", "1/4"],
  ["5", "5", "1/8", "3/16", "1/4", "5/16", "3/8"],
  ["6", "2", "1/8", "3/16", "1/4"],
  ["6", "3", "1/8", "3/16", "1/4"],
  ["6", "4", "1/8", "3/16", "1/4", "5/16", "3/8"],
  ["6", "6", "1/8", "3/16", "1/4", "5/16", "3/8"],
];

const sizes = (rows: readonly Row[], grade: "read" | "memory"): CatalogueSize[] =>
  rows.flatMap(([depth, width, ...walls]) =>
    walls.map((wall) => ({
      name: `HSS${depth}X${width}X${wall}`,
      aliases: [],
      shape: {
        kind: "rectangular",
        depth: tradeInches(depth),
        width: tradeInches(width),
        wall: tradeInches(wall),
        convention: "AISC",
      },
      citation: cite("aisc-shapes-15", "square and rectangular HSS, dimensions", grade),
    })),
  );

/** Square and rectangular HSS to ASTM A500. */
export const rectangularHss = [...sizes(read, "read"), ...sizes(remembered, "memory")];
