import type { Formula } from "@hoopstay/core";
import { connectionFactors } from "../common/resistance-factors.ts";
import { type FaceParts, type FaceSetting, facePart } from "./face-part.ts";
import { aiscFace, enRound, enSquareFace } from "./plastification-formulas.ts";
import { chordDistortion } from "./wall-failure-formulas.ts";

type YieldLine = Formula<readonly [number, number, number, number, number]>;

const { face: factors } = connectionFactors;

/** Bending of the face by AISC, and distortion of the rail's section. */
export function faceBending(setting: FaceSetting): FaceParts {
  const { stub, square, qf, sheet } = setting;
  const { yieldStrength: Fy, wall: t, width: B, depth: H } = stub.rail;
  const bent = (action: string, measure: "force" | "moment", form: YieldLine) => {
    const named = [`face-${action}`, "bending of the rail's face", measure] as const;
    return facePart(setting, named, "Q_f", sheet.work(form, [Fy, t, B, square, qf]), factors);
  };
  const distorted = sheet.work(chordDistortion, [Fy, t, B, H, square]);
  const distortion = ["face-distortion", "distortion of the rail's section", "moment"] as const;
  const axial = bent("axial", "force", aiscFace.axial);
  return {
    uplift: [axial],
    push: [axial],
    inPlane: [bent("in-plane", "moment", aiscFace.inPlane)],
    outOfPlane: [
      bent("out-of-plane", "moment", aiscFace.outOfPlane),
      facePart(setting, distortion, "not", distorted, factors),
    ],
  };
}

/** Bending of the face by EN 1993-1-8, as a nominal strength under the factors of AISC. */
export function europeanFaceBending(setting: FaceSetting): FaceParts {
  const { stub, kn, sheet } = setting;
  const { yieldStrength: Fy, wall: t, width: B } = stub.rail;
  const words = "bending of the rail's face, European form";
  const bent = (action: string, measure: "force" | "moment", form: YieldLine) => {
    const square = sheet.work(form, [Fy, t, B, stub.stubOutside, kn]);
    const nominal = sheet.work(enRound[measure], [square]);
    return facePart(setting, [`en-face-${action}`, words, measure], "k_n", nominal, factors);
  };
  const axial = bent("axial", "force", enSquareFace.axial);
  return {
    uplift: [axial],
    push: [axial],
    inPlane: [bent("in-plane", "moment", enSquareFace.inPlane)],
    outOfPlane: [bent("out-of-plane", "moment", enSquareFace.outOfPlane)],
  };
}
