import { cite } from "@hoopstay/core";

/**
 * Galvanized sheet: gauge number, thickness in inches with the zinc on both faces. The steel inside
 * is that of the Manufacturers' Standard gauge. Number 8 is from memory (one chart prints 0.1680);
 * number 7 is not listed.
 */
export const galvanizedSheet = {
  citation: cite("sheet-gauge-table", "galvanized steel, numbers 9 to 20", "read"),
  rows: [
    [8, 0.1681],
    [9, 0.1532],
    [10, 0.1382],
    [11, 0.1233],
    [12, 0.1084],
    [13, 0.0934],
    [14, 0.0785],
    [15, 0.071],
    [16, 0.0635],
    [17, 0.0575],
    [18, 0.0516],
    [19, 0.0456],
    [20, 0.0396],
  ],
} as const;
