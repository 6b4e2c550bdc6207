import { Refusal } from "@hoopstay/core";
import {
  availableRailStress,
  type FaceAction,
  type FaceStrength,
  faceLimits,
  faceRatio,
  faceStrength,
  type StubOnFace,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { between, seed } from "./member-arbitrary.ts";

const ksi = 6_894_757.293168361;
const rail = {
  wall: 0.005,
  width: 0.1,
  depth: 0.1,
  yieldStrength: 46 * ksi,
  tensileStrength: 62 * ksi,
  gradeC: false,
};
const stub: StubOnFace = { rail, stubOutside: 0.06, openEnd: null };
const on = (change: Partial<typeof rail>, more: Partial<StubOnFace> = {}): StubOnFace => ({
  ...stub,
  ...more,
  rail: { ...rail, ...change },
});
const actions: readonly FaceAction[] = ["uplift", "push", "inPlane", "outOfPlane"];

function covered(of: StubOnFace, utilization = 0): FaceStrength {
  const face = faceStrength(of, utilization);
  if (!face.covered) throw new Error(face.reason);
  return face;
}
const idOf = (of: StubOnFace, utilization = 0) => {
  const face = faceStrength(of, utilization);
  return face.covered ? "covered" : face.id;
};

describe("limits of the face formulas (AISC 360-22, tables K3.1A and K3.2A), both sides", () => {
  test.each<[string, StubOnFace, string]>([
    ["as wide as the rail", { ...stub, stubOutside: 0.1 }, "covered"],
    ["wider than the rail", { ...stub, stubOutside: 0.1001 }, "face-stub-wide"],
    ["35 walls wide", on({ wall: 0.1 / 35 }), "covered"],
    ["more than 35 walls wide", on({ wall: 0.1 / 35.1 }), "face-slender"],
    ["34 walls deep", on({ depth: 0.17 }), "covered"],
    ["36 walls deep", on({ depth: 0.18 }), "face-slender"],
    ["36 walls wide, not deep", on({ width: 0.18 }, { stubOutside: 0.1 }), "face-slender"],
    ["a quarter of the width", { ...stub, stubOutside: 0.1 / Math.PI }, "covered"],
    ["under a quarter", { ...stub, stubOutside: 0.0999 / Math.PI }, "face-stub-slim"],
    ["twice as deep as wide", on({ wall: 0.01, depth: 0.2 }), "covered"],
    ["deeper", on({ wall: 0.01, depth: 0.2001 }), "face-aspect"],
    ["half as deep as wide", on({ depth: 0.05 }), "covered"],
    ["flatter", on({ depth: 0.0499 }), "face-aspect"],
    ["52 ksi", on({ yieldStrength: 52 * ksi, tensileStrength: 70 * ksi }), "covered"],
    ["52.1 ksi", on({ yieldStrength: 52.1 * ksi, tensileStrength: 70 * ksi }), "face-yield"],
    ["yield at 0.8 of tensile", on({ tensileStrength: 57.5 * ksi }), "covered"],
    ["yield above 0.8 of tensile", on({ tensileStrength: 57.4 * ksi }), "face-ductility"],
    ["grade C above it", on({ tensileStrength: 57.4 * ksi, gradeC: true }), "covered"],
  ])("%s: %s", (_, of, id) => {
    expect(idOf(of)).toBe(id);
    const face = faceStrength(of, 0);
    if (face.covered) return;
    expect(face.reason).toMatch(/\w/);
    expect(face.mend).toMatch(/\.$/);
  });

  test("the rail past its own strength takes the face with it", () => {
    expect(idOf(stub, 1)).toBe("covered");
    expect(idOf(stub, 1.001)).toBe("face-fails-with-rail");
  });

  test.each<[string, StubOnFace, number]>([
    ["no width", on({ width: 0 }), 0],
    ["no depth", on({ depth: 0 }), 0],
    ["no stub", { ...stub, stubOutside: 0 }, 0],
    ["no wall", on({ wall: 0 }), 0],
    ["a rail narrower than four walls", on({ wall: 0.03, width: 0.1, depth: 0.2 }), 0],
    ["a rail flatter than four walls", on({ wall: 0.03, width: 0.2, depth: 0.1 }), 0],
    ["an end before the stub", { ...stub, openEnd: -0.01 }, 0],
    ["an end nowhere", { ...stub, openEnd: Number.POSITIVE_INFINITY }, 0],
    ["an end that is no number", { ...stub, openEnd: Number.NaN }, 0],
    ["a stress with a sign", stub, -0.1],
    ["a stress that is no number", stub, Number.NaN],
  ])("%s is refused", (_, of, utilization) => {
    expect(() => faceStrength(of, utilization)).toThrow(Refusal);
  });

  test("four walls just do, and a stub at the very end", () => {
    expect(idOf(on({ wall: 0.025 }))).toBe("covered");
    expect(idOf({ ...stub, openEnd: 0 })).toBe("covered");
  });
});

describe("ways in which the face gives way", () => {
  test("every limit state is a number, and the least of them is the strength", () => {
    for (const stubOutside of [0.04, 0.06, 0.085, 0.09, 0.1]) {
      const face = covered({ ...stub, stubOutside });
      for (const action of actions) {
        const states = face.limitStates[action];
        expect(states.length).toBeGreaterThan(1);
        for (const state of states) {
          expect(state.nominal, state.id).toBeGreaterThan(0);
          expect(state.nominal, state.id).toBeLessThan(1e9);
          expect([state.id, state.name].every((words) => /\w/.test(words))).toBe(true);
        }
        expect(face[action].ASD).toBe(Math.min(...states.map(({ ASD }) => ASD)));
        expect(face[action].LRFD).toBe(Math.min(...states.map(({ LRFD }) => LRFD)));
      }
      expect(face.roundRatio).toBeCloseTo(stubOutside / 0.1, 12);
      expect(face.widthRatio).toBeCloseTo((Math.PI / 4) * (stubOutside / 0.1), 12);
    }
  });

  test("up to D/B 0.85 the European form runs, above it the sides of the rail", () => {
    const ids = (stubOutside: number) =>
      covered({ ...stub, stubOutside }).limitStates.push.map(({ id }) => id);
    const narrow = ids(0.085);
    expect(narrow).toEqual(["face-axial", "en-face-axial", "face-punching-axial"]);
    const sides = ["side-wall-axial", "side-wall-crippling", "side-wall-buckling"];
    expect(ids(0.0851)).toEqual(["face-axial", ...sides, "face-punching-axial"]);
    const upwards = covered({ ...stub, stubOutside: 0.09 }).limitStates.uplift;
    expect(upwards.map(({ id }) => id)).not.toContain("side-wall-crippling");
    const told = (stubOutside: number) => covered({ ...stub, stubOutside }).notChecked.length;
    expect([told(0.085), told(0.0851)]).toEqual([1, 2]);
  });

  test("each action has its own ways, all of them run", () => {
    const ids = (stubOutside: number, action: FaceAction) =>
      covered({ ...stub, stubOutside }).limitStates[action].map(({ id }) => id);
    const narrow = (action: string) => [
      `face-${action}`,
      `en-face-${action}`,
      `face-punching-${action}`,
    ];
    const wide = (action: string) => [
      `face-${action}`,
      `side-wall-${action}`,
      `face-punching-${action}`,
    ];
    const across = ([face, ...others]: string[]) => [face, "face-distortion", ...others];
    expect(ids(0.06, "uplift")).toEqual(narrow("axial"));
    expect(ids(0.06, "inPlane")).toEqual(narrow("in-plane"));
    expect(ids(0.06, "outOfPlane")).toEqual(across(narrow("out-of-plane")));
    expect(ids(0.09, "uplift")).toEqual(wide("axial"));
    expect(ids(0.09, "inPlane")).toEqual(wide("in-plane"));
    expect(ids(0.09, "outOfPlane")).toEqual(across(wide("out-of-plane")));
  });

  test("law: within the rules the sides never give way to a push before the face bends", () => {
    const anyRail = fc.record({
      wall: between(0.001, 0.01),
      width: between(5, 35),
      depth: between(5, 35),
      yieldStrength: between(100e6, 52 * ksi),
      stubOutside: between(0.851, 1),
    });
    let times = 0;
    fc.assert(
      fc.property(anyRail, between(0, 1), (any, utilization) => {
        const [width, depth] = [any.width * any.wall, any.depth * any.wall];
        const yieldStrength = any.yieldStrength;
        const of = on(
          { ...any, width, depth, yieldStrength, tensileStrength: 1.5 * yieldStrength },
          { stubOutside: any.stubOutside * width },
        );
        const face = faceStrength(of, utilization);
        if (!face.covered) return;
        times += 1;
        expect(face.limitStates.push.length).toBeGreaterThan(face.limitStates.uplift.length);
        expect(face.push.ASD).toBe(face.uplift.ASD);
        expect(face.push.LRFD).toBe(face.uplift.LRFD);
      }),
      { seed, numRuns: 1000 },
    );
    expect(times).toBeGreaterThan(300);
  });

  test("k times as large: k2 the force, k3 the moment; n times as strong: n times both", () => {
    for (const stubOutside of [0.06, 0.09]) {
      const small = covered({ ...stub, stubOutside });
      const large = covered(
        on({ wall: 0.01, width: 0.2, depth: 0.2 }, { stubOutside: 2 * stubOutside }),
      );
      for (const action of actions) {
        const power = action === "uplift" || action === "push" ? 4 : 8;
        for (const [place, state] of small.limitStates[action].entries()) {
          const ratio = (large.limitStates[action][place]?.nominal ?? 0) / state.nominal;
          expect(ratio, state.id).toBeCloseTo(power, 6);
        }
      }
    }
  });

  test("near an open end each way has half its strength, and it is said", () => {
    const near = covered({ ...stub, openEnd: 0.01 });
    const whole = covered(stub);
    const [finding] = near.findings;
    if (finding?.id !== "face-open-end" || finding.value === null) throw new Error("not said");
    for (const action of actions) {
      expect(near[action].ASD / whole[action].ASD).toBeCloseTo(0.5, 12);
      expect(near[action].LRFD / whole[action].LRFD).toBeCloseTo(0.5, 12);
    }
    expect(covered({ ...stub, openEnd: finding.value }).findings).toEqual([]);
    expect(covered({ ...stub, openEnd: 0.999 * finding.value }).findings).toHaveLength(1);
  });

  test("a stub wider than the flat of the face is said, with the flat: B less four walls", () => {
    expect(covered({ ...stub, stubOutside: 0.08 }).findings).toEqual([]);
    const [finding] = covered({ ...stub, stubOutside: 0.0801 }).findings;
    expect(finding?.id).toBe("face-flat");
    expect(finding?.value).toBeCloseTo(0.08, 12);
  });
});

describe("the ratio of a face, quickly and by its strengths", () => {
  test("ASD may use 0.6 of the yield strength, LRFD all of it", () => {
    expect(availableRailStress(100, "ASD")).toBe(60);
    expect(availableRailStress(100, "LRFD")).toBe(100);
  });

  test.each([0.06, 0.095])(
    "a stub of %s m: each action over its strength, added",
    (stubOutside) => {
      const of = { ...stub, stubOutside };
      const limits = faceLimits(of);
      if (!limits.covered) throw new Error(limits.reason);
      for (const method of ["ASD", "LRFD"] as const) {
        const available = availableRailStress(rail.yieldStrength, method);
        for (const [vertical, plan] of [
          [0, 0],
          [-0.3, 0.1],
          [0.5, -0.4],
          [0.99, 0],
        ] as const) {
          const strength = covered(of, Math.abs(vertical) + Math.abs(plan));
          const stresses = [vertical * available, plan * available] as const;
          const ratio = (axial: number, along: number, across: number) =>
            faceRatio(limits, method, axial, along, across, ...stresses);
          expect(ratio(1000, 0, 0)).toBeCloseTo(1000 / strength.uplift[method], 9);
          expect(ratio(-1000, 0, 0)).toBeCloseTo(1000 / strength.push[method], 9);
          expect(ratio(0, -300, 0)).toBeCloseTo(300 / strength.inPlane[method], 9);
          expect(ratio(0, 0, 200)).toBeCloseTo(200 / strength.outOfPlane[method], 9);
          const together = ratio(-1000, 0, 0) + ratio(0, 300, 0) + ratio(0, 0, 200);
          expect(ratio(-1000, 300, -200)).toBeCloseTo(together, 9);
        }
        expect(faceRatio(limits, method, 1, 0, 0, 1.001 * available, 0)).toBe(
          Number.POSITIVE_INFINITY,
        );
        const atStrength = faceRatio(limits, method, 1, 0, 0, available, 0);
        expect(atStrength).toBeLessThan(Number.POSITIVE_INFINITY);
      }
    },
  );

  test("in a thick rail punching governs, which the rail's own stress does not lower", () => {
    const of = on({ wall: 0.02 }, { stubOutside: 0.095 });
    const limits = faceLimits(of);
    if (!limits.covered) throw new Error(limits.reason);
    for (const method of ["ASD", "LRFD"] as const) {
      const stress = 0.95 * availableRailStress(rail.yieldStrength, method);
      const { uplift, limitStates } = covered(of, 0.95);
      const torn = limitStates.uplift.find(({ id }) => id === "face-punching-axial");
      expect(uplift[method]).toBe(torn?.[method]);
      const ratio = faceRatio(limits, method, 1000, 0, 0, stress, 0);
      expect(ratio).toBeCloseTo(1000 / uplift[method], 12);
    }
  });

  test("a face outside the rules has no ratio", () => {
    expect(faceLimits({ ...stub, stubOutside: 0.11 })).toMatchObject({
      covered: false,
      id: "face-stub-wide",
    });
  });
});
