import { type Complaint, Refusal } from "@hoopstay/core";
import { complain, notNegative, positive } from "../base-input.ts";
import type { FrameLoads, FrameMember, FrameNode } from "./plan-frame.ts";

/** Refuses, with every complaint at once, a frame or loads that cannot be computed. */
export function checkFrame(
  nodes: readonly FrameNode[],
  members: readonly FrameMember[],
  loads: FrameLoads,
): void {
  const complaints = [
    ...nodes.flatMap(({ x, y }, i) => [...finite(`nodes.${i}.x`, x), ...finite(`nodes.${i}.y`, y)]),
    ...members.flatMap((member, i) => aboutMember(`members.${i}`, member, nodes)),
    ...loads.nodes.flatMap(({ node, x, y, couple }, i) => [
      ...among(`loads.nodes.${i}.node`, node, nodes.length),
      ...finite(`loads.nodes.${i}`, x + y + couple),
      ...(couple === 0 || turns(node, members)
        ? []
        : [complain("sizes-disagree", `loads.nodes.${i}`, couple, "no couple on a pinned joint")]),
    ]),
    ...loads.members.flatMap(({ member, along, acrossFrom, acrossTo }, i) => [
      ...among(`loads.members.${i}.member`, member, members.length),
      ...finite(`loads.members.${i}`, along + acrossFrom + acrossTo),
      ...(members[member]?.bending === 0
        ? [complain("sizes-disagree", `loads.members.${i}`, member, "no line load on a pinned bar")]
        : []),
    ]),
  ];
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** Whether a beam ends at a node, so that it has a turn. */
export const turns = (node: number, members: readonly FrameMember[]): boolean =>
  members.some(({ from, to, bending }) => bending > 0 && (from === node || to === node));

function aboutMember(
  key: string,
  { from, to, axial, bending }: FrameMember,
  nodes: readonly FrameNode[],
): Complaint[] {
  const ends = [
    ...among(`${key}.from`, from, nodes.length),
    ...among(`${key}.to`, to, nodes.length),
  ];
  if (ends.length > 0) return ends;
  const [a, b] = [nodes[from] as FrameNode, nodes[to] as FrameNode];
  return [
    ...positive(`${key}.axial`, axial),
    ...notNegative(`${key}.bending`, bending),
    ...positive(`${key}.length`, Math.hypot(b.x - a.x, b.y - a.y)),
  ];
}

function among(key: string, index: number, count: number): Complaint[] {
  if (Number.isInteger(index) && index >= 0 && index < count) return [];
  return [complain("out-of-range", key, index, `a whole number from 0 to ${count - 1}`)];
}

const finite = (key: string, value: number): Complaint[] =>
  Number.isFinite(value) ? [] : [complain("not-a-number", key, value, "a finite number")];
