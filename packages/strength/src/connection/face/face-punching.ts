import type { Formula } from "@hoopstay/core";
import { connectionFactors } from "../common/resistance-factors.ts";
import { punchingWidth } from "./face-geometry-formulas.ts";
import { type FaceParts, type FaceSetting, facePart } from "./face-part.ts";
import { punchingAxial, punchingInPlane, punchingOutOfPlane } from "./wall-failure-formulas.ts";

type Punching = Formula<readonly [number, number, number, number]>;

/** The stub torn out of the face. AISC asks it above D/B 0.85 only; it runs always [cautious]. */
export function facePunching(setting: FaceSetting): FaceParts {
  const { stub, square, sheet } = setting;
  const { yieldStrength: Fy, wall: t, width: B } = stub.rail;
  const works = sheet.work(punchingWidth, [square, B, t]);
  const words = "the stub torn out of the rail's face";
  const torn = (action: string, measure: "force" | "moment", form: Punching) => {
    const nominal = sheet.work(form, [Fy, t, square, works]);
    const named = [`face-punching-${action}`, words, measure] as const;
    return facePart(setting, named, "not", nominal, connectionFactors.punching);
  };
  const axial = torn("axial", "force", punchingAxial);
  return {
    uplift: [axial],
    push: [axial],
    inPlane: [torn("in-plane", "moment", punchingInPlane)],
    outOfPlane: [torn("out-of-plane", "moment", punchingOutOfPlane)],
  };
}
