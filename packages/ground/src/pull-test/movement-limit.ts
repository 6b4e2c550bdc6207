import { cite, constant, FOOT } from "@hoopstay/core";
import type { PullTest } from "./pull-test.ts";

const inch = FOOT / 12;

export const upwardLimit = constant(
  "head-movement-up",
  "u_max",
  "movement of the head upward at which an anchor counts as failed",
  2 * inch,
  "length",
  cite("ill-77-870", "section 870.200(b); FEMA P-85 chapter 7 gives the same", "read"),
);

/** Minnesota Rules 1350.2900 allow 4 in, at a lower load; the shorter is kept. */
export const sidewaysLimit = constant(
  "head-movement-sideways",
  "v_max",
  "movement of the head sideways at which an anchor counts as failed",
  3 * inch,
  "length",
  cite("ill-77-870", "section 870.200(b); FEMA P-85 chapter 7 gives the same", "read"),
);

/**
 * Whether a test reached the anchor's strength: it gave way, or its head moved more than 2 in up or
 * 3 in sideways. A test stopped before that gives only a lower bound.
 */
export function reachedFailure({ ended, movement }: PullTest): boolean {
  const { up = 0, sideways = 0 } = movement ?? {};
  return ended === "failed" || up > upwardLimit.value || sideways > sidewaysLimit.value;
}
