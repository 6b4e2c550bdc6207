import { type Complaint, Refusal } from "@hoopstay/core";
import { complain, finite, positive, within } from "./complaints.ts";
import type { BarJoint, Hoop, HoopBar, HoopLoad, MemberSection } from "./hoop.ts";
import type { PlanePoint } from "./hoop-piece.ts";
import { pointOnLine } from "./on-line.ts";

/** Places nearer than this part of the developed length (10 nm on 10 m) are one place. */
export const samePlace = 1e-9;

/** Joints nearer than this part of the developed length cannot be computed to nine digits. */
const nearJoints = 1e-4;

/** Refuses, with every complaint at once, what cannot be computed. */
export function checkHoop(hoop: Hoop, loads: readonly HoopLoad[]): void {
  const { line, section, hinges, joints, bars } = hoop;
  const complaints = [
    ...sectionComplaints("section", section, true),
    ...hinges.flatMap((s, index) => hingeComplaints(`hinges.${index}`, s, line.length)),
    ...joints.flatMap(({ x, z }, index) =>
      [x, z].flatMap((value) => finite(`joints.${index}`, value)),
    ),
    ...bars.flatMap((bar, index) => barComplaints(`bars.${index}`, bar, hoop)),
    ...loads.flatMap((load, index) => loadComplaints(`loads.${index}`, load, hoop)),
  ];
  if (complaints.length > 0) throw new Refusal(complaints);
}

function sectionComplaints(key: string, { A, I, E }: MemberSection, bends: boolean): Complaint[] {
  const bending = bends || I !== 0 ? positive(`${key}.I`, I) : [];
  return [...positive(`${key}.A`, A), ...bending, ...positive(`${key}.E`, E)];
}

function hingeComplaints(key: string, s: number, length: number): Complaint[] {
  const complaints = within(key, s, length);
  const near = samePlace * length;
  if (complaints.length > 0 || (s > near && s < length - near)) return complaints;
  const expected = "a hinge between the feet";
  return [complain("out-of-range", key, s, expected, "let the foot turn instead")];
}

function barComplaints(key: string, bar: HoopBar, hoop: Hoop): Complaint[] {
  const { from, to, fromEnd, toEnd, section, weight } = bar;
  const ends = [
    ...jointComplaints(`${key}.from`, from, fromEnd === "rigid", hoop),
    ...jointComplaints(`${key}.to`, to, toEnd === "rigid", hoop),
  ];
  const bends = fromEnd === "rigid" || toEnd === "rigid";
  const complaints = [
    ...ends,
    ...sectionComplaints(`${key}.section`, section, bends),
    ...(weight === 0 ? [] : positive(`${key}.weight`, weight)),
  ];
  if (ends.length > 0) return complaints;
  const [a, b] = [jointPoint(hoop, from), jointPoint(hoop, to)];
  const length = Math.hypot(b.x - a.x, b.z - a.z);
  if (length > nearJoints * hoop.line.length) return complaints;
  const expected = "a bar between two joints that are apart";
  return [...complaints, complain("sizes-disagree", key, length, expected, "check its joints")];
}

function jointComplaints(key: string, at: BarJoint, rigid: boolean, hoop: Hoop): Complaint[] {
  if ("joint" in at) {
    if (hoop.joints[at.joint] !== undefined) return [];
    const expected = `a joint from 0 to ${hoop.joints.length - 1}`;
    return [complain("out-of-range", key, at.joint, expected, "check the joint")];
  }
  const complaints = within(key, at.s, hoop.line.length);
  if (!rigid || !hoop.hinges.some((s) => isSame(hoop, s, at.s))) return complaints;
  const expected = "a pinned bar at a hinge of the hoop";
  return [...complaints, complain("sizes-disagree", key, at.s, expected, "pin the bar there")];
}

function loadComplaints(key: string, load: HoopLoad, hoop: Hoop): Complaint[] {
  const { length } = hoop.line;
  if (load.kind === "normal") {
    const { from, to } = load;
    const complaints = [...within(`${key}.from`, from, length), ...within(`${key}.to`, to, length)];
    if (complaints.length > 0 || to > from + samePlace * length) return complaints;
    const expected = `a place beyond ${from} m`;
    return [complain("sizes-disagree", `${key}.to`, to, expected, "check the two places")];
  }
  if (load.kind !== "point") return [];
  const { s, x, z, couple } = load;
  const complaints = [
    ...within(`${key}.s`, s, length),
    ...[x, z, couple].flatMap((value) => finite(key, value)),
  ];
  if (couple === 0 || !hoop.hinges.some((hinge) => isSame(hoop, hinge, s))) return complaints;
  const expected = "no couple at a hinge, whose sides turn apart";
  return [...complaints, complain("sizes-disagree", `${key}.couple`, couple, expected, "move it")];
}

/**
 * Refuses joints on the hoop that are neither one place nor apart.
 *
 * @param joints places of all of them, feet with them, rising, each once
 */
export function checkApart(joints: readonly number[], length: number): void {
  const least = nearJoints * length;
  const near = joints.filter((s, index) => s - (joints[index - 1] ?? -length) < least);
  const expected = `joints and feet either at one place or ${least} m apart`;
  const complaints = near.map((s) =>
    complain("sizes-disagree", "hoop", s, expected, "let the joints meet at one place"),
  );
  if (complaints.length > 0) throw new Refusal(complaints);
}

/** Places on the hoop where something is joined, its feet with them, in no order. */
export function jointPlaces({ line, hinges, bars }: Hoop): number[] {
  const joined = bars.flatMap(({ from, to }) => [from, to]);
  return [0, line.length, ...hinges, ...joined.flatMap((at) => ("s" in at ? [at.s] : []))];
}

const jointPoint = (hoop: Hoop, at: BarJoint): PlanePoint =>
  "s" in at ? pointOnLine(hoop.line, at.s) : (hoop.joints[at.joint] as PlanePoint);

const isSame = ({ line }: Hoop, a: number, b: number): boolean =>
  Math.abs(a - b) <= samePlace * line.length;
