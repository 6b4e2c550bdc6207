import { cite } from "@hoopstay/core";

/** Manufacturers' Standard gauge of uncoated steel sheet: gauge number, thickness in inches. */
export const manufacturersStandard = {
  citation: cite("sheet-gauge-table", "steel, numbers 7 to 20", "read"),
  rows: [
    [7, 0.1793],
    [8, 0.1644],
    [9, 0.1495],
    [10, 0.1345],
    [11, 0.1196],
    [12, 0.1046],
    [13, 0.0897],
    [14, 0.0747],
    [15, 0.0673],
    [16, 0.0598],
    [17, 0.0538],
    [18, 0.0478],
    [19, 0.0418],
    [20, 0.0359],
  ],
} as const;
