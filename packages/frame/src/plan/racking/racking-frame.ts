import type { RailSide } from "../base.ts";
import type { FrameMember, FrameNode } from "./plan-frame.ts";
import type { CornerBrace, RackedBase, RackedBeam } from "./racked-base.ts";

/** Places nearer than this part of the length are one joint. */
const samePlace = 1e-6;

/** The base as nodes and members, and which of these are which. */
export interface RackingFrame {
  readonly nodes: readonly FrameNode[];
  readonly members: readonly FrameMember[];
  /** Members of each rail from the front end on, of each cross member from the left, and braces. */
  readonly left: readonly number[];
  readonly right: readonly number[];
  readonly crossMembers: readonly (readonly number[])[];
  readonly braces: readonly number[];
  /** Nodes at the ends of each rail: front, rear. */
  readonly ends: Readonly<Record<RailSide, readonly [number, number]>>;
}

export function rackingFrame(base: RackedBase): RackingFrame {
  const { length, span, crossMembers, braces } = base;
  const near = samePlace * length;
  const nodes: FrameNode[] = [];
  const members: FrameMember[] = [];
  const xOf = (rail: RailSide): number => (rail === "left" ? 0 : span);
  const nodeAt = (x: number, y: number): number => {
    const known = nodes.findIndex(
      (node) => Math.abs(node.x - x) <= near && Math.abs(node.y - y) <= near,
    );
    return known >= 0 ? known : nodes.push({ x, y }) - 1;
  };
  const string = (joints: readonly number[], { axial, bending }: RackedBeam): number[] =>
    joints.slice(1).map((to, i) => {
      return members.push({ from: joints[i] as number, to, axial, bending }) - 1;
    });
  const onRail = (rail: RailSide): number[] => {
    const braced = braces.filter((one) => one.rail === rail).map((one) => railPlace(base, one));
    const places = [0, length, ...crossMembers.map(({ y }) => y), ...braced];
    return apart(places, near).map((y) => nodeAt(xOf(rail), y));
  };
  const rails = { left: onRail("left"), right: onRail("right") };
  const left = string(rails.left, base.left);
  const right = string(rails.right, base.right);
  const across = crossMembers.map((member, index) => {
    const ends = braces.filter((one) => one.crossMember === index);
    const places = [0, span, ...ends.map((one) => crossPlace(base, one))];
    return string(
      apart(places, near).map((x) => nodeAt(x, member.y)),
      member,
    );
  });
  const bars = braces.map((one) => {
    const from = nodeAt(xOf(one.rail), railPlace(base, one));
    const corner = crossMembers[one.crossMember] as RackedBase["crossMembers"][number];
    const to = nodeAt(crossPlace(base, one), corner.y);
    return members.push({ from, to, axial: one.axial, bending: 0 }) - 1;
  });
  const endsOf = (joints: readonly number[]) => [joints[0], joints.at(-1)] as [number, number];
  return {
    nodes,
    members,
    left,
    right,
    crossMembers: across,
    braces: bars,
    ends: { left: endsOf(rails.left), right: endsOf(rails.right) },
  };
}

const railPlace = ({ crossMembers }: RackedBase, { crossMember, alongRail }: CornerBrace): number =>
  (crossMembers[crossMember]?.y as number) + alongRail;

const crossPlace = ({ span }: RackedBase, { rail, alongCross }: CornerBrace): number =>
  rail === "left" ? alongCross : span - alongCross;

/** Places in rising order, those that fall together once. */
function apart(places: readonly number[], near: number): number[] {
  const rising = [...places].sort((a, b) => a - b);
  return rising.filter((place, i) => i === 0 || place - (rising[i - 1] as number) > near);
}
