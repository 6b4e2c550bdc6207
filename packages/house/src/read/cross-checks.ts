import type { HouseInput } from "../schema/house-schema.ts";
import type { Path, PathComplaint } from "./complaints.ts";
import { tubeClashes } from "./tube-clashes.ts";

/** Far more hoops than a house that can be moved has. */
const mostHoops = 1000;

/** What contradicts itself in a house file that has passed its schema. */
export function houseComplaints(input: HouseInput): PathComplaint[] {
  return [
    ...tubeClashes(input),
    ...heavierComplaints(input),
    ...stateComplaints(input),
    ...reachComplaints(input),
  ];
}

const clash = (path: Path, given: string, expected: string, mend: string): PathComplaint => ({
  path,
  code: "sizes-disagree",
  given,
  expected,
  mend,
});

function heavierComplaints({ measured_weight: house, fittings }: HouseInput): PathComplaint[] {
  const pairs = [
    ...(house ? [{ path: ["measured_weight", "high"], low: house.total, high: house.high }] : []),
    ...(fittings ?? []).map(({ weight, weight_high: high }, index) => {
      return { path: ["fittings", index, "weight_high"], low: weight, high };
    }),
  ];
  return pairs.flatMap(({ path, low, high }) =>
    high && high.value < low.value
      ? [
          clash(
            path,
            `${high.text}, beside ${low.text}`,
            "a weight not below the other",
            "Swap them.",
          ),
        ]
      : [],
  );
}

function stateComplaints({ states = [], only_these_states: only }: HouseInput): PathComplaint[] {
  const ids = states.map(({ id }) => id);
  const twice = ids.flatMap((id, index) =>
    ids.indexOf(id) < index
      ? [clash(["states", index, "id"], id, "an id of its own for every state", "Rename it.")]
      : [],
  );
  if (!only || states.length > 0) return twice;
  const mend = "List the states to check, or leave only_these_states out.";
  return [{ path: ["only_these_states"], code: "key-missing", expected: "states beside it", mend }];
}

/** Hoops too many to be meant, and holds made fast beyond the end of the skids. */
function reachComplaints({ hoops, rails, anchors, ballast }: HouseInput): PathComplaint[] {
  const complaints: PathComplaint[] = [];
  if (hoops.spacing && hoops.length.value / hoops.spacing.value > mostHoops) {
    complaints.push({
      path: ["hoops", "spacing"],
      code: "out-of-range",
      given: `${hoops.spacing.text} in ${hoops.length.text}`,
      expected: `at most ${mostHoops} hoops`,
      mend: "Check the unit of the spacing.",
    });
  }
  const length = Math.max(hoops.length.value, rails.length?.value ?? 0) / 2;
  const noses = Math.max(rails.noses?.front?.value ?? 0, rails.noses?.back?.value ?? 0);
  const holds = [
    ...(anchors ?? []).map(({ along }, index) => ({ path: ["anchors", index, "along"], along })),
    ...(ballast ?? []).flatMap(({ at: { along }, fixed }, index) =>
      along && fixed ? [{ path: ["ballast", index, "at", "along"], along }] : [],
    ),
  ];
  for (const { path, along } of holds) {
    if (Math.abs(along.value) <= length + noses + 1e-9) continue;
    complaints.push({
      path,
      code: "out-of-range",
      given: along.text,
      expected: "a place on the skids, measured from the middle of the house",
      mend: "Measure along the house from its middle; the front is plus.",
    });
  }
  return complaints;
}
