import type { Quantity } from "@hoopstay/core";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Path, PathComplaint } from "./complaints.ts";

const hair = 1e-9;

/** Rails shorter than what stands on them, and parts that lie beyond their straight length. */
export function railComplaints(input: HouseInput): PathComplaint[] {
  const { hoops, rails, cross_members: cross, corner_braces: braces } = input;
  const rail = rails.length ?? hoops.length;
  const complaints: PathComplaint[] = [];
  if (rail.value < hoops.length.value - hair) {
    complaints.push({
      path: ["rails", "length"],
      code: "sizes-disagree",
      given: `${rail.text}, under hoops over ${hoops.length.text}`,
      expected: "rails no shorter than from the first hoop to the last",
      mend: "Give the straight part that bears on the ground; every hoop stands on it.",
    });
  }
  if (cross?.at && cross.at.length !== cross.count) {
    complaints.push({
      path: ["cross_members", "at"],
      code: "sizes-disagree",
      given: `${cross.at.length} places, count ${cross.count}`,
      expected: "a place for every cross member",
      mend: "Give the place of each, or leave at out.",
    });
  }
  if (braces && braces.length.value > rail.value + hair) {
    complaints.push({
      path: ["corner_braces", "length"],
      code: "sizes-disagree",
      given: `${braces.length.text}, in rails of ${rail.text}`,
      expected: "braces no longer than the rails",
      mend: "Give the length of one brace.",
    });
  }
  return [
    ...complaints,
    ...offRail(rails.splices?.at, ["rails", "splices", "at"], rail),
    ...offRail(cross?.at, ["cross_members", "at"], rail),
  ];
}

const offRail = (places: readonly Quantity[] = [], path: Path, rail: Quantity): PathComplaint[] =>
  places.flatMap((place, index): PathComplaint[] => {
    if (Math.abs(place.value) <= rail.value / 2 + hair) return [];
    return [
      {
        path: [...path, index],
        code: "out-of-range",
        given: place.text,
        expected: `a place on the straight rail, half of ${rail.text} before and behind the middle`,
        mend: "Measure along the house from its middle; the front is plus.",
      },
    ];
  });
