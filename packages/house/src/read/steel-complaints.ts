import { type Complaint, type Quantity, Refusal } from "@hoopstay/core";
import { formOf, type SteelClaim, steelOf } from "@hoopstay/strength";
import { steelTubeAt } from "../model/steel-tube.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import type { Path, PathComplaint } from "./complaints.ts";
import { tubesIn } from "./tubes-in.ts";

interface MillTexts {
  readonly yield?: Quantity | undefined;
  readonly tensile?: Quantity | undefined;
}

/** Strengths that no steel has, and grades that no tube of their standard has. */
export function steelComplaints(input: HouseInput): PathComplaint[] {
  const { splices } = input.rails;
  return [
    ...tubesIn(input).flatMap(({ path, tube }) => {
      const made = steelTubeAt(tube);
      if (!made) return [];
      const form = formOf(made.tube);
      const { standard, grade } = made.steel;
      const key = tube.grade ? "grade" : "standard";
      const wrong = refusalOf({ ...unknownSteel, standard, grade, form });
      return [
        ...(wrong ? [{ ...wrong, path: [...path, key] }] : []),
        ...millComplaints(path, tube, form),
      ];
    }),
    ...(splices ? millComplaints(["rails", "splices"], splices, "solid") : []),
  ];
}

const unknownSteel = { standard: "other", grade: null, yield: null, tensile: null } as const;

function millComplaints(path: Path, mill: MillTexts, form: SteelClaim["form"]): PathComplaint[] {
  const found = (["yield", "tensile"] as const).flatMap((key): PathComplaint[] => {
    const given = mill[key];
    const wrong = given && refusalOf({ ...unknownSteel, form, [key]: given.value });
    return wrong ? [{ ...wrong, given: given.text, path: [...path, key] }] : [];
  });
  if (found.length > 0 || !mill.yield || !mill.tensile) return found;
  const both = { yield: mill.yield.value, tensile: mill.tensile.value };
  const wrong = refusalOf({ ...unknownSteel, form, ...both });
  const given = `${mill.yield.text}, beside ${mill.tensile.text}`;
  return wrong ? [{ ...wrong, given, path: [...path, "yield"] }] : [];
}

/** What the strength of a steel is refused for, by the rules of its tables. */
function refusalOf(claim: SteelClaim): Complaint | undefined {
  try {
    steelOf(claim);
    return undefined;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return error.complaints[0];
  }
}
