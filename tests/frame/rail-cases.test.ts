import { railAt } from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear, heldRail, reactionsOf } from "./held-rail.ts";
import { loadsOf, railCases, railOf, supportsOf } from "./reference-rails.ts";

/** The file gives ten digits; places of a greatest deflection are sampled. */
const digits = 1e-9;

describe("fixtures/statics/rail_cases.json: Macaulay's closed form, by other code", () => {
  test.each(railCases.map((one) => [one.id, one.description, one] as const))(
    "%s %s",
    (_, __, one) => {
      const supports = supportsOf(one);
      const solution = heldRail(railOf(one), loadsOf(one), supports);
      const { results } = one;
      const reactions = reactionsOf(solution);
      const { bent, extremes } = solution;
      const deflection = extremes.deflection.deflection;
      const anchors = one.anchors?.length ?? supports.length;
      expectNear(
        reactions.slice(0, anchors).map((reaction) => 0 - reaction),
        results.anchor_tension,
        digits,
      );
      if (results.R) expectNear(reactions, results.R, digits);
      if (results.ground_push) expectNear(reactions.slice(anchors), results.ground_push, digits);
      if (results.active) {
        expect(solution.supports.map(({ part }) => part !== "idle")).toEqual(results.active);
      }
      const extremeMoments = [results.M_max.M, results.M_min.M];
      expectNear([extremes.momentMost.moment, extremes.momentLeast.moment], extremeMoments, digits);
      expectNear(
        [railAt(bent, results.M_max.x).moment, railAt(bent, results.M_min.x).moment],
        extremeMoments,
        digits,
      );
      if (results.V_absmax)
        expectNear([Math.abs(extremes.shear.shear)], [results.V_absmax], digits);
      const at = (places: readonly number[]) => places.map((x) => railAt(bent, x));
      if (results.M_at_supports) {
        const found = at(supports.map(({ x }) => x)).map(({ moment }) => moment);
        expectNear(found, results.M_at_supports, digits, Math.abs(results.M_max.M));
      }
      if (results.v_at_loads) {
        const found = at(one.loads.map(([x]) => x)).map((point) => point.deflection);
        expectNear(found, results.v_at_loads, digits);
      }
      if (results.v_at_anchors && results.v_at_ground) {
        const expected = [...results.v_at_anchors, ...results.v_at_ground];
        const found = solution.supports.map((support) => support.deflection);
        expectNear(found, expected, digits);
        expectNear(
          at(supports.map(({ x }) => x)).map((point) => point.deflection),
          expected,
          digits,
        );
      }
      if (results.v_absmax) {
        expectNear([deflection], [results.v_absmax.v], digits);
        expectNear([railAt(bent, results.v_absmax.x).deflection], [results.v_absmax.v], digits);
      }
    },
  );
});
