import type { HouseInput } from "../schema/house-schema.ts";
import { anchorComplaints } from "./anchor-complaints.ts";
import type { Path, PathComplaint } from "./complaints.ts";
import { footComplaints } from "./foot-complaints.ts";
import { hoopComplaints } from "./hoop-complaints.ts";
import { railComplaints } from "./rail-complaints.ts";
import { mostHoops, readSizes } from "./read-sizes.ts";
import { steelComplaints } from "./steel-complaints.ts";
import { tubeClashes } from "./tube-clashes.ts";

/** What contradicts itself in a house file that has passed its schema. */
export function houseComplaints(input: HouseInput): PathComplaint[] {
  const sizes = readSizes(input);
  return [
    ...tubeClashes(input),
    ...steelComplaints(input),
    ...heavierComplaints(input),
    ...stateComplaints(input),
    ...nameComplaints(input),
    ...reachComplaints(input),
    ...anchorComplaints(input),
    ...footComplaints(input, sizes),
    ...railComplaints(input),
    ...hoopComplaints(input, sizes),
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

/** Anchors are told apart by their names, and so are variants. */
function nameComplaints({ anchors = [], variants = [] }: HouseInput): PathComplaint[] {
  const mend = "Rename it, or leave the name out.";
  return [
    ...twiceNamed("anchors", anchors, "a name of its own for every anchor", mend),
    ...twiceNamed("variants", variants, "a name of its own for every variant", "Rename it."),
  ];
}

function twiceNamed(
  key: string,
  entries: readonly { readonly name?: string | undefined }[],
  expected: string,
  mend: string,
): PathComplaint[] {
  const names = entries.map(({ name }) => name);
  return names.flatMap((name, index) =>
    name !== undefined && names.indexOf(name) < index
      ? [clash([key, index, "name"], name, expected, mend)]
      : [],
  );
}

/** Hoops too many to be meant, and holds made fast beyond the end of the skids. */
function reachComplaints(input: HouseInput): PathComplaint[] {
  const { hoops, rails, anchors } = input;
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
  const holds = (anchors ?? []).map(({ along }, index) => {
    return { path: ["anchors", index, "along"], along };
  });
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
  return [...complaints, ...insideComplaints(input, length + noses)];
}

/** Weights that stand on no part of the house: a bin outside may stand off by the hoops' rise. */
function insideComplaints(input: HouseInput, reach: number): PathComplaint[] {
  const { hoops, bins = [], fittings = [], ballast = [], measured_weight: measured } = input;
  const half = hoops.span.value / 2;
  const places = [
    ...bins.map(({ at, outside }, index) => {
      return { path: ["bins", index, "at"], at, off: outside ? hoops.rise.value : 0 };
    }),
    ...fittings.map(({ at }, index) => ({ path: ["fittings", index, "at"], at, off: 0 })),
    ...ballast.flatMap(({ at, fixed }, index) =>
      fixed ? [{ path: ["ballast", index, "at"], at, off: 0 }] : [],
    ),
    ...(measured?.at ? [{ path: ["measured_weight", "at"], at: measured.at, off: 0 }] : []),
  ];
  return places.flatMap(({ path, at: { across, along }, off }) => {
    const ways = [
      { key: "across", place: across, most: half + off },
      { key: "along", place: along, most: reach + off },
    ];
    return ways.flatMap(({ key, place, most }): PathComplaint[] => {
      if (!place || Math.abs(place.value) <= most + 1e-9) return [];
      const mend = "Measure from the middle of the house; right and front are plus.";
      const expected = "a place on the house";
      return [{ path: [...path, key], code: "out-of-range", given: place.text, expected, mend }];
    });
  });
}
