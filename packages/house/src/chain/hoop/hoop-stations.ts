import type { House } from "../../model/house-model.ts";
import type { HoopJoint } from "../../model/link-parts.ts";
import { type HoopOutline, placeOnHoop } from "./hoop-outline.ts";

/** A place along the hoop at which its strength is looked at. */
export interface HoopPlace {
  /** Developed length from the left foot, m. */
  readonly s: number;
  readonly kind: "tube" | "hinge" | "bolts" | "joint";
  readonly joint: HoopJoint | null;
}

/** How many plain places the hoop is looked at: moments between two lie within 0.1 % of the greatest. */
const evenly = 96;
/** Just beside a place where forces jump, m. */
const beside = 1e-7;

/** Evenly spaced places, both sides of ties, the bolts of both feet, and joints in the tube. */
export function hoopPlacesToCheck({ links }: House, outline: HoopOutline): HoopPlace[] {
  const { length } = outline.line;
  const places: HoopPlace[] = [];
  const add = (s: number, kind: HoopPlace["kind"], joint: HoopJoint | null = null): void => {
    if (s >= 0 && s <= length) places.push({ s, kind, joint });
  };
  for (let at = 0; at <= evenly; at += 1) add((at / evenly) * length, "tube");
  const heights = [links.ties, links.trussBars?.from, links.trussBars?.to].map((one) => {
    if (!one) return null;
    return "height" in one ? one.height : one.z;
  });
  for (const height of [...heights, links.kneeBraces?.from?.z, links.kneeBraces?.to?.z]) {
    if (height === null || height === undefined) continue;
    for (const side of ["left", "right"] as const) {
      const s = placeOnHoop(outline, height, side);
      add(s - beside, "tube");
      add(s + beside, "tube");
    }
  }
  add(outline.hinge, "hinge");
  add(length - outline.hinge, "hinge");
  const { bolts } = links.stub;
  for (let bolt = 0; bolts && bolt < bolts.count; bolt += 1) {
    const up = bolts.first + bolt * bolts.spacing;
    add(up, "bolts");
    add(length - up, "bolts");
  }
  for (const joint of links.joints) add(joint.along, "joint", joint);
  return places.toSorted((a, b) => a.s - b.s);
}
