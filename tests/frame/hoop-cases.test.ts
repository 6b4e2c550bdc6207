import {
  extremeAt,
  fixedFeet,
  hoopExtremes,
  hoopForcesAt,
  hoopShapeAt,
  pinnedFeet,
  pointOnLine,
  responsesOnFeet,
  superpose,
} from "@hoopstay/frame";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import { frameOf, hoopCases } from "./hoop-reference.ts";

describe("fixtures/statics/hoop_cases.json: force method on the exact curve, by other code", () => {
  describe.each(hoopCases.map((one) => [one.id, one.description, one] as const))(
    "%s %s",
    (_, __, one) => {
      const { frame, factors } = frameOf(one);
      const feet = one.base === "pin" ? pinnedFeet : fixedFeet;
      const rows = responsesOnFeet(frame, feet);
      const { line } = frame.hoop;
      const left = pointOnLine(line, 0);
      const radius = Math.max(...one.pieces.map((piece) => (piece.kind === "arc" ? piece.R : 0)));

      test("developed length", () => {
        expectNear([line.length], [one.developed_length], 1e-9);
      });

      test.each(one.loads.map((load) => [load.name, load] as const))("%s", (___, load) => {
        const { results, load_resultant: resultant } = load;
        const response = new Float64Array(frame.size);
        superpose(rows, frame.size, factors.get(load) as number[], response);
        const at = (i: number): number => response[i] as number;
        const [x, z] = [at(12), at(13)];
        expectNear(
          [x, z, at(14) - left.x * z + left.z * x],
          [resultant.Fx, resultant.Fy, resultant.M_about_left_base],
          // Ten digits of the pieces' angles in degrees.
          1e-8,
        );

        // The file's reactions hold to 2.2e-7 at worst against its own second method, ten digits
        // printed: 1e-7 here. Loads of 1 N/m and 1 N: nothing is compared on less than that.
        const reactions = [...results.R_left, ...results.R_right];
        const force = Math.max(...reactions.map(Math.abs));
        expectNear(Array.from(response.slice(0, 6)), reactions, 1e-7);
        if (results.tie_force === null) expect(one.tie).toBeNull();
        else expectNear([at(frame.barAt(0))], [results.tie_force], 1e-7, force);

        const found = new Float64Array(12);
        hoopExtremes(frame, response, found);
        const most = (which: keyof typeof extremeAt): number => found[extremeAt[which]] as number;
        const moments = [most("momentMost"), most("momentLeast")];
        expectNear(moments, [results.M_max.M, results.M_min.M], 1e-8);
        expectNear([Math.max(...moments.map(Math.abs))], [results.M_absmax], 1e-8);
        expectNear([most("axialMost"), most("axialLeast")], [results.N_max, results.N_min], 1e-8);
        const shear = Math.max(most("shearMost"), -most("shearLeast"));
        expectNear([shear], [results.V_absmax], 1e-8);
        // Places are given to 1e-5 m: at a kink the moment is off by as much times the shear.
        for (const { M, s } of [results.M_max, results.M_min]) {
          const place = Math.min(s, line.length);
          const sides = (["left", "right"] as const).map(
            (side) => hoopForcesAt(frame, response, place, side).M,
          );
          const nearest = Math.min(...sides.map((moment) => Math.abs(moment - M)));
          expect(nearest).toBeLessThanOrEqual(1e-8 * results.M_absmax + 1e-5 * force);
        }

        const stations = results.stations_s_N_V_M.map(([s, ...forces]) => {
          const onBreak = frame.breaks.find((place) => Math.abs(place - s) < 2e-9 * line.length);
          const { N, V, M } = hoopForcesAt(frame, response, onBreak ?? s, "left");
          return {
            computed: [N, V, M / radius],
            given: [forces[0], forces[1], forces[2] / radius],
          };
        });
        expectNear(
          stations.flatMap(({ computed }) => computed),
          stations.flatMap(({ given }) => given),
          1e-8,
          force,
        );

        const crown = hoopShapeAt(frame, response, line.length / 2);
        const places = Array.from({ length: 401 }, (____, i) => (i * line.length) / 400);
        const moved = places.map((s) => {
          const { x: across, z: up } = hoopShapeAt(frame, response, s);
          return Math.hypot(across, up);
        });
        const farthest = Math.max(...moved);
        expectNear([crown.x, crown.z], results.crown_disp, 1e-6, farthest);
        // From straight elements by Richardson's step and a parabola, six digits printed.
        expectNear([farthest], [results.disp_max.d], 1e-4);
        const there = hoopShapeAt(frame, response, results.disp_max.s);
        expectNear([Math.hypot(there.x, there.z)], [results.disp_max.d], 1e-5);
      });
    },
  );
});
