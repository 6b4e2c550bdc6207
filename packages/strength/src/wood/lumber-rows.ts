import { type Citation, cite } from "@hoopstay/core";

/** Kinds of wood, by the names of the house file. */
export const woodKinds = [
  "spruce-pine-fir",
  "southern-pine",
  "douglas-fir-larch",
  "hem-fir",
] as const;
export type WoodKind = (typeof woodKinds)[number];

/** Grades of visually graded dimension lumber, 2 to 4 in thick; stud grade is the weaker. */
export const lumberGrades = ["No. 2", "stud"] as const;
export type LumberGrade = (typeof lumberGrades)[number];

/** Reference design values, psi. */
export interface LumberRow {
  readonly wood: WoodKind;
  readonly grade: LumberGrade;
  /** Widest nominal size of the row, in, where the values go by size (southern pine). */
  readonly widest: number;
  readonly bending: number;
  readonly shear: number;
  readonly modulus: number;
  readonly citation: Citation;
}

const table4A = cite("nds-supplement-2018", "table 4A", "memory");
const table4B = cite("nds-supplement-2018", "table 4B", "memory");

const any = { widest: Number.POSITIVE_INFINITY, citation: table4A } as const;
const pine = { wood: "southern-pine", shear: 175, citation: table4B } as const;
const two = { ...pine, grade: "No. 2" } as const;
const stud = { ...pine, grade: "stud", modulus: 1_300_000 } as const;

/** The size factor is already in the rows of southern pine. */
export const lumberRows: readonly LumberRow[] = [
  {
    ...any,
    wood: "douglas-fir-larch",
    grade: "No. 2",
    bending: 900,
    shear: 180,
    modulus: 1_600_000,
  },
  {
    ...any,
    wood: "douglas-fir-larch",
    grade: "stud",
    bending: 700,
    shear: 180,
    modulus: 1_400_000,
  },
  { ...any, wood: "hem-fir", grade: "No. 2", bending: 850, shear: 150, modulus: 1_300_000 },
  { ...any, wood: "hem-fir", grade: "stud", bending: 675, shear: 150, modulus: 1_200_000 },
  { ...any, wood: "spruce-pine-fir", grade: "No. 2", bending: 875, shear: 135, modulus: 1_400_000 },
  { ...any, wood: "spruce-pine-fir", grade: "stud", bending: 675, shear: 135, modulus: 1_200_000 },
  { ...two, widest: 4, bending: 1100, modulus: 1_400_000 },
  { ...two, widest: 6, bending: 1000, modulus: 1_400_000 },
  { ...two, widest: 8, bending: 925, modulus: 1_400_000 },
  { ...two, widest: 10, bending: 800, modulus: 1_300_000 },
  { ...two, widest: 12, bending: 750, modulus: 1_300_000 },
  { ...stud, widest: 4, bending: 650 },
  { ...stud, widest: 6, bending: 575 },
];
