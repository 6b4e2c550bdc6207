import { exceeds } from "../common/exceeds.ts";
import { refuse } from "../common/require.ts";
import {
  type ConnectionNote,
  type ConnectionStrength,
  type NotCovered,
  note,
  strengthOf,
} from "../common/strength.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import {
  chordStressFactor,
  enChordStressFactor,
  endLengthNeeded,
  equivalentSquare,
  widthRatio,
} from "./face-geometry-formulas.ts";
import type { FaceAction, FaceParts } from "./face-part.ts";
import { faceParts } from "./face-parts.ts";
import {
  faceFindings,
  notCoveredFace,
  requireStubOnFace,
  type StubOnFace,
  wideStub,
} from "./stub-on-face.ts";

/** What a rail's face can take under a stub: N and N m, each action alone. */
export type FaceStrength = {
  readonly covered: true;
  readonly limitStates: FaceParts;
  /** Side of the equivalent square over the width of the face; D over it for the European form. */
  readonly widthRatio: number;
  readonly roundRatio: number;
  readonly findings: readonly ConnectionNote[];
  readonly notChecked: readonly ConnectionNote[];
} & Readonly<Record<FaceAction, ConnectionStrength>>;

/**
 * Strength of the face of a rectangular rail under a round stub: bending of the face by AISC (square of
 * side pi D/4) and by EN 1993-1-8 (pi/4 rule), both as nominal strengths, punching, distortion of the
 * rail's section, and above D/B 0.85 the side walls in place of the European form. Halved near an open
 * end.
 *
 * Left out: a stub off the middle of the face, shear along the face (the weld has it), the stub's own
 * wall.
 *
 * @param stub m, Pa
 * @param utilization U of the rail at the stub (`faceUtilization`), 0 to 1
 * @returns `covered: false` outside the rules, and above U = 1, where the face fails with the rail
 * @throws Refusal `not-positive`, `out-of-range`, `sizes-disagree`
 */
export function faceStrength(
  stub: StubOnFace,
  utilization: number,
  sheet: Worksheet = unprinted,
): FaceStrength | NotCovered {
  requireStubOnFace(stub);
  if (!(utilization >= 0)) {
    const mend = "Give the stress without its sign.";
    refuse("out-of-range", "a stress ratio of the rail of zero or more", utilization, mend);
  }
  const outside = notCoveredFace(stub);
  if (outside) return outside;
  if (utilization > 1) {
    const reason = "the rail is past its own strength at this stub: its face fails with it";
    return { covered: false, id: "face-fails-with-rail", reason, mend: "Use a stronger rail." };
  }
  const { rail, stubOutside } = stub;
  const square = sheet.work(equivalentSquare, [stubOutside]);
  const beta = sheet.work(widthRatio, [square, rail.width]);
  const qf = sheet.work(chordStressFactor, [utilization, beta]);
  const roundRatio = stubOutside / rail.width;
  const kn = sheet.work(enChordStressFactor, [utilization, roundRatio]);
  const endLength = sheet.work(endLengthNeeded, [rail.width, beta]);
  const findings = faceFindings(stub, endLength);
  const halved = findings.some((finding) => finding.id === "face-open-end");
  const limitStates = faceParts({ stub, square, qf, kn, halved, sheet });
  const { uplift, push, inPlane, outOfPlane } = limitStates;
  return {
    covered: true,
    limitStates,
    widthRatio: beta,
    roundRatio,
    findings,
    notChecked: exceeds(roundRatio, wideStub) ? [...always, stubWall] : always,
    uplift: strengthOf(uplift),
    push: strengthOf(push),
    inPlane: strengthOf(inPlane),
    outOfPlane: strengthOf(outOfPlane),
  };
}

const always: readonly ConnectionNote[] = [
  note("face-off-middle", "a stub set off the middle of the rail's face"),
];
const stubWall = note(
  "stub-wall-uneven",
  "the stub's own wall where the rail's sides load it most",
);
