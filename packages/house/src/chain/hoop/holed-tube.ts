import {
  type HoledStrength,
  type HolePlace,
  holedRoundStrength,
  memberSection,
  type NotCovered,
  standardHole,
  type Worksheet,
} from "@hoopstay/strength";
import type { FootBolts } from "../../model/link-parts.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import { steelOfTube } from "../steel.ts";

/** Where the holes of a foot's bolts lie when the foot is bent in the hoop's plane. */
export const inHoopPlane = ({ axis }: FootBolts): HolePlace =>
  axis === "across" ? "extreme fibres" : "neutral axis";

/** A round tube of the foot at its bolts' holes; null where no bolt is told. */
export function holedTube(
  piece: SteelTube,
  bolts: FootBolts | null,
  place: (bolts: FootBolts) => HolePlace,
  sheet?: Worksheet,
): HoledStrength | NotCovered | null {
  const section = memberSection(piece.tube);
  if (!bolts || section.kind !== "round") return null;
  const hole = standardHole(bolts.diameter);
  return holedRoundStrength(section, steelOfTube(piece), hole, place(bolts), sheet);
}

/** Bent both ways at once the holes may lie where the resultant stretches the tube most. */
export const anyPlane = (): HolePlace => "extreme fibres";
