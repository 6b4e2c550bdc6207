import { type Complaint, Refusal, type RefusalCode } from "@hoopstay/core";
import type { Base, HoopOnRails } from "./base.ts";
import { strayOf } from "./tie-springs.ts";

/** Part of its own size by which a hoop's stiffness may miss symmetry or freedom to sway. */
const rounding = 1e-6;

/** Refuses, with every complaint at once, a base that cannot be computed. */
export function checkBase(base: Base): void {
  const { length, span, left, right, hoops, crossMembers, sideHold } = base;
  const anchors = sideHold === "evenly" ? [] : sideHold;
  const complaints = [
    ...positive("length", length),
    ...positive("span", span),
    ...Object.entries({ left, right }).flatMap(([name, { bending, twist }]) => [
      ...positive(`${name}.bending`, bending),
      ...positive(`${name}.twist`, twist),
    ]),
    ...hoops.flatMap((hoop, i) => [
      ...onRail(`hoops.${i}.y`, hoop.y, length),
      ...aboutStiffness(`hoops.${i}.stiffness`, hoop, span),
    ]),
    ...crossMembers.flatMap(({ y, axial, bending }, i) => [
      ...onRail(`crossMembers.${i}.y`, y, length),
      ...notNegative(`crossMembers.${i}.axial`, axial),
      ...notNegative(`crossMembers.${i}.bending`, bending),
    ]),
    ...anchors.flatMap(({ y, stiffness }, i) => [
      ...onRail(`sideHold.${i}.y`, y, length),
      ...positive(`sideHold.${i}.stiffness`, stiffness),
    ]),
  ];
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** Sixteen finite numbers, symmetric and free to sway. */
function aboutStiffness(key: string, { stiffness }: HoopOnRails, span: number): Complaint[] {
  const entries = Array.from(stiffness);
  if (entries.length !== 16 || !entries.every(Number.isFinite)) {
    return [complain("not-a-number", key, entries.join(" "), "16 finite numbers")];
  }
  const stray = strayOf(stiffness, span);
  if (stray <= rounding) return [];
  return [
    complain(
      "sizes-disagree",
      key,
      stray,
      "a symmetric stiffness without force where both feet sway",
    ),
  ];
}

export function onRail(key: string, y: number, length: number): Complaint[] {
  if (y >= 0 && y <= length) return [];
  if (!Number.isFinite(y)) return [complain("not-a-number", key, y, "a finite number")];
  return [complain("out-of-range", key, y, `a place from 0 to ${length} m`)];
}

export function positive(key: string, value: number): Complaint[] {
  if (value > 0) return notNegative(key, value);
  if (Number.isNaN(value)) return notNegative(key, value);
  return [complain("not-positive", key, value, "a number above zero")];
}

export function notNegative(key: string, value: number): Complaint[] {
  if (!Number.isFinite(value)) return [complain("not-a-number", key, value, "a finite number")];
  return value >= 0 ? [] : [complain("out-of-range", key, value, "zero or more")];
}

export const complain = (
  code: RefusalCode,
  key: string,
  given: number | string,
  expected: string,
): Complaint => ({ code, key, given: String(given), expected, mend: "check the value" });
