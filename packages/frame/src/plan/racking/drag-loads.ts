import type { FrameLoads, FrameNode, MemberLoad } from "./plan-frame.ts";
import type { Drag, RackedBase } from "./racked-base.ts";
import type { RackingFrame } from "./racking-frame.ts";

/**
 * Pull toward -y at the front ends, friction toward +y along both rails, and a side force on both
 * that rises linearly from mid-length.
 *
 * @param rise of the side force toward +x, N/m on each rail, each metre
 */
export function dragLoads(
  { nodes, members, left, right, ends }: RackingFrame,
  { length }: RackedBase,
  { pull, friction }: Drag,
  rise: number,
): FrameLoads {
  // A rail's members run toward +y: to their left is -x.
  const side = (node: number): number => -rise * ((nodes[node] as FrameNode).y - length / 2);
  const along = friction / (2 * length);
  const onRail = (member: number): MemberLoad => {
    const { from, to } = members[member] as RackingFrame["members"][number];
    return { member, along, acrossFrom: side(from), acrossTo: side(to) };
  };
  return {
    nodes: [
      { node: ends.left[0], x: 0, y: -pull.left, couple: 0 },
      { node: ends.right[0], x: 0, y: -pull.right, couple: 0 },
    ],
    members: [...left, ...right].map(onRail),
  };
}
