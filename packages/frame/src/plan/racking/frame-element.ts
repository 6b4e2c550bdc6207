import type { FrameMember, FrameNode, MemberLoad } from "./plan-frame.ts";

/** A member ready to compute, with the line loads on it, N/m. */
export interface FrameElement {
  readonly member: FrameMember;
  readonly length: number;
  /** Turn from the frame's axes (x, y, turn) of one node to the member's own, three by three. */
  readonly axes: readonly number[];
  /** Over way along, way across and turn of its first node and its second, six by six. */
  readonly stiffness: readonly number[];
  along: number;
  acrossFrom: number;
  acrossTo: number;
}

export function frameElements(
  nodes: readonly FrameNode[],
  members: readonly FrameMember[],
  loads: readonly MemberLoad[],
): FrameElement[] {
  const elements = members.map((member): FrameElement => {
    const [a, b] = [nodes[member.from] as FrameNode, nodes[member.to] as FrameNode];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [tx, ty] = [(b.x - a.x) / length, (b.y - a.y) / length];
    const axes = [tx, ty, 0, -ty, tx, 0, 0, 0, 1];
    const stiffness = memberStiffness(member, length);
    return { member, length, axes, stiffness, along: 0, acrossFrom: 0, acrossTo: 0 };
  });
  for (const { member, along, acrossFrom, acrossTo } of loads) {
    const element = elements[member] as FrameElement;
    element.along += along;
    element.acrossFrom += acrossFrom;
    element.acrossTo += acrossTo;
  }
  return elements;
}

function memberStiffness({ axial, bending }: FrameMember, h: number): number[] {
  const a = axial / h;
  const b = bending / h;
  const c = (6 * b) / h;
  const d = (2 * c) / h;
  return [
    [a, 0, 0, -a, 0, 0],
    [0, d, c, 0, -d, c],
    [0, c, 4 * b, 0, -c, 2 * b],
    [-a, 0, 0, a, 0, 0],
    [0, -d, -c, 0, d, -c],
    [0, c, 2 * b, 0, -c, 4 * b],
  ].flat();
}

/** Forces and couples that clamps put on the ends of a beam with its line loads, in its axes. */
export function clampedForces({ length: h, along, acrossFrom, acrossTo }: FrameElement): number[] {
  return [
    (-along * h) / 2,
    (-h * (7 * acrossFrom + 3 * acrossTo)) / 20,
    (-h * h * (3 * acrossFrom + 2 * acrossTo)) / 60,
    (-along * h) / 2,
    (-h * (3 * acrossFrom + 7 * acrossTo)) / 20,
    (h * h * (2 * acrossFrom + 3 * acrossTo)) / 60,
  ];
}

/** Six numbers in a member's axes from six in the frame's. */
export const toMember = ({ axes }: FrameElement, six: readonly number[]): number[] =>
  six.map((_, i) => {
    const [row, node] = [3 * (i % 3), i - (i % 3)];
    return (
      (axes[row] as number) * (six[node] as number) +
      (axes[row + 1] as number) * (six[node + 1] as number) +
      (axes[row + 2] as number) * (six[node + 2] as number)
    );
  });

/** Six numbers in the frame's axes from six in a member's. */
export const fromMember = ({ axes }: FrameElement, six: readonly number[]): number[] =>
  six.map((_, i) => {
    const [row, node] = [i % 3, i - (i % 3)];
    return (
      (axes[row] as number) * (six[node] as number) +
      (axes[row + 3] as number) * (six[node + 1] as number) +
      (axes[row + 6] as number) * (six[node + 2] as number)
    );
  });

/** What an element's stiffness makes of six movements, all in its axes. */
export const strained = ({ stiffness }: FrameElement, six: readonly number[]): number[] =>
  six.map((_, i) => six.reduce((sum, way, j) => sum + (stiffness[6 * i + j] as number) * way, 0));
