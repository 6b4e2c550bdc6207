import type { Quantity } from "@hoopstay/core";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Path, PathComplaint } from "./complaints.ts";
import { type ReadSizes, readSizes, shownLength } from "./read-sizes.ts";

const hair = 1e-9;
const fromGround = "Measure from the ground under the skids.";

const beyond = (path: Path, given: Quantity, expected: string, mend: string): PathComplaint => ({
  path,
  code: "out-of-range",
  given: given.text,
  expected,
  mend,
});

/** What is placed on the hoop where no hoop is. */
export function hoopComplaints(input: HouseInput, sizes: ReadSizes | undefined): PathComplaint[] {
  if (!sizes) return [];
  return [
    ...jointComplaints(input, sizes),
    ...heightComplaints(input, sizes),
    ...endComplaints(input, sizes),
  ];
}

const jointComplaints = ({ hoops }: HouseInput, { hoopLength }: ReadSizes): PathComplaint[] =>
  (hoops.joints ?? []).flatMap(({ along }, index) => {
    if (along.value <= hoopLength + hair) return [];
    const expected = `a place on the hoop, ${shownLength(hoopLength)} long from foot to foot`;
    const mend = "Measure along the tube, from the left foot.";
    return [beyond(["hoops", "joints", index, "along"], along, expected, mend)];
  });

function heightComplaints(input: HouseInput, { crown, railTop }: ReadSizes): PathComplaint[] {
  const heights = [
    { key: "hip_boards", least: railTop },
    { key: "truss_bars", least: 0 },
    { key: "knee_braces", least: 0 },
    { key: "end_braces", least: 0 },
  ] as const;
  return heights.flatMap(({ key, least }) => {
    const height = input[key]?.height;
    if (!height || (height.value >= least - hair && height.value <= crown + hair)) return [];
    const foot = least === 0 ? "" : ` from the rail's top, ${shownLength(least)},`;
    const expected = `a height${foot} up to the crown, ${shownLength(crown)}`;
    return [beyond([key, "height"], height, expected, fromGround)];
  });
}

function endComplaints(input: HouseInput, { crown, railTop }: ReadSizes): PathComplaint[] {
  const half = input.hoops.span.value / 2;
  return (["truss_bars", "knee_braces"] as const).flatMap((key) =>
    (["from", "to"] as const).flatMap((end) => {
      const { across, up } = input[key]?.[end] ?? {};
      const found: PathComplaint[] = [];
      if (across && Math.abs(across.value) > half + hair) {
        const expected = `a place within half the span, ${shownLength(half)}`;
        const mend = "Measure across from the middle of the house.";
        found.push(beyond([key, end, "across"], across, expected, mend));
      }
      if (up && (up.value < railTop - hair || up.value > crown + hair)) {
        const expected = `a height from the rail's top, ${shownLength(railTop)}, to the crown, ${shownLength(crown)}`;
        found.push(beyond([key, end, "up"], up, expected, fromGround));
      }
      return found;
    }),
  );
}

/**
 * Every hoop is computed with its tie. A variant with other hoops is not asked: what it leaves as it
 * is today is told beside it.
 */
export function tieCountComplaints(input: HouseInput): PathComplaint[] {
  const ties = input.collar_ties;
  const sizes = readSizes(input);
  if (!ties || !sizes || ties.count === sizes.hoopCount) return [];
  return [
    {
      path: ["collar_ties", "count"],
      code: "sizes-disagree",
      given: `${ties.count}, in ${sizes.hoopCount} hoops`,
      expected: "one collar tie in every hoop",
      mend: "Only a tie in every hoop is computed. With fewer, leave collar_ties out and enter their weight under fittings.",
    },
  ];
}
