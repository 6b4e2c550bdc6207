import {
  bareTubeDrag,
  endWallMoments,
  insideEndWallMoments,
  type Shell,
  throughDrag,
} from "@hoopstay/load";
import type { LoadSet } from "../../review/evaluate.ts";
import type { WindDirection } from "../chain-case.ts";

/** What pushes the house along its ridge in one case, + toward the front, per unit of K_d q_h. */
export interface AlongPush {
  /** On each end wall, m2; nought where it is missing. */
  readonly front: number;
  readonly back: number;
  /** On every metre of every hoop, m: bare tubes, or wind through a house without ends. */
  readonly line: number;
}

/** Main-frame pressure on the end walls, and drag of the hoops, in load case 1. */
export function alongPush(
  shell: Shell,
  { covering, ends }: LoadSet,
  direction: WindDirection,
  inside: number,
): AlongPush {
  const axis = direction === "+x" || direction === "-x" ? "across" : "along";
  const sense = direction === "+x" || direction === "+y" ? 1 : -1;
  const outside = endWallMoments(shell, covering, ends, axis, sense);
  const within = insideEndWallMoments(shell, ends);
  const blown = covering === "bare" ? 0 : inside;
  const push = (end: "front" | "back"): number =>
    -(outside[end] + blown * within[end]) / shell.endCentroid;
  return {
    front: push("front"),
    back: push("back"),
    line: axis === "along" ? sense * lineDrag(shell, covering, ends) : 0,
  };
}

function lineDrag(
  shell: Shell,
  covering: LoadSet["covering"],
  { front, back }: LoadSet["ends"],
): number {
  if (covering === "bare") return bareTubeDrag.value * shell.hoopDiameter;
  if (front || back) return 0;
  const { frame, friction } = throughDrag(shell);
  return (frame + friction) / (shell.hoopCount * shell.hoopLine);
}
