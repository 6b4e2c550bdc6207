import type { LinkNotChecked, Words } from "@hoopstay/core";
import { baseRacking } from "./along/base-racking.ts";
import type { ChainContext } from "./context.ts";
import type { LinkMaker, LinkRow } from "./link.ts";
import { anchorsLink } from "./links/anchors.ts";
import { boardsLink } from "./links/boards.ts";
import { boltsLink } from "./links/bolts.ts";
import { coverLink } from "./links/cover.ts";
import { crossMembersLink } from "./links/cross-members.ts";
import { endWallLink } from "./links/end-wall.ts";
import { faceLink } from "./links/face.ts";
import { hoopLink } from "./links/hoop.ts";
import { railLink } from "./links/rail.ts";
import { ridgeLineLink } from "./links/ridge-line.ts";
import { splicesLink } from "./links/splices.ts";
import { stubLink } from "./links/stub.ts";
import { tiesLink } from "./links/ties.ts";
import { weldLink } from "./links/weld.ts";

/** Every link of the load path, from the cover's edge to the ground. */
const makers: readonly LinkMaker[] = [
  coverLink,
  boardsLink,
  hoopLink,
  tiesLink,
  boltsLink,
  stubLink,
  weldLink,
  faceLink,
  railLink,
  splicesLink,
  crossMembersLink,
  ridgeLineLink,
  endWallLink,
  anchorsLink,
];

export interface ChainRows {
  readonly rows: readonly LinkRow[];
  readonly notChecked: readonly LinkNotChecked[];
  readonly findings: readonly Words[];
}

export function chainRows(context: ChainContext): ChainRows {
  const made = makers.map((maker) => maker(context));
  return {
    rows: made.flatMap(({ rows }) => rows),
    notChecked: made.flatMap(({ notChecked }) => notChecked),
    findings: [...made.flatMap(({ findings }) => findings), ...baseRacking(context)],
  };
}
