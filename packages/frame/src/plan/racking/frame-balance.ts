import {
  clampedForces,
  type FrameElement,
  fromMember,
  strained,
  toMember,
} from "./frame-element.ts";
import { addToNode } from "./frame-equations.ts";
import { sectionsOf } from "./frame-sections.ts";
import type { FrameSection } from "./plan-frame.ts";

/** Forces of a solved frame. */
export interface FrameBalance {
  /** What the ends of the members ask of each node beyond its loads: what holds it has to give. */
  readonly balance: Float64Array;
  /** Greatest of all loads and end forces by size. */
  readonly greatest: number;
  readonly sections: readonly (readonly FrameSection[])[];
}

/**
 * @param unknowns first of the three unknowns of each node
 * @param applied loads on the nodes
 * @param solved movements of the nodes
 */
export function balanceOf(
  elements: readonly FrameElement[],
  unknowns: Int32Array,
  applied: Float64Array,
  solved: Float64Array,
): FrameBalance {
  const balance = applied.map((load) => -load);
  let greatest = applied.reduce((most, load) => Math.max(most, Math.abs(load)), 0);
  const sections = elements.map((element) => {
    const [from, to] = [element.member.from, element.member.to].map((i) => unknowns[i] as number);
    const moved = [0, 1, 2].map((i) => solved[(from as number) + i] as number);
    const movedTo = [0, 1, 2].map((i) => solved[(to as number) + i] as number);
    const clamped = clampedForces(element);
    const ends = strained(element, toMember(element, [...moved, ...movedTo])).map(
      (force, i) => force + (clamped[i] as number),
    );
    greatest = ends.reduce((most, force) => Math.max(most, Math.abs(force)), greatest);
    const inFrame = fromMember(element, ends);
    addToNode(balance, from as number, inFrame, 0, 1);
    addToNode(balance, to as number, inFrame, 3, 1);
    return sectionsOf(element, ends);
  });
  return { balance, greatest, sections };
}
