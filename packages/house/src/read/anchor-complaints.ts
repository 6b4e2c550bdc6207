import type { HouseInput } from "../schema/house-schema.ts";
import type { PathComplaint } from "./complaints.ts";

/** Nearer than this, m, two anchors of one direction stand in one hole. */
const oneHole = 0.025;

/** An anchor entered twice: the ground would be counted twice. Two that lead apart from one place are two. */
export function anchorComplaints({ anchors = [] }: HouseInput): PathComplaint[] {
  return anchors.flatMap((anchor, index): PathComplaint[] => {
    const { side, along, angle, toward } = anchor;
    const twin = anchors
      .slice(0, index)
      .findIndex(
        (other) =>
          other.side === side &&
          Math.abs(other.along.value - along.value) < oneHole &&
          other.angle?.value === angle?.value &&
          other.toward === toward,
      );
    if (twin < 0) return [];
    return [
      {
        path: ["anchors", index, "along"],
        code: "sizes-disagree",
        given: `${along.text} on the ${side}, where ${anchors[twin]?.name ?? `anchor ${twin + 1}`} stands already`,
        expected: "a place of its own for every anchor",
        mend: "Measure where it stands. Two tethers from one place must lead two ways: give angle and toward.",
      },
    ];
  });
}
