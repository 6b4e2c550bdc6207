import type { CornerBrace, RackedBase } from "@hoopstay/frame";
import { properties } from "@hoopstay/section";
import type { House } from "../../model/house-model.ts";
import type { CrossMembers } from "../../model/link-parts.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import { steelOfTube } from "../steel.ts";

const axialOf = (of: SteelTube): number => steelOfTube(of).modulus * properties(of.tube).area;

/** Four corner braces as bars at 45 degrees in the corners of the first and the last cross member. */
function bracesOf({ lines, links }: House, cross: CrossMembers): CornerBrace[] {
  const bars = links.cornerBraces;
  const last = cross.places.length - 1;
  if (bars?.count !== 4 || last < 1) return [];
  const reach = bars.length * Math.SQRT1_2;
  if (reach > lines.span) return [];
  const axial = axialOf(bars);
  return (["left", "right"] as const).flatMap((rail) => [
    { crossMember: 0, rail, alongRail: reach, alongCross: reach, axial },
    { crossMember: last, rail, alongRail: -reach, alongCross: reach, axial },
  ]);
}

/** Rails, cross members and corner braces as a frame in plan, from the end where it is pulled. */
export function rackedBase(house: House, cross: CrossMembers): RackedBase {
  const { rail, lines, links } = house;
  const beam = (of: SteelTube) => ({
    axial: axialOf(of),
    bending: steelOfTube(of).modulus * properties(of.tube).secondMomentY,
  });
  const rails = beam(links.rail);
  const member = beam(cross);
  return {
    length: rail.front + rail.back,
    span: lines.span,
    left: rails,
    right: rails,
    crossMembers: cross.places
      .map((y) => ({ ...member, y: rail.front - y }))
      .toSorted((a, b) => a.y - b.y),
    braces: bracesOf(house, cross),
  };
}
