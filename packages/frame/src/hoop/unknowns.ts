import { breakAt } from "./breaks.ts";
import type { Hoop } from "./hoop.ts";
import { jointPlaces } from "./hoop-input.ts";

/**
 * The numbering of displacements: two movements and a turn at each joint, those of the two feet
 * last. A hinge of the hoop has a turn on each side; a free joint turns only where a bar is rigid.
 */
export interface Unknowns {
  /** How many displacements there are besides the six of the feet. */
  readonly free: number;
  /** Break of each joint on the hoop, feet with them, from left to right. */
  readonly nodeBreak: Int32Array;
  /** First of each such joint's two movements. */
  readonly nodeMove: Int32Array;
  /** Turn of the hoop as it arrives at the joint and as it leaves it: two only at a hinge. */
  readonly turnBefore: Int32Array;
  readonly turnAfter: Int32Array;
  /** First of the two movements of each free joint, and its turn or -1. */
  readonly jointMove: Int32Array;
  readonly jointTurn: Int32Array;
  /** Of each displacement besides the feet's: 1 for a movement, the developed length for a turn, m. */
  readonly lever: Float64Array;
}

export function hoopUnknowns(hoop: Hoop, places: Float64Array): Unknowns {
  const found = new Set(jointPlaces(hoop).map((s) => breakAt(places, s)));
  const nodeBreak = Int32Array.from(found).sort();
  const hinges = hoop.hinges.map((s) => breakAt(places, s));
  const count = nodeBreak.length;
  const nodeMove = new Int32Array(count);
  const turnBefore = new Int32Array(count);
  const turnAfter = new Int32Array(count);
  let free = 0;
  for (let node = 1; node + 1 < count; node += 1) {
    nodeMove[node] = free;
    turnBefore[node] = free + 2;
    free += hinges.includes(nodeBreak[node] as number) ? 4 : 3;
    turnAfter[node] = free - 1;
  }
  const jointMove = new Int32Array(hoop.joints.length);
  const jointTurn = new Int32Array(hoop.joints.length).fill(-1);
  for (let joint = 0; joint < jointMove.length; joint += 1) {
    jointMove[joint] = free;
    free += 2;
    if (!turns(hoop, joint)) continue;
    jointTurn[joint] = free;
    free += 1;
  }
  for (const [node, first] of [
    [0, free],
    [count - 1, free + 3],
  ] as const) {
    nodeMove[node] = first;
    turnBefore[node] = first + 2;
    turnAfter[node] = first + 2;
  }
  const lever = new Float64Array(free).fill(1);
  for (const turns of [turnBefore, turnAfter, jointTurn]) {
    for (const turn of turns) if (turn >= 0 && turn < free) lever[turn] = hoop.line.length;
  }
  return { free, nodeBreak, nodeMove, turnBefore, turnAfter, jointMove, jointTurn, lever };
}

/** Whether a bar is rigid at a free joint. */
const turns = ({ bars }: Hoop, joint: number): boolean =>
  bars.some(
    ({ from, to, fromEnd, toEnd }) =>
      (fromEnd === "rigid" && "joint" in from && from.joint === joint) ||
      (toEnd === "rigid" && "joint" in to && to.joint === joint),
  );
