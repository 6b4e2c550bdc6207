import type { Citation } from "@hoopstay/core";
import { birmingham } from "./birmingham.ts";
import { galvanizedSheet } from "./galvanized-sheet.ts";
import { manufacturersStandard } from "./manufacturers-standard.ts";
import { usStandard } from "./us-standard.ts";

const inch = 0.0254;

interface Table {
  readonly citation: Citation;
  readonly rows: readonly (readonly [gauge: number, inches: number])[];
}

/** The gauge tables, by the name a house file gives. A gauge without its table means nothing. */
export const gaugeTables = {
  birmingham,
  "manufacturers-standard": manufacturersStandard,
  "galvanized-sheet": galvanizedSheet,
  "us-standard": usStandard,
} as const satisfies Record<string, Table>;

export type GaugeTable = keyof typeof gaugeTables;

/** Names of the gauge tables, in order. */
export const gaugeTableNames = Object.keys(gaugeTables) as readonly GaugeTable[];

/**
 * Thickness as printed in the gauge table, with the zinc where the table includes it.
 *
 * @param gauge whole gauge number, 7 to 20
 * @param table gauge table
 * @returns m, or undefined where the table has no such number
 * @example printedThickness(14, "galvanized-sheet") // 0.0785 in
 */
export function printedThickness(gauge: number, table: GaugeTable): number | undefined {
  const { rows }: Table = gaugeTables[table];
  const row = rows.find(([number]) => number === gauge);
  return row && row[1] * inch;
}

/**
 * Wall of the steel by a gauge number, the wall a section is computed from. For `galvanized-sheet`
 * that is the sheet under the zinc, the Manufacturers' Standard thickness: zinc carries no load,
 * and its weight is counted apart.
 *
 * Left out: tolerance; a tube sold by gauge may be up to 17 % thinner (ASTM A513).
 *
 * Source: each table names its own; see `gaugeTables[table].citation`.
 *
 * @param gauge whole gauge number, 7 to 20 (galvanized sheet 8 to 20)
 * @param table gauge table
 * @returns m, or undefined where the table has no such number
 * @example wallOfGauge(14, "birmingham") // 0.083 in
 */
export function wallOfGauge(gauge: number, table: GaugeTable): number | undefined {
  if (printedThickness(gauge, table) === undefined) return undefined;
  return printedThickness(gauge, table === "galvanized-sheet" ? "manufacturers-standard" : table);
}
