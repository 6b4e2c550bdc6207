import { findSize, type Tube } from "@hoopstay/section";
import type { PathComplaint } from "../read/complaints.ts";
import type { TubeInput, tubeGrades, tubeStandards } from "../schema/tube.ts";
import { tubeModel } from "./tube-model.ts";

/** The standard a tube was made to, as the house file names it. */
export type TubeStandard = keyof typeof tubeStandards;
type TubeGrade = (typeof tubeGrades)[number];

/** What is known of the strength of a tube's steel; Pa where a mill certificate tells. */
interface SteelClaim {
  readonly standard: TubeStandard;
  readonly grade: TubeGrade | null;
  readonly yield: number | null;
  readonly tensile: number | null;
}

/** A tube with what is known of its steel. */
export interface SteelTube {
  readonly tube: Tube;
  readonly steel: SteelClaim;
}

/** The standard behind a catalogue size, by the name it is sold under. */
function standardOfSize(name: string): TubeStandard {
  if (name.startsWith("HSS")) return "A500";
  if (name.startsWith("Pipe")) return "A53";
  return "other";
}

function standardOf(input: TubeInput, tube: Tube): TubeStandard {
  if (input.standard) return input.standard;
  if (tube.kind === "round" || tube.kind === "rectangular") {
    if (tube.convention === "EN 10219-2") return "EN 10219";
    if (tube.convention === "EN 10210-2") return "EN 10210";
  }
  const size = input.size === undefined ? undefined : findSize(input.size);
  return size ? standardOfSize(size.name) : "other";
}

/** A tube of the house file whose section was read before, with its steel. */
export const steelTube = (input: TubeInput, tube: Tube): SteelTube => ({
  tube,
  steel: {
    standard: standardOf(input, tube),
    grade: input.grade ?? null,
    yield: input.yield?.value ?? null,
    tensile: input.tensile?.value ?? null,
  },
});

/** The same, for a tube whose complaints are made elsewhere. */
export function steelTubeAt(input: TubeInput | undefined): SteelTube | null {
  if (!input) return null;
  const elsewhere: PathComplaint[] = [];
  const tube = tubeModel(input, [], elsewhere);
  return tube ? steelTube(input, tube) : null;
}
