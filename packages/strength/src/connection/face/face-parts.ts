import { exceeds } from "../common/exceeds.ts";
import { europeanFaceBending, faceBending } from "./face-bending.ts";
import type { FaceAction, FaceParts, FaceSetting } from "./face-part.ts";
import { facePunching } from "./face-punching.ts";
import { sideWalls } from "./side-walls.ts";
import { wideStub } from "./stub-on-face.ts";

/**
 * Every way in which the face gives way, for each action. The European form is written up to D/B 0.85;
 * above it the side walls run.
 */
export function faceParts(setting: FaceSetting): FaceParts {
  const { rail, stubOutside } = setting.stub;
  const wide = exceeds(stubOutside, wideStub * rail.width);
  const groups = [
    faceBending(setting),
    wide ? sideWalls(setting) : europeanFaceBending(setting),
    facePunching(setting),
  ];
  const of = (action: FaceAction) => groups.flatMap((group) => group[action]);
  return {
    uplift: of("uplift"),
    push: of("push"),
    inPlane: of("inPlane"),
    outOfPlane: of("outOfPlane"),
  };
}
