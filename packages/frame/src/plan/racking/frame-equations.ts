import { addTo, type Band } from "../band.ts";
import { type FrameElement, fromMember, strained, toMember } from "./frame-element.ts";
import { turns } from "./frame-input.ts";
import type { FrameMember, FrameNode } from "./plan-frame.ts";

/** First of the three unknowns of each node; nodes follow each other along y, so that bands are narrow. */
export function unknownsOf(nodes: readonly FrameNode[]): Int32Array {
  const order = nodes.map((_, i) => i);
  const at = (i: number) => nodes[i] as FrameNode;
  order.sort((i, j) => at(i).y - at(j).y || at(i).x - at(j).x);
  const first = new Int32Array(nodes.length);
  order.forEach((node, place) => {
    first[node] = 3 * place;
  });
  return first;
}

export const reachOf = (members: readonly FrameMember[], unknowns: Int32Array): number =>
  members.reduce(
    (most, { from, to }) =>
      Math.max(most, 2 + Math.abs((unknowns[from] as number) - (unknowns[to] as number))),
    2,
  );

/** Adds what a member does against movements of its two nodes. */
export function addElement(band: Band, element: FrameElement, unknowns: Int32Array): void {
  const { from, to } = element.member;
  const place = (i: number): number => (unknowns[i < 3 ? from : to] as number) + (i % 3);
  for (let i = 0; i < 6; i += 1) {
    const unit = [0, 0, 0, 0, 0, 0];
    unit[i] = 1;
    const forces = fromMember(element, strained(element, toMember(element, unit)));
    for (let j = i; j < 6; j += 1) addTo(band, place(i), place(j), forces[j] as number);
  }
}

/** What is held, and the turns of joints where bars alone meet: nothing there asks for one. */
export function heldUnknowns(
  nodes: readonly FrameNode[],
  members: readonly FrameMember[],
  unknowns: Int32Array,
): Set<number> {
  return new Set(
    nodes.flatMap(({ held = {} }, node) => {
      const first = unknowns[node] as number;
      const turn = held.turn || !turns(node, members);
      return [held.x, held.y, turn].flatMap((is, i) => (is ? [first + i] : []));
    }),
  );
}

/** Adds three numbers of `values`, from the place `start` on, times a factor to those of a node. */
export function addToNode(
  sum: Float64Array,
  node: number,
  values: readonly number[],
  start: number,
  factor: number,
): void {
  for (let i = 0; i < 3; i += 1) {
    sum[node + i] = (sum[node + i] as number) + factor * (values[start + i] as number);
  }
}
