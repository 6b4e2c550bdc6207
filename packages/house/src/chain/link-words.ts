import type { LinkId } from "@hoopstay/core";

/** Owner's words for the links, from the cover's edge to the ground. */
export const linkWords: Readonly<Record<LinkId, string>> = {
  cover: "the cover's edge",
  boards: "the boards along the rails",
  hoop: "the hoops",
  ties: "the ties and braces of the hoops",
  bolts: "the bolts between hoop and stub",
  stub: "the stubs",
  weld: "the welds of the stubs",
  face: "the rail's wall under the stubs",
  rail: "the rails",
  splices: "the rail splices",
  "cross-members": "the cross members",
  "ridge-line": "what holds it along its ridge",
  "end-wall": "the end walls and their hoops",
  anchors: "the anchors",
};
