import { Chapter } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import {
  boltStrength,
  type FaceAction,
  faceStrength,
  type LimitState,
  sleeveStrength,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { changed, inch, sleeve } from "./bolt-examples.ts";
import { bolt, rail, works } from "./connection-works.ts";

const worked = (work: (sheet: Chapter) => unknown) => {
  const chapter = new Chapter("connection", "a connection");
  work(chapter);
  return chapter.steps;
};

describe("the working of a connection", () => {
  test("each step has a finite number for every argument, and gives its value twice", () => {
    for (const [name, work] of Object.entries(works)) {
      const steps = worked(work);
      expect(steps.length, name).toBeGreaterThan(1);
      for (const step of steps) {
        const words = `${name}: ${step.formula.id}`;
        expect(step.inputs, words).toHaveLength(step.formula.arguments.length);
        expect(step.inputs.every(Number.isFinite), words).toBe(true);
        for (const argument of step.formula.arguments) {
          expect(
            Object.values(argument).every((part) => /\w/.test(part)),
            words,
          ).toBe(true);
        }
        expect(evaluateAgain(step).agrees, words).toBe(true);
      }
    }
  });

  test("both available strengths of a limit state are worked under its name", () => {
    const face = (sheet: Chapter): readonly LimitState[] => {
      const strength = faceStrength({ rail, stubOutside: 0.095, openEnd: null }, 0.5, sheet);
      if (!strength.covered) throw new Error(strength.reason);
      const actions: readonly FaceAction[] = ["uplift", "push", "inPlane", "outOfPlane"];
      return actions.flatMap((action) => strength.limitStates[action]);
    };
    const row = (sheet: Chapter): readonly LimitState[] => {
      const strength = sleeveStrength(changed({ count: 3 }), sheet);
      if (!strength.covered) throw new Error(strength.reason);
      return [...strength.perBolt.limitStates, ...strength.limitStates];
    };
    for (const work of [face, row]) {
      const chapter = new Chapter("connection", "a connection");
      const states = work(chapter);
      expect(states.length).toBeGreaterThan(5);
      for (const { name, ASD, LRFD } of states) {
        const told = chapter.steps.filter(({ note }) => note === name).map(({ value }) => value);
        expect(told, name).toContain(ASD);
        expect(told, name).toContain(LRFD);
      }
    }
  });

  test("clear distances are told by the part they lie in", () => {
    const notes = worked((sheet) => sleeveStrength(sleeve, sheet))
      .filter(({ formula }) => formula.id === "end-clear-distance")
      .map(({ note }) => note);
    expect(notes).toEqual(["in the hoop", "in the stub"]);
  });

  test("a bolt alone is not worked as several", () => {
    const several = (count: number) =>
      worked((sheet) => sleeveStrength(changed({ count }), sheet)).filter(
        ({ formula }) => formula.id === "several-together",
      );
    expect(several(1)).toEqual([]);
    expect(several(2).map(({ inputs }) => inputs[0])).toContain(2);
  });

  test("what an A307 bolt keeps over a long grip is told under the symbols of its stresses", () => {
    const steps = worked((sheet) =>
      boltStrength({ ...bolt, grade: "A307", grip: 5 * inch, planes: 1 }, sheet),
    );
    // 2 1/2 in over five diameters of 1/2 in: 40 sixteenths.
    const reduced = steps.filter(({ formula }) => formula.id === "reduced-bolt-stress");
    expect(reduced.map(({ symbol }) => symbol)).toEqual(["F_nt", "F_nv"]);
    for (const { inputs } of reduced) expect(inputs[0]).toBeCloseTo(0.6, 12);
  });

  test("the sides of a weld rectangle are told apart, b along its width and d along its depth", () => {
    const sides = worked(works["forces on a rectangular weld"] ?? (() => {}))
      .filter(({ formula }) => formula.id === "inscribed-side")
      .map(({ symbol, inputs }) => [symbol, inputs[0]]);
    expect(sides).toEqual([
      ["b", 0.08],
      ["d", 0.05],
    ]);
  });
});
