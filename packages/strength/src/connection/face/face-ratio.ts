import type { ConnectionMethod, NotCovered } from "../common/strength.ts";
import {
  chordStressFactor,
  enChordStressFactor,
  faceUtilization,
} from "./face-geometry-formulas.ts";
import type { FaceAction, FacePart } from "./face-part.ts";
import { faceStrength } from "./face-strength.ts";
import type { StubOnFace } from "./stub-on-face.ts";

/** Lowest available strength of each group of limit states without stress in the rail. */
interface Groups {
  readonly byQf: number;
  readonly byKn: number;
  readonly fixed: number;
}

/** A face worked once, so that its ratio under any stress of the rail is a few operations. */
export interface FaceLimits {
  readonly covered: true;
  readonly widthRatio: number;
  readonly roundRatio: number;
  readonly yieldStrength: number;
  readonly groups: Readonly<Record<ConnectionMethod, Readonly<Record<FaceAction, Groups>>>>;
}

/**
 * The strengths of `faceStrength` in the form in which `faceRatio` reads them.
 *
 * @throws Refusal as `faceStrength`
 */
export function faceLimits(stub: StubOnFace): FaceLimits | NotCovered {
  const face = faceStrength(stub, 0);
  if (!face.covered) return face;
  const of = (method: ConnectionMethod, action: FaceAction): Groups => {
    const parts = face.limitStates[action];
    return {
      byQf: lowest(parts, method, "Q_f"),
      byKn: lowest(parts, method, "k_n"),
      fixed: lowest(parts, method, "not"),
    };
  };
  const groupsOf = (method: ConnectionMethod) => ({
    uplift: of(method, "uplift"),
    push: of(method, "push"),
    inPlane: of(method, "inPlane"),
    outOfPlane: of(method, "outOfPlane"),
  });
  return {
    covered: true,
    widthRatio: face.widthRatio,
    roundRatio: face.roundRatio,
    yieldStrength: stub.rail.yieldStrength,
    groups: { ASD: groupsOf("ASD"), LRFD: groupsOf("LRFD") },
  };
}

const lowest = (
  parts: readonly FacePart[],
  method: ConnectionMethod,
  lowered: FacePart["lowered"],
): number =>
  parts.reduce(
    (low, part) => (part.lowered === lowered ? Math.min(low, part[method]) : low),
    Number.POSITIVE_INFINITY,
  );

/** F_c of U, Pa: F_y for LRFD, 0.6 F_y for ASD (AISC 360-22, table K3.2). */
export const availableRailStress = (yieldStrength: number, method: ConnectionMethod): number =>
  method === "LRFD" ? yieldStrength : 0.6 * yieldStrength;

/**
 * Ratio of a face: axial force, moment along the rail and moment across it, each over what it can take
 * under this stress of the rail, added (AISC 360-22, K4).
 *
 * @param axial plus where the stub is pulled up, N
 * @param inPlane moment along the rail, N m
 * @param outOfPlane moment across the rail, N m
 * @param verticalStress of the rail at the stub, Pa; the sign is dropped
 * @param planStress of the rail at the stub, Pa; the sign is dropped
 * @returns a ratio; Infinity where the rail itself is past its strength
 */
export function faceRatio(
  face: FaceLimits,
  method: ConnectionMethod,
  axial: number,
  inPlane: number,
  outOfPlane: number,
  verticalStress: number,
  planStress: number,
): number {
  const available = availableRailStress(face.yieldStrength, method);
  const stress = faceUtilization.evaluate(verticalStress, planStress, available);
  if (stress > 1) return Number.POSITIVE_INFINITY;
  const qf = chordStressFactor.evaluate(stress, face.widthRatio);
  const kn = enChordStressFactor.evaluate(stress, face.roundRatio);
  const groups = face.groups[method];
  return (
    share(axial, axial > 0 ? groups.uplift : groups.push, qf, kn) +
    share(inPlane, groups.inPlane, qf, kn) +
    share(outOfPlane, groups.outOfPlane, qf, kn)
  );
}

const share = (demand: number, { byQf, byKn, fixed }: Groups, qf: number, kn: number): number =>
  Math.abs(demand) / Math.min(qf * byQf, kn * byKn, fixed);
