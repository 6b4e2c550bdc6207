import { FOOT, POUND_FORCE, power } from "@hoopstay/core";
import type { AnchorKind } from "./anchor-kind.ts";

const none = { upright: false, direct: false, links: {}, lead: "out", knownScatter: null } as const;
const inch = FOOT / 12;
const degree = Math.PI / 180;

/**
 * Kinds that are looked at where the house file names none, so that the question "how many of what"
 * has an answer. Common sizes, no source; none of them is taken to be fitted.
 */
export const commonKinds: readonly AnchorKind[] = [
  {
    ...none,
    id: "screw",
    words: "common screw anchor, plate 6 in, 42 in deep",
    body: {
      kind: "screw",
      helices: [{ diameter: 6 * inch, depth: 42 * inch }],
      shaft: { diameter: 0.75 * inch, plasticModulus: power(0.75 * inch, 3) / 6, pullHeight: 0.05 },
    },
    angle: 60 * degree,
    breadth: 6 * inch,
  },
  {
    ...none,
    id: "deadman",
    words: "buried timber, 9 in by 5 ft, 4 ft deep",
    body: { kind: "deadman", body: "timber", face: 9 * inch, length: 5 * FOOT, depth: 4 * FOOT },
    angle: 45 * degree,
    breadth: null,
  },
  {
    ...none,
    id: "block",
    words: "concrete block of 2,300 lb, 2 ft wide, on a strap",
    body: {
      kind: "block",
      block: { weight: 2300 * POUND_FORCE, width: 2 * FOOT, tieHeight: FOOT, tieSetback: 0 },
    },
    angle: 45 * degree,
    breadth: null,
  },
];
