import {
  aiscFace,
  type Bolt,
  type BoltGrade,
  boltShearFormula,
  boltStrength,
  boltTensionFormula,
  connectionFactors,
  e70,
  endLengthNeeded,
  enRound,
  enSquareFace,
  equivalentSquare,
  faceStrength,
  filletStrength,
  leastLeg,
  pinBearing,
  sheetBearing,
  sheetBearingFactor,
  tensileStressArea,
  threadedTensileStress,
  uncThreads,
  widthRatio,
} from "@hoopstay/strength";
import type { PublishedCase, PublishedFile } from "../published/published-case.ts";
import { worthOf as plainWorth } from "./member-units.ts";

/** SI worth of a printed unit, of forces per inch too. */
export const worthOf = (unit: string): number =>
  unit.endsWith("/in") ? plainWorth(unit.slice(0, -3)) / plainWorth("in") : plainWorth(unit);

/** What a case gives, numbers in SI. */
class Given {
  constructor(
    private readonly file: PublishedFile,
    private readonly one: PublishedCase,
  ) {}

  text(key: string): string {
    return String(this.one.given[key]);
  }

  number(key: string): number {
    const value = this.one.given[key];
    if (typeof value !== "number") throw new Error(`${this.one.title}: ${key} is not given`);
    return value * worthOf(this.file.units[key] ?? "1");
  }
}

type Columns = Readonly<Record<string, number>>;

const boltOf = (given: Given, planes: 1 | 2) => {
  const bolt = boltStrength({
    grade: given.text("grade") as BoltGrade,
    diameter: given.number("diameter"),
    threads: given.text("threads") as Bolt["threads"],
    grip: given.number("grip"),
    planes,
  });
  if (!bolt.covered) throw new Error(bolt.reason);
  return bolt;
};

/** F_u as the strengths use it: from the tensile stress, which is 0.75 of it. */
const tensileOf = (grade: BoltGrade): Columns => {
  const size = { diameter: 0.0127, grip: 0.02, planes: 1, threads: "unknown" } as const;
  const bolt = boltStrength({ grade, ...size });
  if (!bolt.covered) throw new Error(bolt.reason);
  return { Fu: bolt.tensileStress / threadedTensileStress.evaluate(1) };
};

const bolts = (given: Given): Columns => {
  const [one, two] = [boltOf(given, 1), boltOf(given, 2)];
  return { Ab: one.area, shear1: one.shear.ASD, shear2: two.shear.ASD, tension: one.tension.ASD };
};

const boltGroup = (given: Given): Columns => {
  const area = boltTensionFormula.evaluate(1, (Math.PI / 4) * given.number("diameter") ** 2);
  const each = boltShearFormula.evaluate(1, given.number("Fnv"), area);
  const Rn = given.number("count") * each;
  const { phi, omega } = connectionFactors.bolt;
  return { Ab: area, each, Rn, LRFD: phi.value * Rn, ASD: Rn / omega.value };
};

const fillet = (given: Given): Columns => {
  const Rn = filletStrength.evaluate(e70.value, given.number("leg"));
  const { phi, omega } = connectionFactors.weld;
  return { Rn, LRFD: phi.value * Rn, ASD: Rn / omega.value };
};

const filletLengths = (given: Given): Columns => {
  const line = fillet(given);
  const length = (force: string, method: "LRFD" | "ASD") =>
    given.number(force) / (line[method] ?? Number.NaN);
  return { ...line, length_LRFD: length("Pu", "LRFD"), length_ASD: length("Pa", "ASD") };
};

const throughTube = (given: Given): Columns => {
  const [walls, t, d] = [given.number("walls"), given.number("wall"), given.number("diameter")];
  const Rn = pinBearing.evaluate(walls, given.number("yield"), d, t);
  return { Rn, ASD: Rn / connectionFactors.bearing.omega.value };
};

const throughThinTube = (given: Given): Columns => {
  const [walls, t, d] = [given.number("walls"), given.number("wall"), given.number("diameter")];
  const C = sheetBearingFactor.evaluate(d, t);
  const Rn = sheetBearing.evaluate(walls, C, 0.75, d, t, given.number("tensile"));
  return { ASD: Rn / connectionFactors.sheetBearing.omega.value };
};

const stubOnFace = (given: Given): Columns => {
  const rail = {
    width: given.number("width"),
    depth: given.number("depth"),
    wall: given.number("wall"),
    yieldStrength: given.number("yield"),
    tensileStrength: given.number("tensile"),
    gradeC: true,
  };
  const stub = given.number("stub");
  const face = faceStrength({ rail, stubOutside: stub, openEnd: null }, 0);
  if (!face.covered) throw new Error(face.reason);
  const part = (id: string) => face.uplift.limitStates.find((one) => one.id === id);
  const square = equivalentSquare.evaluate(stub);
  const sizes = [rail.yieldStrength, rail.wall, rail.width] as const;
  const american = aiscFace.axial.evaluate(...sizes, square, 1);
  const european = enRound.force.evaluate(enSquareFace.axial.evaluate(...sizes, stub, 1));
  const parts = [part("face-axial")?.nominal, part("en-face-axial")?.nominal];
  if (parts[0] !== american || parts[1] !== european) throw new Error("parts are not the formulas");
  const end = endLengthNeeded.evaluate(rail.width, widthRatio.evaluate(square, rail.width));
  return { AISC: american, EN: european, ASD: part("face-axial")?.ASD ?? Number.NaN, end };
};

/** How each quantity of a published file is computed, by column, SI. */
const computations: Readonly<Record<string, (given: Given) => Columns>> = {
  "bolt stresses": (given) => {
    const { tensileStress, shearStress } = boltOf(given, 1);
    return { Fnt: tensileStress, Fnv: shearStress };
  },
  "bolt tensile strength": (given) => tensileOf(given.text("grade") as BoltGrade),
  "bolt strengths": bolts,
  "bolt group in shear": boltGroup,
  "tensile stress area": (given) => {
    const row = uncThreads.rows.find(({ name }) => name === given.text("thread"));
    if (!row) return {};
    const inch = worthOf("in");
    return { As: tensileStressArea.evaluate(row.diameter * inch, inch / row.perInch) };
  },
  "fillet weld": (given) =>
    given.text("Pu") === "undefined" ? fillet(given) : filletLengths(given),
  "round weld": (given) => ({
    ASD: Math.PI * given.number("outside") * (fillet(given).ASD ?? Number.NaN),
  }),
  "least weld leg": (given) => ({ leg: leastLeg(given.number("thinner")) }),
  "bolt through a tube": throughTube,
  "bolt through a thin tube": throughThinTube,
  "bearing factor": (given) => ({ C: sheetBearingFactor.evaluate(given.number("ratio"), 1) }),
  "stub on a face": stubOnFace,
  "connection factors": (given) => {
    const { phi, omega } = connectionFactors[given.text("of") as keyof typeof connectionFactors];
    return { phi: phi.value, Omega: omega.value };
  },
};

export const isConnection = (file: PublishedFile): boolean => file.quantity in computations;

/** The computed value of a column of a published case, SI. */
export function connectionColumn(file: PublishedFile, one: PublishedCase, column: string): number {
  return computations[file.quantity]?.(new Given(file, one))[column] ?? Number.NaN;
}
