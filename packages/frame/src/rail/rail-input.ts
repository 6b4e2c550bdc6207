import { type Complaint, Refusal, type RefusalCode } from "@hoopstay/core";
import type { Rail, RailLoads, RailSupport } from "./rail.ts";

/**
 * Places nearer than this part of the length (0.03 mm on 30 m) are one place; springs nearer still
 * could not be told apart to six digits of their forces.
 */
export const samePlace = 1e-6;

/** Refuses, with every complaint at once, a rail or supports that cannot be computed. */
export function checkRail(rail: Rail, supports: readonly RailSupport[]): void {
  const complaints = [
    ...positive("length", rail.length),
    ...positive("stiffness", rail.stiffness),
    ...supports.flatMap((support, index) => complaintsAbout(support, `supports.${index}`, rail)),
    ...rigidPairs(rail, supports),
  ];
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** Refuses loads that are no numbers or stand beside the rail. */
export function checkLoads(rail: Rail, loads: RailLoads): void {
  const complaints = [
    ...finite("uniform", loads.uniform),
    ...loads.forces.flatMap(({ x, force }, index) => [
      ...onRail(`forces.${index}.x`, x, rail),
      ...finite(`forces.${index}.force`, force),
    ]),
    ...loads.couples.flatMap(({ x, couple }, index) => [
      ...onRail(`couples.${index}.x`, x, rail),
      ...finite(`couples.${index}.couple`, couple),
    ]),
  ];
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** Refuses places beside the rail. */
export function checkPlaces(rail: Rail, places: readonly number[]): void {
  const complaints = places.flatMap((x, index) => onRail(`places.${index}`, x, rail));
  if (complaints.length > 0) throw new Refusal(complaints);
}

function complaintsAbout(support: RailSupport, key: string, rail: Rail): Complaint[] {
  const { kind, x, stiffness, cap } = support;
  const complaints = onRail(`${key}.x`, x, rail);
  if (stiffness !== "rigid") complaints.push(...positive(`${key}.stiffness`, stiffness));
  if (cap === undefined) return complaints;
  if (kind === "two-way") {
    complaints.push(
      complain("sizes-disagree", `${key}.cap`, cap, "no cap", "a two-way support has no cap"),
    );
  }
  return [...complaints, ...positive(`${key}.cap`, cap)];
}

/** Two rigid supports at one place share a force in a way that statics cannot tell. */
function rigidPairs(rail: Rail, supports: readonly RailSupport[]): Complaint[] {
  const rigid = supports.filter(({ stiffness }) => stiffness === "rigid");
  return rigid.flatMap((one, index) =>
    rigid
      .slice(index + 1)
      .filter(
        (other) =>
          Math.abs(other.x - one.x) <= samePlace * rail.length &&
          !(one.kind !== other.kind && one.kind !== "two-way" && other.kind !== "two-way"),
      )
      .map(({ x }) =>
        complain("sizes-disagree", "supports", x, "one rigid support at a place", "give springs"),
      ),
  );
}

function onRail(key: string, x: number, { length }: Rail): Complaint[] {
  if (x >= 0 && x <= length) return [];
  if (!Number.isFinite(x)) return finite(key, x);
  return [complain("out-of-range", key, x, `a place from 0 to ${length} m`, "check the place")];
}

function finite(key: string, value: number): Complaint[] {
  if (Number.isFinite(value)) return [];
  return [complain("not-a-number", key, value, "a finite number", "check the value")];
}

function positive(key: string, value: number): Complaint[] {
  if (value > 0 && Number.isFinite(value)) return [];
  if (!Number.isFinite(value)) return finite(key, value);
  return [complain("not-positive", key, value, "a number above zero", "check the value")];
}

const complain = (
  code: RefusalCode,
  key: string,
  given: number,
  expected: string,
  mend: string,
): Complaint => ({ code, key, given: String(given), expected, mend });
