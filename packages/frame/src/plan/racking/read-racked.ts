import type { FrameNode, FrameSection, HeldFrame } from "./plan-frame.ts";
import type { Racked, RackingHold } from "./racked-base.ts";
import type { RackingFrame } from "./racking-frame.ts";

/** Reads what each part carries from the solved frame, in the places and senses of the base. */
export function readRacked(
  hold: RackingHold,
  { nodes, members, left, right, crossMembers, braces }: RackingFrame,
  { sections }: HeldFrame,
): Racked {
  const of = (member: number): readonly FrameSection[] =>
    sections[member] as readonly FrameSection[];
  const start = (member: number): FrameNode => nodes[members[member]?.from as number] as FrameNode;
  // A rail's members run toward +y with -x to their left: ways toward +x change their sense.
  const ofRail = (member: number): FrameSection[] =>
    of(member).map(({ at, axial, shear, moment }) => ({
      at: start(member).y + at,
      axial,
      shear: 0 - shear,
      moment: 0 - moment,
    }));
  const ofCrossMember = (member: number): FrameSection[] =>
    of(member).map((section) => ({ ...section, at: start(member).x + section.at }));
  return {
    hold,
    left: left.flatMap(ofRail),
    right: right.flatMap(ofRail),
    crossMembers: crossMembers.map((parts) => parts.flatMap(ofCrossMember)),
    braces: braces.map((member) => of(member)[0]?.axial as number),
  };
}
