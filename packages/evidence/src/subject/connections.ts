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
import { type Computations, columns, type Given } from "../published/given.ts";
import { worthOf } from "../published/units.ts";

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
const tensileOf = (grade: BoltGrade): number => {
  const size = { diameter: 0.0127, grip: 0.02, planes: 1, threads: "unknown" } as const;
  const bolt = boltStrength({ grade, ...size });
  if (!bolt.covered) throw new Error(bolt.reason);
  return bolt.tensileStress / threadedTensileStress.evaluate(1);
};

const areaOf = (given: Given): number =>
  boltTensionFormula.evaluate(1, (Math.PI / 4) * given.number("diameter") ** 2);

const eachBolt = (given: Given): number =>
  boltShearFormula.evaluate(1, given.number("Fnv"), areaOf(given));

const groupOf = (given: Given): number => given.number("count") * eachBolt(given);

const filletOf = (given: Given): number => filletStrength.evaluate(e70.value, given.number("leg"));

const designOf = (kind: "bolt" | "weld", nominal: number): number =>
  connectionFactors[kind].phi.value * nominal;

const allowableOf = (kind: "bolt" | "weld" | "bearing" | "sheetBearing", nominal: number): number =>
  nominal / connectionFactors[kind].omega.value;

const bearingOf = (given: Given): number =>
  pinBearing.evaluate(
    given.number("walls"),
    given.number("yield"),
    given.number("diameter"),
    given.number("wall"),
  );

const thinBearingOf = (given: Given): number => {
  const [walls, t, d] = [given.number("walls"), given.number("wall"), given.number("diameter")];
  const C = sheetBearingFactor.evaluate(d, t);
  return sheetBearing.evaluate(walls, C, 0.75, d, t, given.number("tensile"));
};

/** Yield strength, wall and width of a rail, and the square that stands for the stub. */
const onFace = (given: Given) =>
  [given.number("yield"), given.number("wall"), given.number("width")] as const;

const americanFace = (given: Given): number =>
  aiscFace.axial.evaluate(...onFace(given), equivalentSquare.evaluate(given.number("stub")), 1);

const europeanFace = (given: Given): number =>
  enRound.force.evaluate(enSquareFace.axial.evaluate(...onFace(given), given.number("stub"), 1));

/** The allowable pull by both forms, whose parts must be the formulas that the other columns show. */
const allowableFace = (given: Given): number => {
  const rail = {
    width: given.number("width"),
    depth: given.number("depth"),
    wall: given.number("wall"),
    yieldStrength: given.number("yield"),
    tensileStrength: given.number("tensile"),
    gradeC: true,
  };
  const face = faceStrength({ rail, stubOutside: given.number("stub"), openEnd: null }, 0);
  if (!face.covered) throw new Error(face.reason);
  const part = (id: string) => face.uplift.limitStates.find((one) => one.id === id);
  const parts = [part("face-axial")?.nominal, part("en-face-axial")?.nominal];
  const [american, european] = [americanFace(given), europeanFace(given)];
  if (parts[0] !== american || parts[1] !== european) throw new Error("parts are not the formulas");
  return part("face-axial")?.ASD ?? Number.NaN;
};

/** How strengths of bolts, welds and faces are computed, SI. */
export const connectionComputations: Computations = {
  "bolt stresses": columns({
    Fnt: (given) => boltOf(given, 1).tensileStress,
    Fnv: (given) => boltOf(given, 1).shearStress,
  }),
  "bolt tensile strength": columns({ Fu: (given) => tensileOf(given.text("grade") as BoltGrade) }),
  "bolt strengths": columns({
    Ab: (given) => boltOf(given, 1).area,
    shear1: (given) => boltOf(given, 1).shear.ASD,
    shear2: (given) => boltOf(given, 2).shear.ASD,
    tension: (given) => boltOf(given, 1).tension.ASD,
  }),
  "bolt group in shear": columns({
    Ab: areaOf,
    each: eachBolt,
    Rn: groupOf,
    LRFD: (given) => designOf("bolt", groupOf(given)),
    ASD: (given) => allowableOf("bolt", groupOf(given)),
  }),
  "tensile stress area": columns({
    As: (given) => {
      const row = uncThreads.rows.find(({ name }) => name === given.text("thread"));
      const inch = worthOf("in");
      return row && tensileStressArea.evaluate(row.diameter * inch, inch / row.perInch);
    },
  }),
  "fillet weld": columns({
    Rn: filletOf,
    LRFD: (given) => designOf("weld", filletOf(given)),
    ASD: (given) => allowableOf("weld", filletOf(given)),
    length_LRFD: (given) => given.number("Pu") / designOf("weld", filletOf(given)),
    length_ASD: (given) => given.number("Pa") / allowableOf("weld", filletOf(given)),
  }),
  "round weld": columns({
    ASD: (given) => Math.PI * given.number("outside") * allowableOf("weld", filletOf(given)),
  }),
  "least weld leg": columns({ leg: (given) => leastLeg(given.number("thinner")) }),
  "bolt through a tube": columns({
    Rn: bearingOf,
    ASD: (given) => allowableOf("bearing", bearingOf(given)),
  }),
  "bolt through a thin tube": columns({
    ASD: (given) => allowableOf("sheetBearing", thinBearingOf(given)),
  }),
  "bearing factor": columns({
    C: (given) => sheetBearingFactor.evaluate(given.number("ratio"), 1),
  }),
  "stub on a face": columns({
    AISC: americanFace,
    EN: europeanFace,
    ASD: allowableFace,
    end: (given) => {
      const width = given.number("width");
      const ratio = widthRatio.evaluate(equivalentSquare.evaluate(given.number("stub")), width);
      return endLengthNeeded.evaluate(width, ratio);
    },
  }),
  "connection factors": columns({
    phi: (given) => connectionFactors[given.text("of") as keyof typeof connectionFactors].phi.value,
    Omega: (given) =>
      connectionFactors[given.text("of") as keyof typeof connectionFactors].omega.value,
  }),
};
