import type { HouseInput } from "../schema/house-schema.ts";
import type { TubeInput } from "../schema/tube.ts";
import type { PathComplaint } from "./complaints.ts";
import { tubesIn } from "./tubes-in.ts";

/** Keys of a tube that say the same thing in two ways: either may stand, not both. */
const either = [
  ["size", ["outside", "depth", "width", "wall", "gauge", "gauge_table"]],
  ["wall", ["gauge", "gauge_table"]],
  ["outside", ["depth", "width"]],
] as const satisfies readonly (readonly [keyof TubeInput, readonly (keyof TubeInput)[]])[];

/** Tubes whose size is given twice, so that one of the two would count and the other be ignored. */
export function tubeClashes(input: HouseInput): PathComplaint[] {
  return tubesIn(input).flatMap(({ path, tube }) =>
    either.flatMap(([key, others]): PathComplaint[] => {
      const beside = others.filter((other) => tube[other] !== undefined);
      if (tube[key] === undefined || beside.length === 0) return [];
      return [
        {
          path: [...path, key],
          code: "sizes-disagree",
          given: `${key} beside ${beside.join(", ")}`,
          expected: `${key} or ${beside.join(", ")}, not both`,
          mend: "Take out the one that was not measured.",
        },
      ];
    }),
  );
}
