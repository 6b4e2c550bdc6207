import { type Citation, cite } from "@hoopstay/core";

/** The standard a tube was made to, by the names of the house file. */
export const steelStandards = [
  "A500",
  "A53",
  "A1085",
  "A1065",
  "EN 10219",
  "EN 10210",
  "other",
] as const;
export type SteelStandard = (typeof steelStandards)[number];

export const steelGrades = [
  "A500 A",
  "A500 B",
  "A500 C",
  "A53 B",
  "A1085",
  "A1065 50",
  "A513 1008",
  "A513 1010",
  "A513 1015",
  "A513 1020",
  "A36",
  "S235",
  "S355",
] as const;
export type SteelGrade = (typeof steelGrades)[number];

export type A500Edition = "A500-21" | "A500 before 2021";

/** Round tube, square or rectangular tube, or a solid bar, flat or angle. */
export type SteelForm = "round" | "shaped" | "solid";

/** Least yield and tensile strength of a grade, in the unit of its source. */
export interface SteelRow {
  readonly grade: SteelGrade;
  readonly standards: readonly SteelStandard[];
  readonly forms: readonly SteelForm[];
  readonly edition?: A500Edition;
  readonly unit: "ksi" | "MPa";
  readonly yield: number;
  readonly tensile: number;
  /** Whether AISC 360 or the Eurocode take the standard as one of their own. */
  readonly listed: boolean;
  readonly citation: Citation;
}

const tubes = ["round", "shaped"] as const;
const all = ["round", "shaped", "solid"] as const;

const commentary = cite("aisc-360-22", "commentary table C-A3.2", "read");
const old = cite("astm-a500-old", "round and shaped tube apart", "second-hand");
const asWelded = cite("astm-a513", "type 1, as welded, a distributor's page", "second-hand");
const en10210 = cite("en-10210-1", "mill table, t from 6 mm", "second-hand");
const en10219 = cite("en-10219-1", "t up to 16 mm", "memory");

const a500 = { standards: ["A500"], unit: "ksi", listed: true } as const;
const a513 = { standards: ["other"], forms: tubes, unit: "ksi", listed: false } as const;
const european = { forms: all, unit: "MPa", listed: true } as const;
const now = { ...a500, forms: tubes, edition: "A500-21", citation: commentary } as const;
const before = { ...a500, edition: "A500 before 2021", citation: old } as const;
const cold = { ...european, standards: ["EN 10219"], citation: en10219 } as const;
const hot = { ...european, standards: ["EN 10210", "other"], citation: en10210 } as const;

/**
 * Strengths by grade. Two editions of A500 disagree for round tube; both stand. The grades of A513
 * hold only where tube was ordered with tensile limits; A513 is not among the materials of AISC 360.
 */
export const steelRows: readonly SteelRow[] = [
  { ...now, grade: "A500 B", yield: 46, tensile: 58 },
  { ...now, grade: "A500 C", yield: 50, tensile: 62 },
  { ...before, forms: ["round"], grade: "A500 A", yield: 33, tensile: 45 },
  { ...before, forms: ["round"], grade: "A500 B", yield: 42, tensile: 58 },
  { ...before, forms: ["round"], grade: "A500 C", yield: 46, tensile: 62 },
  { ...before, forms: ["shaped"], grade: "A500 A", yield: 39, tensile: 45 },
  { ...before, forms: ["shaped"], grade: "A500 B", yield: 46, tensile: 58 },
  { ...before, forms: ["shaped"], grade: "A500 C", yield: 50, tensile: 62 },
  {
    grade: "A53 B",
    standards: ["A53"],
    forms: ["round"],
    unit: "ksi",
    yield: 35,
    tensile: 60,
    listed: true,
    citation: commentary,
  },
  {
    grade: "A1085",
    standards: ["A1085"],
    forms: tubes,
    unit: "ksi",
    yield: 50,
    tensile: 65,
    listed: true,
    citation: commentary,
  },
  {
    grade: "A1065 50",
    standards: ["A1065"],
    forms: tubes,
    unit: "ksi",
    yield: 50,
    tensile: 60,
    listed: true,
    citation: cite("astm-a1065", "grade 50", "memory"),
  },
  { ...a513, grade: "A513 1008", yield: 30, tensile: 42, citation: asWelded },
  { ...a513, grade: "A513 1010", yield: 32, tensile: 45, citation: asWelded },
  { ...a513, grade: "A513 1015", yield: 35, tensile: 48, citation: asWelded },
  { ...a513, grade: "A513 1020", yield: 38, tensile: 52, citation: asWelded },
  {
    grade: "A36",
    standards: ["other"],
    forms: all,
    unit: "ksi",
    yield: 36,
    tensile: 58,
    listed: true,
    citation: cite("astm-a36", "bar and plate", "memory"),
  },
  { ...cold, grade: "S235", yield: 235, tensile: 360 },
  { ...cold, grade: "S355", yield: 355, tensile: 470 },
  { ...hot, grade: "S235", yield: 235, tensile: 360 },
  { ...hot, grade: "S355", yield: 355, tensile: 470 },
];
