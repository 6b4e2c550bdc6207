import { type HoopOnRails, planAt } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { fixtureTexts } from "../published/fixture-texts.ts";
import { expectNear } from "./held-rail.ts";
import {
  baseOf,
  heldPlan,
  limp,
  rails,
  rigidMember,
  sides,
  stationAt,
  stiffnessFrom,
  strut,
  thrusts,
} from "./plan-cases.ts";

interface UniformRow {
  readonly support_moments: readonly string[];
  readonly reactions: readonly string[];
  readonly span_max_moment_dec: readonly number[];
  readonly x_of_max_over_L: readonly number[];
}
interface PointRow {
  readonly spaces_per_span: number;
  readonly spans: number;
  readonly R: readonly number[];
  readonly support_hog: readonly number[];
  readonly max_sag: number;
}
const table = JSON.parse(fixtureTexts["statics/continuous_beam_tables.json"] as string) as {
  spans: Record<string, UniformRow>;
  equal_point_loads: { rows: PointRow[] };
};

const places = (count: number, length: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => (i * length) / count);

const fraction = (text: string): number => {
  const [above = Number.NaN, below = 1] = text.split("/").map(Number);
  return above / below;
};

describe("fixtures/statics/continuous_beam_tables.json: rails between cross members in plan", () => {
  // The tables have ten digits. Ties of 1e16 N are soft by less than that.
  const within = 1e-9;
  const [span, thrust] = [4.2, 900];

  test.each(
    table.equal_point_loads.rows.map((row) => [row.spaces_per_span, row.spans, row] as const),
  )("limp hoops at one %dth of the span push, %d spans", (spaces, spans, row) => {
    const length = spans * span;
    const ties = places(spans, length);
    const feet = places(spaces * spans, length).filter((_, i) => i % spaces !== 0);
    const base = baseOf({ length, hoops: feet.map(limp), crossMembers: ties.map(rigidMember) });
    const { plan, response } = heldPlan(base, thrusts(feet.map(() => thrust)));
    expectNear(
      [...response.crossAxial],
      row.R.map((part) => part * thrust),
      within,
    );
    for (const [i, side] of sides.entries()) {
      const sense = i === 0 ? 1 : -1;
      const { moment } = response[side];
      // Supports hog; the thrust on the left rail acts toward -x, as a load on a beam acts down.
      const hogging = ties.map((y) => -sense * (moment[stationAt(plan, y)] as number));
      expectNear(
        hogging,
        row.support_hog.map((part) => part * thrust * span),
        within,
        500,
      );
      const sag = Math.max(...moment.map((value) => sense * value));
      expectNear([sag], [row.max_sag * thrust * span], within);
    }
  });

  test.each(
    table.equal_point_loads.rows.map((row) => [row.spaces_per_span, row.spans, row] as const),
  )("hoops that do not spread tie the rails as well: %d spaces, %d spans", (spaces, spans, row) => {
    const length = spans * span;
    const all = places(spaces * spans, length);
    const hoops = all.map((y, i) => (i % spaces === 0 ? strut(y, 1e15) : limp(y)));
    const crossMembers = [{ y: 0, axial: 0, bending: 1e5 }];
    const pushes = all.map((_, i) => (i % spaces === 0 ? 0 : thrust));
    const { response } = heldPlan(baseOf({ length, hoops, crossMembers }), thrusts(pushes));
    const pulls = all.map((_, i) => response.footForce[4 * i + 2] as number);
    const expected = row.R.map((part) => part * thrust);
    expectNear(
      pulls.filter((_, i) => i % spaces === 0),
      expected,
      within,
    );
  });

  test.each(Object.entries(table.spans))(
    "net side force held evenly, feet at %s spans' ends",
    (count, row) => {
      // Feet that push with the reactions of a continuous beam leave it straight at its supports.
      const spans = Number(count);
      const length = spans * span;
      const feet = places(spans, length);
      const q = 150;
      const fixedEnd = row.reactions.flatMap((part) => {
        const push = fraction(part) * q * span;
        return [push, 0, push, 0];
      });
      const base = baseOf({
        length,
        hoops: feet.map(limp),
        crossMembers: [0, length].map(rigidMember),
      });
      const { plan, response } = heldPlan(base, fixedEnd);
      expectNear([...response.evenHold], [q, 0], 1e-12);
      for (const side of sides) {
        const { moment, deflection } = response[side];
        // The line load bends as a load from below would: supports hog with the other sense.
        const hogging = row.support_moments.map((part) => fraction(part) * q * span * span);
        expectNear([...moment], hogging, 1e-12, q * span * span);
        const size = (q * span ** 4) / rails.bending;
        expectNear(
          [...deflection],
          feet.map(() => 0),
          1e-12,
          size,
        );
        const peaks = row.x_of_max_over_L.map((part, i) =>
          planAt(plan, response, side, (i + part) * span),
        );
        const sagging = row.span_max_moment_dec.map((part) => -part * q * span * span);
        expectNear(
          peaks.map((peak) => peak.moment),
          sagging,
          within,
        );
        expectNear(
          peaks.map((peak) => peak.shear),
          peaks.map(() => 0),
          1e-9,
          q * span,
        );
      }
    },
  );
});

describe("closed forms", () => {
  test("a shaft between fixed ends, torque t at a: t b / L and t a / L, turn t a b / (G J L)", () => {
    const [length, a, t] = [10, 3, 400];
    const crossMembers = [0, length].map(rigidMember);
    const base = baseOf({ length, hoops: [limp(a)], crossMembers });
    const { plan, response } = heldPlan(base, [0, -t, 0, 0]);
    const b = length - a;
    const before = planAt(plan, response, "left", a, "before");
    const behind = planAt(plan, response, "left", a);
    expectNear([before.torque, behind.torque], [(t * b) / length, (-t * a) / length], 1e-10);
    expectNear([behind.twist], [(t * a * b) / (rails.twist * length)], 1e-10);
    // Rigid cross members turn with neither rail: the right one stays free of torque.
    expectNear([...response.right.torque], [0, 0, 0], 1e-9, t);
  });

  test("a shaft held by one cross member that bends: 4 E I / b at the near end, 2 E I / b across", () => {
    const [length, t, bending] = [10, 400, 3e5];
    const crossMembers = [{ y: 4, axial: 1e8, bending }];
    const base = baseOf({ length, hoops: [limp(9), strut(2, 1e5)], crossMembers });
    const { response } = heldPlan(base, [0, -t, 0, 0, 0, 0, 0, 0]);
    // t = 4 k theta + 2 k phi, 0 = 2 k theta + 4 k phi, k = E I / b.
    const k = bending / base.span;
    const theta = t / (3 * k);
    expectNear([...response.crossEndMoment], [t, 0], 1e-10);
    const twist = [theta + (t * 5) / rails.twist, -theta / 2];
    expectNear(
      [response.footDisplacement[1] as number, response.footDisplacement[3] as number],
      twist,
      1e-10,
    );
  });

  test("one sprung hoop at mid-length, by hand", () => {
    const [length, span, axial, bending] = [8, 5, 4e6, 2.5e5];
    const [kss, kst, ktt, ktm] = [3e4, -2e4, 5e4, 8e3];
    const stiffness = stiffnessFrom([
      [kss, -kst, kst],
      [-kst, ktt, -ktm],
      [kst, -ktm, ktt],
    ]);
    const hoop: HoopOnRails = { y: length / 2, stiffness };
    const crossMembers = [0, length].map((y) => ({ y, axial, bending }));
    const [P, C] = [1500, 700];
    const base = baseOf({ length, span, hoops: [hoop], crossMembers });
    const { response } = heldPlan(base, [P, -C, -P, C]);
    // Symmetric: s, and turns -t left, +t right. Rails give s = F c_s and t = M c_t under F, M of
    // the hoop; F = P - kss s - 2 kst t, M = -C - kst s - (ktt + ktm) t.
    const cs = (2 * length ** 3) / (48 * rails.bending) + span / (2 * axial);
    const ct = length / (4 * rails.twist) + span / (4 * bending);
    const [a11, a12, a21, a22] = [1 / cs + kss, 2 * kst, kst, 1 / ct + ktt + ktm];
    const det = a11 * a22 - a12 * a21;
    const s = (P * a22 + C * a12) / det;
    const t = (-C * a11 - P * a21) / det;
    expectNear([...response.footDisplacement], [-s / 2, -t, s / 2, t], 1e-11);
    const [force, moment] = [s / cs, t / ct];
    expectNear([...response.footForce], [force, moment, -force, -moment], 1e-11);
    expectNear([...response.crossAxial], [force / 2, force / 2], 1e-11);
    const ends = response.crossEndMoment;
    expectNear([...ends], [-moment / 2, moment / 2, -moment / 2, moment / 2], 1e-11);
    expectNear([response.left.moment[1] as number], [(force * length) / 4], 1e-11);
  });

  test("two side springs share a side force by the lever", () => {
    const [length, P] = [12, 1000];
    const crossMembers = [0, length].map((y) => ({ y, axial: 2e8, bending: 1e5 }));
    const anchors = [2, 11].map((y) => ({ rail: "left" as const, y, stiffness: 2e5 }));
    const base = baseOf({ length, hoops: [limp(4)], crossMembers, sideHold: anchors });
    const { response } = heldPlan(base, [0, 0, -P, 0]);
    expectNear([...response.anchorForce], [(-P * 7) / 9, (-P * 2) / 9], 1e-10);
    expect([...response.evenHold]).toEqual([0, 0]);
  });

  test("even hold of a force off the middle: its line load balances force and turning", () => {
    const [length, P, at] = [12, 1000, 9];
    const crossMembers = [0, length].map(rigidMember);
    const { response } = heldPlan(baseOf({ length, hoops: [limp(at)], crossMembers }), [
      0,
      0,
      -P,
      0,
    ]);
    const [middle = 0, rise = 0] = response.evenHold;
    expectNear([2 * middle * length], [-P], 1e-12);
    expectNear([(2 * rise * length ** 3) / 12], [-P * (at - length / 2)], 1e-12);
  });
});
