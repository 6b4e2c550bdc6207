import { cite } from "@hoopstay/core";

/** Birmingham (Stubs) gauge of tube: gauge number, wall in inches, as printed. */
export const birmingham = {
  citation: cite("holtzapffel", "Birmingham wire gauge, numbers 7 to 20", "read"),
  rows: [
    [7, 0.18],
    [8, 0.165],
    [9, 0.148],
    [10, 0.134],
    [11, 0.12],
    [12, 0.109],
    [13, 0.095],
    [14, 0.083],
    [15, 0.072],
    [16, 0.065],
    [17, 0.058],
    [18, 0.049],
    [19, 0.042],
    [20, 0.035],
  ],
} as const;
