import { cite } from "@hoopstay/core";

/** Threads per inch of coarse unified threads (UNC), diameter in. */
export const uncThreads = {
  citation: cite("asme-b1-1", "coarse thread series; 1/4 to 3/8 in read, the rest", "memory"),
  rows: [
    { name: "1/4-20", diameter: 1 / 4, perInch: 20 },
    { name: "5/16-18", diameter: 5 / 16, perInch: 18 },
    { name: "3/8-16", diameter: 3 / 8, perInch: 16 },
    { name: "7/16-14", diameter: 7 / 16, perInch: 14 },
    { name: "1/2-13", diameter: 1 / 2, perInch: 13 },
    { name: "5/8-11", diameter: 5 / 8, perInch: 11 },
    { name: "3/4-10", diameter: 3 / 4, perInch: 10 },
  ],
} as const;
