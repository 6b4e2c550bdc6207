import { type Complaint, Refusal } from "@hoopstay/core";
import { complain, notNegative, onRail, positive } from "../base-input.ts";
import type { Drag, RackedBase } from "./racked-base.ts";

/** Refuses, with every complaint at once, a base or a pull that cannot be computed. */
export function checkRacking(base: RackedBase, { pull, friction }: Drag): void {
  const { length, span, left, right, crossMembers } = base;
  const beams = { left, right, ...Object.fromEntries(Object.entries(crossMembers)) };
  const complaints = [
    ...positive("length", length),
    ...positive("span", span),
    ...Object.entries(beams).flatMap(([name, { axial, bending }]) => [
      ...positive(`${name}.axial`, axial),
      ...positive(`${name}.bending`, bending),
    ]),
    ...crossMembers.flatMap(({ y }, i) => onRail(`crossMembers.${i}.y`, y, length)),
    ...base.braces.flatMap((_, i) => aboutBrace(base, i)),
    ...notNegative("pull.left", pull.left),
    ...notNegative("pull.right", pull.right),
    ...notNegative("friction", friction),
  ];
  const surplus = pull.left + pull.right - friction;
  if (surplus < 0) {
    complaints.push(complain("sizes-disagree", "friction", friction, "no more than the pull"));
  }
  if (complaints.length > 0) throw new Refusal(complaints);
}

function aboutBrace(
  { braces, crossMembers, length, span }: RackedBase,
  index: number,
): Complaint[] {
  const { crossMember, alongRail, alongCross, axial } = braces[index] as (typeof braces)[number];
  const key = `braces.${index}`;
  const corner = crossMembers[crossMember];
  if (!corner) {
    const expected = `a cross member from 0 to ${crossMembers.length - 1}`;
    return [complain("out-of-range", `${key}.crossMember`, crossMember, expected)];
  }
  const within = alongCross > 0 && alongCross <= span;
  return [
    ...onRail(`${key}.alongRail`, corner.y + alongRail, length),
    ...positive(`${key}.alongRail`, Math.abs(alongRail)),
    ...(within
      ? []
      : [complain("out-of-range", `${key}.alongCross`, alongCross, `above 0, up to ${span} m`)]),
    ...positive(`${key}.axial`, axial),
  ];
}
