import { type BasePlan, type PlanResponse, planAt } from "@hoopstay/frame";
import { sides } from "./plan-cases.ts";

/** Places and weights of Gauss's rule with four places, exact up to the seventh power. */
const gauss = [-0.861136311594053, -0.339981043584856, 0.339981043584856, 0.861136311594053].map(
  (place, i) => [place, i === 0 || i === 3 ? 0.347854845137454 : 0.652145154862546] as const,
);

/** Integral over both rails of a function that is smooth between stations. */
function overRails(
  { y }: BasePlan,
  value: (side: "left" | "right", place: number) => number,
): number {
  let sum = 0;
  for (let station = 0; station + 1 < y.length; station += 1) {
    const [start, h] = [y[station] as number, (y[station + 1] as number) - (y[station] as number)];
    for (const [place, weight] of gauss) {
      for (const side of sides)
        sum += ((weight * h) / 2) * value(side, start + ((1 + place) * h) / 2);
    }
  }
  return sum;
}

/** Work of the loads of one case, its even hold with them, on the ways and turns of another. */
export function workOn(
  plan: BasePlan,
  load: readonly number[],
  own: PlanResponse,
  other: PlanResponse,
): number {
  const feet = load.reduce(
    (sum, value, i) => sum - value * (other.footDisplacement[i] as number),
    0,
  );
  const [middle = 0, rise = 0] = own.evenHold;
  const line = overRails(plan, (side, y) => {
    const { deflection } = planAt(plan, other, side, y);
    return (middle + rise * (y - plan.base.length / 2)) * deflection;
  });
  return feet + line;
}

/** Twice the energy that bending and twist leave in rails, cross members, hoops and anchors. */
export function strainWork(plan: BasePlan, response: PlanResponse): number {
  const { base } = plan;
  const inRails = overRails(plan, (side, y) => {
    const { moment, torque } = planAt(plan, response, side, y);
    const { bending, twist } = base[side];
    return moment ** 2 / bending + torque ** 2 / twist;
  });
  const moved = response.footDisplacement;
  const inHoops = base.hoops.reduce((sum, { stiffness }, hoop) => {
    const at = (i: number): number => moved[4 * hoop + i] as number;
    let work = 0;
    for (let i = 0; i < 4; i += 1) {
      for (let j = 0; j < 4; j += 1) work += at(i) * (stiffness[4 * i + j] as number) * at(j);
    }
    return sum + work;
  }, 0);
  const inMembers = base.crossMembers.reduce((sum, { axial, bending }, i) => {
    const tension = response.crossAxial[i] as number;
    const [a, b] = [...response.crossEndMoment.subarray(2 * i, 2 * i + 2)] as [number, number];
    // The moment runs from a to -b along the member.
    const bent = bending > 0 ? (base.span * (a * a - a * b + b * b)) / (3 * bending) : 0;
    return sum + (tension ** 2 * base.span) / axial + bent;
  }, 0);
  const anchors = base.sideHold === "evenly" ? [] : base.sideHold;
  const inAnchors = anchors.reduce(
    (sum, { stiffness }, i) => sum + (response.anchorForce[i] as number) ** 2 / stiffness,
    0,
  );
  return inRails + inHoops + inMembers + inAnchors;
}
