import type { PlanResponse } from "./response.ts";

/**
 * Where the side is held evenly the rigid sway and turn of the base are open. Fixes them: ways are
 * measured from the line between the mid-points of the rails' front ends and of their rear ends.
 */
export function levelOut(y: Float64Array, ofHoop: Int32Array, response: PlanResponse): void {
  const { left, right, footDisplacement } = response;
  const last = y.length - 1;
  const front = ((left.deflection[0] as number) + (right.deflection[0] as number)) / 2;
  const rear = ((left.deflection[last] as number) + (right.deflection[last] as number)) / 2;
  const turn = (rear - front) / (y[last] as number);
  for (let station = 0; station <= last; station += 1) {
    const line = front + turn * (y[station] as number);
    left.deflection[station] = (left.deflection[station] as number) - line;
    right.deflection[station] = (right.deflection[station] as number) - line;
    left.slope[station] = (left.slope[station] as number) - turn;
    right.slope[station] = (right.slope[station] as number) - turn;
  }
  for (let foot = 0; foot < footDisplacement.length; foot += 2) {
    const station = ofHoop[foot >> 2] as number;
    const line = front + turn * (y[station] as number);
    footDisplacement[foot] = (footDisplacement[foot] as number) - line;
  }
}
