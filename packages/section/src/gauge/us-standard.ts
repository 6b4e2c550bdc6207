import { cite } from "@hoopstay/core";

/** United States standard gauge by statute, also used for stainless: number, inches. */
export const usStandard = {
  citation: cite("15-usc-206", "table of the standard gauge, numbers 7 to 20", "read"),
  rows: [
    [7, 0.1875],
    [8, 0.171875],
    [9, 0.15625],
    [10, 0.140625],
    [11, 0.125],
    [12, 0.109375],
    [13, 0.09375],
    [14, 0.078125],
    [15, 0.0703125],
    [16, 0.0625],
    [17, 0.05625],
    [18, 0.05],
    [19, 0.04375],
    [20, 0.0375],
  ],
} as const;
