import type { House } from "../../model/house-model.ts";
import type { BarPart } from "../../model/part.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import type { BendingShare } from "./joint-places.ts";
import { type StockTube, stockTube, tubesOfParts } from "./stock-tube.ts";

/** Bending along one hoop and along a rail, as parts of the greatest; null where it is not known. */
export interface HouseBending {
  /** From the left foot along the tube. */
  readonly hoop: BendingShare | null;
  /** From the back end of the rail. */
  readonly rail: BendingShare | null;
}

/** Members of one tube and one length. */
export interface Members {
  readonly what: string;
  readonly length: number;
  readonly count: number;
  /** Where they are joined today, as the house file tells, m; null where it does not. */
  readonly joints: readonly number[] | null;
  /** What decides where a joint may be; null where it may be anywhere. */
  readonly bends: "hoop" | "rail" | null;
}

/** Everything that is cut from one tube. */
export interface TubeGroup {
  readonly tube: StockTube;
  readonly members: readonly Members[];
}

function jointsOf(part: BarPart, house: House): Pick<Members, "joints" | "bends"> {
  if (part.what === "hoops") {
    const joints = house.links.joints.map(({ along }) => along).sort((a, b) => a - b);
    return { joints: joints.length > 0 ? joints : null, bends: "hoop" };
  }
  if (part.what === "rails") {
    const places = house.links.splices?.places;
    const joints = places ? places.map((along) => along + house.rail.back) : null;
    return { joints: joints && [...new Set(joints)].sort((a, b) => a - b), bends: "rail" };
  }
  return { joints: null, bends: null };
}

/** The members of a house, tube by tube. Plates and what is not tube are left out. */
export function tubeGroups(house: House, input: HouseInput): TubeGroup[] {
  const tubes = tubesOfParts(input);
  const groups = new Map<string, { tube: StockTube; members: Members[] }>();
  for (const part of house.parts) {
    if (part.kind !== "bar") continue;
    const given = tubes.get(part.what);
    if (!given) continue;
    const tube = stockTube(given);
    const group = groups.get(tube.id) ?? { tube, members: [] };
    groups.set(tube.id, group);
    const { what, length, count } = part;
    group.members.push({ what, length, count, ...jointsOf(part, house) });
  }
  return [...groups.values()];
}
