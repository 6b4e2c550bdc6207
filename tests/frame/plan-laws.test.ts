import {
  type Base,
  combinePlanResponses,
  findPeaks,
  noPeaks,
  type PlanResponse,
  planAt,
} from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arbitraryBase, loadedBase, loadOn, seed, sizeOfLoad } from "./plan-arbitrary.ts";
import { heldPlan, sides, stationAt } from "./plan-cases.ts";
import { frontToBack, leftToRight, mirroredFeet } from "./plan-mirror.ts";
import { strainWork, workOn } from "./plan-work.ts";

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 300 });

const twoLoads = arbitraryBase.chain((base) =>
  fc.tuple(fc.constant(base), loadOn(base), loadOn(base)),
);

function near(computed: number, expected: number, slack: number): void {
  expect(Math.abs(computed - expected), `${computed} for ${expected}`).toBeLessThanOrEqual(slack);
}

const greatest = (values: Float64Array): number =>
  values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** Everything in a response, each kind for itself; ways of feet apart from their turns. */
const windowsOf = (response: PlanResponse): Float64Array[] => [
  response.footDisplacement.filter((_, i) => i % 2 === 0),
  response.footDisplacement.filter((_, i) => i % 2 === 1),
  response.footForce,
  response.crossAxial,
  response.crossEndMoment,
  response.anchorForce,
  ...sides.flatMap((side) => Object.values(response[side]) as Float64Array[]),
];

/** Size of the forces at work: of the load, and of what the feet take. */
const sizeOf = (base: Base, load: readonly number[], { footForce }: PlanResponse): number =>
  sizeOfLoad(base, load) + sizeOfLoad(base, [...footForce]);

describe(`laws of a base in plan (seed ${seed})`, () => {
  test("forces on each rail balance: sideways, in plan, in twist; each hoop and the whole, too", () => {
    holds(
      fc.property(loadedBase, ({ base, load }) => {
        const { response } = heldPlan(base, load);
        const { length, hoops, crossMembers, sideHold } = base;
        const anchors = sideHold === "evenly" ? [] : sideHold;
        const slack = 1e-9 * sizeOf(base, load, response);
        const [middle = 0, rise = 0] = response.evenHold;
        let whole = 0;
        for (const [foot, side] of sides.entries()) {
          const pull = foot === 0 ? 1 : -1;
          const forces = [
            ...hoops.map(({ y }, i) => [y, -(response.footForce[4 * i + 2 * foot] as number)]),
            ...crossMembers.map(({ y }, i) => [y, pull * (response.crossAxial[i] as number)]),
            ...anchors.map(({ y, rail }, i) => [
              y,
              rail === side ? (response.anchorForce[i] as number) : 0,
            ]),
          ] as [number, number][];
          const sum = forces.reduce((total, [, force]) => total + force, middle * length);
          const turning = forces.reduce(
            (total, [y, force]) => total + force * (y - length / 2),
            (rise * length ** 3) / 12,
          );
          near(sum, 0, slack);
          near(turning, 0, slack * length);
          whole += anchors.reduce((total, { rail }, i) => {
            return total + (rail === side ? (response.anchorForce[i] as number) : 0);
          }, middle * length);
          const torque = [
            ...hoops.map((_, i) => response.footForce[4 * i + 2 * foot + 1] as number),
            ...crossMembers.map((_, i) => response.crossEndMoment[2 * i + foot] as number),
          ].reduce((total, moment) => total + moment, 0);
          near(torque, 0, slack * base.span);
        }
        const net = hoops.map((_, i) => (load[4 * i] as number) + (load[4 * i + 2] as number));
        near(
          whole,
          net.reduce((total, force) => total + force, 0),
          slack,
        );
        for (const [i, force] of net.entries()) {
          const feet =
            (response.footForce[4 * i] as number) + (response.footForce[4 * i + 2] as number);
          near(feet, force, slack);
        }
      }),
    );
  });

  test("responses add up", () => {
    holds(
      fc.property(
        twoLoads,
        fc.double({ min: -3, max: 3, noNaN: true }),
        ([base, one, two], factor) => {
          const { plan, response: first } = heldPlan(base, one);
          const second = plan.response();
          expect(plan.respond(two, second)).toBe("held");
          const both = plan.response();
          // What stood there before does not count.
          both.values.fill(7);
          combinePlanResponses([first, second], [1, factor], both);
          const load = one.map((value, i) => value + factor * (two[i] as number));
          const whole = plan.response();
          expect(plan.respond(load, whole)).toBe("held");
          const windows = [first, second, both, whole].map(windowsOf);
          windows[0]?.forEach((one, window) => {
            const [a, b, sum, expected] = windows.map((all) => all[window] as Float64Array);
            const size = greatest(a as Float64Array) + 3 * greatest(b as Float64Array);
            for (let i = 0; i < one.length; i += 1) {
              near(
                (sum as Float64Array)[i] as number,
                (expected as Float64Array)[i] as number,
                1e-8 * size,
              );
            }
          });
        },
      ),
    );
  });

  test("reciprocity: one load works on the ways of another as much as that on the ways of the first", () => {
    holds(
      fc.property(twoLoads, ([base, one, two]) => {
        const { plan, response: first } = heldPlan(base, one);
        const { response: second } = heldPlan(base, two);
        const there = workOn(plan, one, first, second);
        const back = workOn(plan, two, second, first);
        const size = Math.sqrt(workOn(plan, one, first, first) * workOn(plan, two, second, second));
        near(there, back, 1e-8 * size);
      }),
    );
  });

  test("work of the loads is what rails, hoops, cross members and anchors store", () => {
    holds(
      fc.property(loadedBase, ({ base, load }) => {
        const { plan, response } = heldPlan(base, load);
        const work = workOn(plan, load, response, response);
        near(strainWork(plan, response), work, 1e-8 * work);
      }),
    );
  });

  test("stiffer rails, cross members or anchors never let the loads do more work", () => {
    const stiffer = fc.constantFrom(
      (base: Base): Base => ({ ...base, left: { ...base.left, bending: 3 * base.left.bending } }),
      (base: Base): Base => ({ ...base, right: { ...base.right, twist: 3 * base.right.twist } }),
      (base: Base): Base => ({
        ...base,
        crossMembers: base.crossMembers.map((one) => ({ ...one, bending: 2 * one.bending + 1e4 })),
      }),
      (base: Base): Base => ({
        ...base,
        crossMembers: base.crossMembers.map((one) => ({ ...one, axial: 2 * one.axial })),
      }),
    );
    holds(
      fc.property(loadedBase, stiffer, ({ base, load }, change) => {
        const soft = heldPlan(base, load);
        const stiff = heldPlan(change(base), load);
        const most = workOn(soft.plan, load, soft.response, soft.response);
        const least = workOn(stiff.plan, load, stiff.response, stiff.response);
        expect(least).toBeLessThanOrEqual(most * (1 + 1e-8));
      }),
    );
  });

  test("front and back change places: feet as before, moments mirrored, shears and torques reversed", () => {
    holds(
      fc.property(loadedBase, (one) => {
        const { plan, response } = heldPlan(one.base, one.load);
        const mirrored = heldPlan(frontToBack(one).base, one.load);
        const size = sizeOf(one.base, one.load, response);
        response.footForce.forEach((force, i) => {
          near(
            mirrored.response.footForce[i] as number,
            force,
            1e-8 * size * Math.max(1, one.base.span),
          );
        });
        for (const side of sides) {
          for (const y of plan.y) {
            const here = planAt(plan, response, side, y, "before");
            const place = stationAt(mirrored.plan, one.base.length - y);
            const there = planAt(
              mirrored.plan,
              mirrored.response,
              side,
              mirrored.plan.y[place] as number,
            );
            near(there.moment, here.moment, 1e-8 * size * one.base.length);
            near(there.shear, -here.shear, 1e-8 * size);
            near(there.torque, -here.torque, 1e-8 * size * one.base.span);
          }
        }
      }),
    );
  });

  test("left and right change places", () => {
    holds(
      fc.property(loadedBase, (one) => {
        const { response } = heldPlan(one.base, one.load);
        const mirrored = leftToRight(one);
        const other = heldPlan(mirrored.base, mirrored.load).response;
        const slack = 1e-8 * sizeOf(one.base, one.load, response) * Math.max(1, one.base.length);
        mirroredFeet(response).forEach((force, i) => {
          near(other.footForce[i] as number, force, slack);
        });
        response.left.moment.forEach((moment, i) => {
          near(other.right.moment[i] as number, -moment, slack);
        });
        response.crossAxial.forEach((force, i) => {
          near(other.crossAxial[i] as number, force, slack);
        });
      }),
    );
  });

  test("read along a rail it goes on smoothly from station to station", () => {
    holds(
      fc.property(loadedBase, ({ base, load }) => {
        const { plan, response } = heldPlan(base, load);
        for (const side of sides) {
          const { deflection, slope, moment, twist } = response[side];
          for (let at = 0; at + 1 < plan.y.length; at += 1) {
            const next = plan.y[at + 1] as number;
            const end = planAt(plan, response, side, next, "before");
            const start = planAt(plan, response, side, plan.y[at] as number);
            expect(start.torque).toBe(response[side].torque[at]);
            const alike = [
              [end.deflection, deflection, greatest(deflection)],
              [end.slope, slope, greatest(slope) + greatest(deflection) / base.length],
              [end.moment, moment, sizeOf(base, load, response) * base.length],
              [end.twist, twist, greatest(twist)],
            ] as const;
            for (const [value, values, most] of alike) {
              near(value, values[at + 1] as number, 1e-7 * most);
            }
          }
        }
      }),
    );
  });

  test("held evenly, ways are measured from between the rails at both ends", () => {
    holds(
      fc.property(loadedBase, ({ base, load }) => {
        if (base.sideHold !== "evenly") return;
        const { plan, response } = heldPlan(base, load);
        const { left, right, footDisplacement } = response;
        const most = greatest(left.deflection) + greatest(right.deflection);
        for (const at of [0, plan.y.length - 1]) {
          near((left.deflection[at] as number) + (right.deflection[at] as number), 0, 1e-9 * most);
        }
        for (const [hoop, { y }] of base.hoops.entries()) {
          for (const [foot, side] of sides.entries()) {
            const { deflection } = planAt(plan, response, side, y);
            near(footDisplacement[4 * hoop + 2 * foot] as number, deflection, 1e-7 * most);
          }
        }
      }),
    );
  });

  test("peaks are not exceeded anywhere, and are met where they are said to be", () => {
    const peaks = noPeaks();
    holds(
      fc.property(loadedBase, ({ base, load }) => {
        const { plan, response } = heldPlan(base, load);
        const slack = 1e-9 * sizeOf(base, load, response) * Math.max(1, base.span);
        for (const side of sides) {
          findPeaks(plan, response, side, peaks);
          for (let i = 0; i < 200; i += 1) {
            const at = planAt(plan, response, side, ((i + 0.5) / 200) * base.length);
            expect(at.moment).toBeLessThanOrEqual(peaks.momentMost + slack * base.length);
            expect(at.moment).toBeGreaterThanOrEqual(peaks.momentLeast - slack * base.length);
            expect(Math.abs(at.shear)).toBeLessThanOrEqual(Math.abs(peaks.shear) + slack);
            expect(Math.abs(at.torque)).toBeLessThanOrEqual(Math.abs(peaks.torque) + slack);
          }
          const [most, least] = [peaks.momentMostAt, peaks.momentLeastAt].map((y) =>
            planAt(plan, response, side, y),
          );
          near(most?.moment ?? Number.NaN, peaks.momentMost, slack * base.length);
          near(least?.moment ?? Number.NaN, peaks.momentLeast, slack * base.length);
          near(planAt(plan, response, side, peaks.torqueAt).torque, peaks.torque, slack);
          const jumps = (["before", "behind"] as const).map(
            (where) => planAt(plan, response, side, peaks.shearAt, where).shear,
          );
          const gap = Math.min(...jumps.map((shear) => Math.abs(shear - peaks.shear)));
          expect(gap).toBeLessThanOrEqual(slack);
        }
      }),
    );
  });
});
