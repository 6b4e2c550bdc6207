import { certificateAt, type Evaluation, type JointResult, jointOf } from "@hoopstay/house";
import { describe, expect, test, vi } from "vitest";
import type { Entry } from "./entry.ts";
import { evaluated, evaluatedOrRefused, type Farm, forFarms, houses, seed } from "./farms.ts";
import { upTo } from "./outcomes.ts";
import { Size } from "./size.ts";

vi.setConfig({ testTimeout: 1_800_000 });

const oneIn = 20;

function jointIn(evaluation: Evaluation): JointResult {
  const [first] = evaluation.states;
  if (!first) throw new Error("no state");
  return jointOf(
    evaluation,
    first.set,
    evaluation.holds.at(-1)?.id ?? "bare",
    evaluation.site.combination,
  );
}

/** Force and moment about the origin of a force at a place on the ground. */
const sums = ([fx, fy, fz]: readonly number[], x: number, y: number): number[] => {
  const [a = 0, b = 0, c = 0] = [fx, fy, fz];
  return [a, b, c, y * c, -x * c, x * b - y * a];
};

describe(`everything at once in whole houses (seed ${seed})`, () => {
  test("wind, weight, tethers and ground are in balance to 1e-9, none beyond what it can", () => {
    let balanced = 0;
    forFarms(
      {},
      (_, inputs) => {
        const evaluation = evaluated(inputs);
        const certificate = certificateAt(jointIn(evaluation));
        if (!certificate) return;
        balanced += 1;
        const { wind, weight, tethers, pushes } = certificate;
        const { down, slopeX, slopeY, x, y, z } = weight;
        const parts = [
          [...wind],
          // The weight stands at its height: the slope's part of it turns the house too.
          [
            slopeX,
            slopeY,
            -down,
            -y * down - z * slopeY,
            z * slopeX + x * down,
            x * slopeY - y * slopeX,
          ],
          ...tethers.map((one) => {
            const [tx, ty, tz] = one.toward;
            const force = [
              one.tension * tx + one.sideX,
              one.tension * ty + one.sideY,
              one.tension * tz,
            ];
            return sums(force, one.x, one.y);
          }),
          ...pushes.map((one) => sums([one.frictionX, one.frictionY, one.push], one.x, one.y)),
        ];
        for (let row = 0; row < 6; row += 1) {
          const left = parts.reduce((sum, part) => sum + (part[row] ?? 0), 0);
          const size = parts.reduce((sum, part) => sum + Math.hypot(...part), 0);
          expect(Math.abs(left), `sum ${row}`).toBeLessThan(1e-9 * size);
        }
        for (const { push } of pushes) expect(push).toBeGreaterThanOrEqual(-1e-9 * down);
        const grip = pushes.reduce((sum, { push }) => sum + push, 0) * evaluation.site.friction;
        const friction = Math.hypot(
          pushes.reduce((sum, { frictionX }) => sum + frictionX, 0),
          pushes.reduce((sum, { frictionY }) => sum + frictionY, 0),
        );
        expect(upTo(friction, grip + 1e-9 * down)).toBe(true);
        // LRFD counts one and a half times an allowable pull.
        const worth = evaluation.site.combination === "LRFD" ? 1.5 : 1;
        const most = worth * Math.max(0, ...evaluation.house.anchors.map(({ pull }) => pull));
        for (const { tension } of tethers) {
          expect(tension).toBeGreaterThanOrEqual(-1e-9 * down);
          expect(upTo(tension, most), `${tension} of ${most}`).toBe(true);
        }
      },
      oneIn,
    );
    expect(balanced).toBeGreaterThan((0.3 * houses) / oneIn);
  });

  // A tether that pulls downwind is taken only as hard as the balance asks, so it lowers nothing.
  test("one more anchor, upright or aslant, never lowers the factor", () => {
    forFarms(
      {},
      (farm, inputs) => {
        const before = evaluated(inputs);
        const kind = JSON.stringify(farm.house).length;
        const aslant = {
          angle: new Size(45, "deg"),
          toward: ["out", "in", "front", "back"][kind % 4],
        };
        const one: { [key: string]: Entry } = {
          name: "one more",
          side: kind % 3 === 0 ? "left" : "right",
          along: new Size(0.31, "m"),
          pull: new Size(5, "kN"),
          ...(kind % 2 === 0 ? aslant : {}),
        };
        const anchors = [...((farm.house.anchors ?? []) as Entry[]), one];
        const more: Farm = { ...farm, house: { ...farm.house, anchors } };
        const after = evaluatedOrRefused(more);
        if (!after) return;
        const [less, now] = [jointIn(before), jointIn(after)];
        expect(upTo(less.factor, now.factor), `${less.factor} ${now.factor}`).toBe(true);
      },
      oneIn,
    );
  });
});
