import { type Chapter, derived } from "@hoopstay/core";
import {
  type BoltGrade,
  boltGradeRows,
  boltStrength,
  circleWeldForce,
  combinedBoltTension,
  faceStrength,
  filletWeldStrength,
  rectangleWeldForce,
  type SplicePlates,
  sleeveStrength,
  spliceStrength,
} from "@hoopstay/strength";
import { changed, inch, sleeve } from "./bolt-examples.ts";

const steel = { yieldStrength: 250e6, tensileStrength: 400e6 };
const plate = {
  ...steel,
  modulus: 200e9,
  shearModulus: 77e9,
  citation: derived("example"),
  words: "example",
  listed: true,
};
export const bolt = { grade: "SAE 5", diameter: inch / 2, threads: "in the shear plane" } as const;
const bolts = {
  bolt,
  perEnd: 2,
  spacing: 0.04,
  holeDiameter: null,
  endDistance: 0.03,
  washers: true,
};
const weld = { leg: 0.003, electrode: null, lineLength: 0.02 };
const splice: SplicePlates = {
  width: 0.08,
  thickness: 0.006,
  steel: plate,
  count: 2,
  faces: "sides",
  rail: { ...steel, wall: 0.0025, width: 0.1, depth: 0.12 },
  freeLength: 0.02,
  weld,
  bolts,
};
export const rail = { ...steel, wall: 0.005, width: 0.1, depth: 0.1, gradeC: false };
const stub = { ...steel, id: "stub", name: "the stub", wall: 0.003 };

/** Every connection, worked on a sheet. */
export const works: Readonly<Record<string, (sheet: Chapter) => unknown>> = {
  "a sleeve of thin walls": (sheet) => sleeveStrength(sleeve, sheet),
  "a sleeve of which little is known": (sheet) =>
    sleeveStrength(changed({ bolt: { grade: null }, spacing: null, washers: true }), sheet),
  "a sleeve with one bolt": (sheet) => sleeveStrength(changed({ count: 1, spacing: null }), sheet),
  "a face under a slim stub near an open end": (sheet) =>
    faceStrength({ rail, stubOutside: 0.06, openEnd: 0.01 }, 0.5, sheet),
  "a face under a wide stub": (sheet) =>
    faceStrength({ rail, stubOutside: 0.095, openEnd: null }, 0.5, sheet),
  "a weld of unknown metal": (sheet) =>
    filletWeldStrength({ leg: 0.004, electrode: null, length: 0.2 }, [stub], sheet),
  "forces on a round weld": (sheet) => circleWeldForce(0.06, 1000, 800, 50, 30, sheet),
  "forces on a rectangular weld": (sheet) => {
    const forces = { axial: 1, shearX: 2, shearY: 3, momentX: 4, momentY: 5, torque: 6 };
    return rectangleWeldForce(0.08, 0.05, 0.01, forces, sheet);
  },
  "a splice": (sheet) => spliceStrength(splice, sheet),
  "a splice of one plate and one bolt": (sheet) =>
    spliceStrength({ ...splice, count: 1, bolts: { ...bolts, perEnd: 1, spacing: null } }, sheet),
  "shear and tension together": (sheet) => {
    const strength = boltStrength({ ...bolt, grip: 0.05, planes: 1 }, sheet);
    if (!strength.covered) throw new Error(strength.reason);
    for (const method of ["ASD", "LRFD"] as const)
      combinedBoltTension(strength, 9000, method, sheet);
  },
  ...Object.fromEntries(
    (Object.keys(boltGradeRows) as BoltGrade[]).map((grade) => [
      `a bolt of grade ${grade}`,
      (sheet: Chapter) => boltStrength({ ...bolt, grade, grip: 5 * inch, planes: 2 }, sheet),
    ]),
  ),
};
