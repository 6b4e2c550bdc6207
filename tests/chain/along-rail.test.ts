import { linkCombinations } from "@hoopstay/house";
import { expect, test } from "vitest";
import { pushedHoops } from "../../packages/house/src/chain/along/pushed-hoops.ts";
import { alongRailRows } from "../../packages/house/src/chain/along/rail-rows.ts";
import { standsFor } from "../../packages/house/src/chain/hoop/hoop-answers.ts";
import { faces, weakestFace } from "../../packages/house/src/chain/links/face.ts";
import { railStrengths } from "../../packages/house/src/chain/rail/rail-shares.ts";
import { context, evaluation, everyOf } from "./example-chain.ts";

const pushed = pushedHoops(context);

test("a rail that is not held carries no push along the house: its share has no bound", () => {
  const nowhere = { exactly: () => null, nearly: () => null };
  const loose = { ...context, rails: { ...context.rails, in: () => nowhere } };
  const [row] = alongRailRows(loose, pushed);
  const [light] = linkCombinations;
  if (!row || !light) throw new Error("no row");
  expect(row.ratio(evaluation.pressure, light)).toBe(Number.POSITIVE_INFINITY);
});

test("torque of a foot about its upright bends the rail in plan: T / M_cy on top", () => {
  const { momentY } = railStrengths(evaluation.house);
  if (!momentY.covered) throw new Error("the example's rail is covered");
  const still = pushed.map((one) => ({ ...one, demand: { ...one.demand, torque: 0 } }));
  const q = evaluation.pressure;
  const [rows, without] = [alongRailRows(context, pushed), alongRailRows(context, still)];
  for (const row of everyOf(rows, 8)) {
    const other = without[rows.indexOf(row)];
    for (const one of linkCombinations) {
      const gap = row.ratio(q, one) - (other?.ratio(q, one) ?? 0);
      const torques = pushed.map(
        ({ demand }) => (one.wind * q * demand.torque) / momentY[one.method],
      );
      expect(torques.some((torque) => Math.abs(torque - gap) < 1e-9)).toBe(true);
      expect(gap).toBeGreaterThan(0);
    }
  }
});

test("where one hoop stands for both ends, the face nearer to a rail's end counts", () => {
  const { house } = evaluation;
  const { rail } = house;
  const moved = { ...rail, front: rail.front - 0.1, back: rail.back + 0.1 };
  const made = faces({
    ...context,
    evaluation: { ...evaluation, house: { ...house, rail: moved } },
  });
  const alone = context.answers.find(({ run, windCase, hoop }) => {
    const railed = context.runs.railed.some((one) => one === run);
    return !railed && hoop === 0 && windCase.stretches.length === 1;
  });
  if (!made || "covered" in made || !alone) throw new Error("the example's face is covered");
  const last = made.length - 1;
  const both = standsFor(alone, made.length, false);
  expect(both).toEqual([0, last]);
  expect(weakestFace(made, both)).toBe(made[last]);
  expect(weakestFace(made, [last, 0])).toBe(made[last]);
});
