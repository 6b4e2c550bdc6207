import { Chapter, type Refusal, type Step } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import {
  type Anchor,
  type Clay,
  type GroundAtWork,
  helixUplift,
  lateralCapacity,
  type Pull,
  type Sand,
  theoryCapacity,
  vesicFactor,
} from "@hoopstay/ground";
import { describe, expect, test } from "vitest";
import {
  degree,
  dry,
  firm,
  given,
  level,
  loose,
  sixInch,
  slanted,
  stabiliser,
  stake,
  upward,
  wet,
} from "./anchor-examples.ts";

const symbolsOf = (steps: readonly Step[]) => steps.map(({ symbol }) => symbol);

/** As many finite numbers as the formula has arguments, and what it prints gives its value. */
function expectWorked(steps: readonly Step[]): void {
  expect(steps.length).toBeGreaterThan(0);
  for (const step of steps) {
    expect(step.inputs, step.formula.id).toHaveLength(step.formula.arguments.length);
    for (const input of step.inputs) expect(Number.isFinite(input), step.formula.id).toBe(true);
    expect(evaluateAgain(step).agrees, step.formula.id).toBe(true);
  }
}

const plated = { ...sixInch, stabiliser };
const timber: Anchor = { kind: "deadman", body: "timber", face: 0.2, length: 1.5, depth: 1.2 };
const pulled: readonly [string, Anchor, Pull][] = [
  ["screw", sixInch, upward],
  ["screw with a stabiliser, slanted", plated, slanted(50 * degree)],
  ["driven plate", { kind: "driven plate", area: 0.01, depth: 1 }, upward],
  ["stake", stake, level],
  ["picket set", { kind: "picket set", set: "2-1" }, level],
  ["deadman", timber, { fromShaft: 0, aboveGround: 30 * degree }],
];
const firmDry: Clay = { ...firm, measured: "dry" };

describe("the working of an anchor", () => {
  test.each(pulled)(
    "%s: every step has its numbers and prints what it computes",
    (_, anchor, pull) => {
      for (const soil of [loose, firm, firmDry]) {
        for (const state of [dry, wet]) {
          const placing = { testedHere: false, spacing: 0.4 };
          const capacity = theoryCapacity(anchor, given(soil, state), pull, placing);
          if (!capacity.rated) throw new Error(capacity.reason);
          expectWorked(capacity.trail);
        }
      }
    },
  );

  const trailOf = (anchor: Anchor, soil: Sand | Clay, pull: Pull) => {
    const capacity = theoryCapacity(anchor, given(soil, wet), pull);
    if (!capacity.rated) throw new Error(capacity.reason);
    return capacity.trail;
  };

  test("wet clay: strength found dry is halved as c_u, found wet for a sideways pull as c_h", () => {
    expect(symbolsOf(trailOf(stake, firmDry, level))).toContain("c_u");
    expect(symbolsOf(trailOf(stake, firmDry, level))).not.toContain("c_h");
    expect(symbolsOf(trailOf(stake, firm, level))).toContain("c_h");
    expect(symbolsOf(trailOf(stake, firm, level))).not.toContain("c_u");
  });

  test("Vesic's factor: growth between columns and between rows is called g throughout", () => {
    const chapter = new Chapter("vesic", "Vesic");
    vesicFactor(0.15, 0.3, 35 * degree, chapter);
    expect(symbolsOf(chapter.steps)).toEqual(["lambda", ..."ggggggg", "F_qV"]);
    expectWorked(chapter.steps);
  });

  test("the sum of helices names each by its place, from 1", () => {
    const ground: GroundAtWork = {
      likeness: "clay",
      shearStrength: 40_000,
      sidewaysStrength: 40_000,
      unitWeight: 18_000,
      wet: false,
    };
    const helices = [
      { diameter: 0.2, depth: 2 },
      { diameter: 0.15, depth: 1 },
    ];
    const chapter = new Chapter("helices", "Helices");
    const { uplift, counted, model } = helixUplift({ ...sixInch, helices }, ground, chapter);
    const sum = chapter.steps.at(-1);
    expect(sum?.formula.arguments.map(({ symbol, name }) => `${symbol}: ${name}`)).toEqual([
      "Q_1: uplift of helix 1",
      "Q_2: uplift of helix 2",
    ]);
    expect([sum?.value, counted]).toEqual([uplift, 2]);
    expect(model).toMatch(/clay/);
  });
});

describe("the working of a sideways pull", () => {
  const clay: GroundAtWork = {
    likeness: "clay",
    shearStrength: 50_000,
    sidewaysStrength: 50_000,
    unitWeight: 18_000,
    wet: false,
  };
  const sand: GroundAtWork = {
    likeness: "sand",
    frictionAngle: 32 * degree,
    unitWeight: 17_000,
    wet: false,
  };
  const grounds: readonly [string, GroundAtWork][] = [
    ["clay", clay],
    ["sand", sand],
  ];
  const rod = { diameter: 0.02, plasticModulus: 0.02 ** 3 / 6, pullHeight: 0.1 };

  test.each(grounds)("%s: what the anchor holds at failure is called H_n", (_, ground) => {
    const chapter = new Chapter("lateral", "Lateral");
    const { ultimate } = lateralCapacity(rod, 1, undefined, ground, 3, chapter);
    const found = chapter.steps.filter(({ symbol }) => symbol === "H_n");
    expect(found.map(({ value }) => value)).toEqual([ultimate]);
  });

  test.each(grounds)("%s: a bare shaft says nothing of a stabiliser", (_, ground) => {
    const chapter = new Chapter("lateral", "Lateral");
    lateralCapacity(rod, 1, undefined, ground, 3, chapter);
    const ids = chapter.steps.map(({ formula }) => formula.id);
    expect(ids.filter((id) => id.startsWith("stabiliser"))).toEqual([]);
  });

  test("sand: a stabiliser no wider than its shaft but for the last bit is left out of it", () => {
    const shaft = { ...rod, plasticModulus: 1 };
    const bare = new Chapter("bare", "Bare");
    const fitted = new Chapter("fitted", "Fitted");
    const hair = { breadth: rod.diameter * (1 + 2 ** -52), top: 0, height: 0.001 };
    lateralCapacity(shaft, 90, undefined, sand, 3, bare);
    lateralCapacity(shaft, 90, hair, sand, 3, fitted);
    expect(symbolsOf(fitted.steps)).toEqual(symbolsOf(bare.steps));
  });

  test.each(grounds)(
    "%s: a stabiliser that alone bends a weak shaft is pulled with M_p/1.67 over its lever",
    (_, ground) => {
      // From the surface down the force acts at the middle in clay, at two thirds in sand, and
      // the plate could take far more than the rod can.
      const [height, acts] = ground.likeness === "clay" ? [0.125, 0.0625] : [0.375, 0.25];
      const plate = { breadth: 1, top: 0, height };
      for (const pullHeight of [0, 0.1]) {
        const shaft = { ...rod, pullHeight, yieldStress: 250e6 };
        const chapter = new Chapter("lateral", "Lateral");
        const { allowable, model } = lateralCapacity(shaft, 1.5, plate, ground, 3, chapter);
        const moment = (250e6 * shaft.plasticModulus) / 1.67;
        expect(allowable / (moment / (pullHeight + acts))).toBeCloseTo(1, 9);
        expect(model).toMatch(/bends/);
        expectWorked(chapter.steps);
      }
    },
  );

  test.each([0, -250e6, Number.NaN, Number.POSITIVE_INFINITY])(
    "a yield stress of %s is refused",
    (yieldStress) => {
      const call = () =>
        lateralCapacity({ ...rod, yieldStress }, 1, undefined, clay, 3, new Chapter("", ""));
      expect(call).toThrow(/not-positive/);
    },
  );

  test("a stabiliser is wider than its shaft and ends above the shaft's end", () => {
    const call = (breadth: number, height: number) => () =>
      lateralCapacity(rod, 1, { breadth, top: 0.5, height }, clay, 3, new Chapter("", ""));
    expect(call(0.0201, 0.25)).not.toThrow();
    expect(call(0.02, 0.25)).toThrow(/sizes-disagree/);
    expect(call(0.3, 0.499)).not.toThrow();
    expect(call(0.3, 0.5)).toThrow(/sizes-disagree/);
  });

  test("a stabiliser or a pull off its place is told by what to measure again", () => {
    const told = (top: number, pullHeight: number): string => {
      const shaft = { ...rod, pullHeight };
      const plate = { breadth: 0.3, top, height: 0.25 };
      try {
        lateralCapacity(shaft, 1, plate, clay, 3, new Chapter("", ""));
        return "nothing";
      } catch (error) {
        return (error as Refusal).complaints.map(({ code, mend }) => `${code}: ${mend}`).join();
      }
    };
    expect(told(0, 10)).toBe("nothing");
    expect(told(0, 10.01)).toMatch(/^out-of-range: .*up to the tether/);
    expect(told(-0.01, 0)).toMatch(/^sizes-disagree: .*stabiliser/);
    expect(told(1.01, 0)).toMatch(/^sizes-disagree: .*stabiliser/);
  });

  test("a shaft in clay reaches below 1.5 times its diameter", () => {
    const shaft = { ...rod, diameter: 0.0625 };
    const call = (depth: number) => () =>
      lateralCapacity(shaft, depth, undefined, clay, 3, new Chapter("", ""));
    expect(call(0.09375)).toThrow(/ground-outside/);
    expect(call(0.0938)).not.toThrow();
  });
});
