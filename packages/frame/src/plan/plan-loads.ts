import { Refusal } from "@hoopstay/core";
import type { Base } from "./base.ts";
import { complain } from "./base-input.ts";
import type { EvenLoad } from "./even-load.ts";
import { turnAt, wayAt } from "./plan-equations.ts";
import { lineLoadAtMiddle, lineLoadRise } from "./plan-formulas.ts";
import type { Stations } from "./stations.ts";

/**
 * Writes the right-hand side of one load and, where the side is held evenly, the line load on each
 * rail that balances its net side force and turning.
 *
 * @throws Refusal where a load is not a finite number
 */
export function loadPlan(
  { length, hoops, sideHold }: Base,
  { y, ofTie }: Stations,
  even: EvenLoad,
  fixedEnd: ArrayLike<number>,
  given: Float64Array,
  evenHold: Float64Array,
): void {
  given.fill(0);
  let net = 0;
  let turning = 0;
  let size = 0;
  for (let foot = 0; foot < 2 * hoops.length; foot += 1) {
    const station = ofTie[foot >> 1] as number;
    const force = fixedEnd[2 * foot] as number;
    const moment = fixedEnd[2 * foot + 1] as number;
    const [way, turn] = [wayAt(foot & 1, station), turnAt(foot & 1, station)] as const;
    given[way] = (given[way] as number) - force;
    given[turn] = (given[turn] as number) - moment;
    net += force;
    turning += force * ((y[station] as number) - length / 2);
    size += Math.abs(force) + Math.abs(moment);
  }
  if (!Number.isFinite(size)) throw notFinite(size);
  evenHold.fill(0);
  if (sideHold !== "evenly") return;
  evenHold[0] = lineLoadAtMiddle.evaluate(net, length);
  evenHold[1] = lineLoadRise.evaluate(turning, length);
  for (let unknown = 0; unknown < given.length; unknown += 1) {
    given[unknown] =
      (given[unknown] as number) +
      (evenHold[0] as number) * (even.uniform[unknown] as number) +
      (evenHold[1] as number) * (even.rise[unknown] as number);
  }
  given[wayAt(0, 0)] = 0;
  given[wayAt(0, y.length - 1)] = 0;
}

const notFinite = (given: number): Refusal =>
  new Refusal([complain("not-a-number", "fixedEnd", given, "finite loads, four for each hoop")]);
