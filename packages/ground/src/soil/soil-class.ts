import { type Citation, cite } from "@hoopstay/core";

/** Soil classes of 24 CFR 3285.202, best first. */
export const soilClasses = ["1", "2", "3", "4A", "4B", "5"] as const;
export type SoilClass = (typeof soilClasses)[number];

interface ClassRow {
  readonly soilClass: SoilClass;
  readonly description: string;
  /** Least blow count N (ASTM D1586) of the class; null where the table has none. */
  readonly blows: number | null;
  /** Least probe torque, in-lb, of the class. Class 2 begins above its number, not at it. */
  readonly torque: number | null;
  /** Allowable bearing, psf; null where the table refers to an engineer. */
  readonly bearing: number | null;
  readonly citation: Citation;
}

const table = (grade: "read" | "memory") => cite("24-cfr-3285", "table to 3285.202", grade);

/** The table of 24 CFR 3285.202 in its own order and units; only lower edges are kept. */
export const classRows: readonly ClassRow[] = [
  {
    soilClass: "1",
    description: "rock or hardpan",
    blows: null,
    torque: null,
    bearing: 4000,
    citation: table("read"),
  },
  {
    soilClass: "2",
    description: "very dense or cemented sand, gravel and cobbles, preloaded silt and clay, coral",
    blows: 40,
    torque: 550,
    bearing: 2000,
    citation: table("read"),
  },
  {
    soilClass: "3",
    description: "sand, silty or clayey sand, medium dense coarse sand, very stiff silt, sand clay",
    blows: 24,
    torque: 351,
    bearing: 1500,
    citation: table("read"),
  },
  {
    soilClass: "4A",
    description: "loose to medium dense sand, firm to stiff clay and silt, alluvial fill",
    blows: 18,
    torque: 276,
    bearing: 1000,
    citation: table("memory"),
  },
  {
    soilClass: "4B",
    description: "loose sand, firm clay, alluvial fill",
    blows: 12,
    torque: 175,
    bearing: 1000,
    citation: table("memory"),
  },
  {
    soilClass: "5",
    description: "uncompacted fill, peat, organic clay",
    blows: 0,
    torque: 0,
    bearing: null,
    citation: table("memory"),
  },
];

/** Orders classes: above zero where the first is the worse ground. */
export const compareClasses = (one: SoilClass, other: SoilClass): number =>
  soilClasses.indexOf(one) - soilClasses.indexOf(other);
