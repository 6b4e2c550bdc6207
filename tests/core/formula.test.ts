import {
  Chapter,
  constant,
  declaredFormulas,
  derived,
  formula,
  inMeasure,
  sumOf,
  taken,
} from "@hoopstay/core";
import { agreement, evaluateAgain, parseExpression } from "@hoopstay/core/second-evaluation";
import { describe, expect, test } from "vitest";

const citation = derived("rectangle");
const area = formula({
  id: "area",
  symbol: "A",
  name: "area",
  measure: "area",
  arguments: [
    ["b", "width", "length"],
    ["h", "height", "length"],
  ],
  expression: "b * h",
  citation,
  evaluate: (b, h) => b * h,
});
/** Declared wrongly: what it prints is not what it computes. */
const wrong = { ...area, id: "wrong", expression: "b + h" };

describe("a formula", () => {
  test("keeps its declaration, and names its arguments in order", () => {
    expect(area.arguments).toEqual([
      { symbol: "b", name: "width", measure: "length" },
      { symbol: "h", name: "height", measure: "length" },
    ]);
    expect(area).toMatchObject({ id: "area", symbol: "A", expression: "b * h", citation });
    expect(area.evaluate(2, 3)).toBe(6);
  });

  test("a constant has no arguments, is its value, and prints ten figures of it", () => {
    const third = constant("third", "c", "a third", 1 / 3, "ratio", citation);
    expect(third).toMatchObject({ id: "third", symbol: "c", name: "a third", measure: "ratio" });
    expect(third.arguments).toEqual([]);
    expect(third.expression).toBe("0.3333333333");
    expect(third.value).toBe(1 / 3);
    expect(third.evaluate()).toBe(1 / 3);
    expect(third.citation).toBe(citation);
  });

  test("a sum lists its terms and adds them up; without terms it is nought", () => {
    const terms = [
      { symbol: "a", name: "first", measure: "force" },
      { symbol: "b", name: "second", measure: "force" },
    ] as const;
    const sum = sumOf("total", "S", "total", "force", terms, citation);
    expect(sum).toMatchObject({ id: "total", symbol: "S", name: "total", measure: "force" });
    expect(sum.arguments).toEqual(terms);
    expect(sum.expression).toBe("a + b");
    expect(sum.evaluate(5, -2)).toBe(3);
    const empty = sumOf("total", "S", "total", "force", [], citation);
    expect([empty.expression, empty.evaluate()]).toEqual(["0", 0]);
  });
});

test("what is declared is kept in a list, what is made while working is not", () => {
  const third = constant("a-third", "c", "a third", 1 / 3, "ratio", citation);
  const kept = declaredFormulas();
  expect(kept.filter((one) => one === area || one === third)).toHaveLength(2);
  for (const one of kept) expect(one.id).toMatch(/\w/);
  const before = kept.length;
  sumOf("total", "S", "total", "force", [], citation);
  taken("found by search", "q", "q_c", "pressure found", 1, "pressure", citation);
  expect(declaredFormulas()).toHaveLength(before);
});

describe("a chapter of working", () => {
  test("starts empty and keeps each step with its numbers, in order", () => {
    const chapter = new Chapter("roof", "The roof");
    expect(chapter.steps).toEqual([]);
    expect([chapter.id, chapter.title]).toEqual(["roof", "The roof"]);
    expect(chapter.work(area, [2, 3])).toBe(6);
    expect(chapter.work(area, [4, 5], { symbol: "A_2" })).toBe(20);
    expect(chapter.work(area, [1, 1], { note: "one by one" })).toBe(1);
    expect(chapter.steps).toEqual([
      { formula: area, inputs: [2, 3], value: 6, symbol: "A" },
      { formula: area, inputs: [4, 5], value: 20, symbol: "A_2" },
      { formula: area, inputs: [1, 1], value: 1, symbol: "A", note: "one by one" },
    ]);
    expect("note" in (chapter.steps[0] ?? {})).toBe(false);
  });
});

describe("the second evaluation", () => {
  const stepOf = (one: typeof area, b: number, h: number, value = one.evaluate(b, h)) => {
    const chapter = new Chapter("one", "One");
    chapter.work({ ...one, evaluate: (_b: number, _h: number) => value }, [b, h]);
    const [step] = chapter.steps;
    if (!step) throw new Error("no step");
    return step;
  };

  test("reads the printed expression and puts the printed numbers in", () => {
    expect(parseExpression("b * h").toString()).toBe("b * h");
    expect(evaluateAgain(stepOf(area, 2, 3))).toEqual({ second: 6, agrees: true });
    expect(evaluateAgain(stepOf(area, 2, 5))).toEqual({ second: 10, agrees: true });
    expect(evaluateAgain(stepOf(wrong, 2, 3))).toEqual({ second: 5, agrees: false });
    expect(evaluateAgain(stepOf(area, 2, 3))).toEqual({ second: 6, agrees: true });
  });

  test("agrees to one in a thousand million, whatever the size, and no further", () => {
    for (const size of [1e-6, 1, 1e6]) {
      for (const sign of [1, -1]) {
        const near = evaluateAgain(stepOf(area, size, sign, sign * size * (1 + 0.9e-9)));
        const far = evaluateAgain(stepOf(area, size, sign, sign * size * (1 + 1.1e-9)));
        expect([near.agrees, far.agrees]).toEqual([true, false]);
      }
    }
    // One in a thousand million itself still agrees.
    expect(evaluateAgain(stepOf(area, 1e9, 1, 1e9 + 1)).agrees).toBe(true);
    expect(evaluateAgain(stepOf(area, 1, 1, -1)).agrees).toBe(false);
    expect(evaluateAgain(stepOf(area, 0, 1, 1)).agrees).toBe(false);
    expect(evaluateAgain(stepOf(area, 1, 1, 0)).agrees).toBe(false);
  });

  test("nought agrees with nought, and infinity with infinity", () => {
    expect(evaluateAgain(stepOf(area, 0, 1)).agrees).toBe(true);
    const infinite = Number.POSITIVE_INFINITY;
    expect(evaluateAgain(stepOf(area, infinite, 1)).agrees).toBe(true);
    expect(evaluateAgain(stepOf(area, infinite, 1, 1)).agrees).toBe(false);
  });

  test("a number that stands as it is is a step, and no formula that was evaluated", () => {
    const chapter = new Chapter("first", "First");
    chapter.work(constant("half", "c", "a half", 0.5, "ratio", citation), []);
    chapter.work(area, [2, 3]);
    expect(agreement([chapter])).toMatchObject({ steps: 2, evaluated: 1, agreeing: 1 });
  });

  test("counts over all chapters, and tells the steps that disagree by chapter and symbol", () => {
    const [first, second] = [new Chapter("first", "First"), new Chapter("second", "Second")];
    first.work(area, [2, 3]);
    first.work(area, [3, 4]);
    second.work(wrong, [5, 7], { symbol: "A_w" });
    expect(agreement([first, second])).toEqual({
      steps: 3,
      evaluated: 3,
      agreeing: 2,
      disagreeing: ["second: wrong (A_w)"],
    });
  });

  test("a chapter rests on the others that it names, and else on none", () => {
    expect(new Chapter("first", "First").restsOn).toEqual([]);
    expect(new Chapter("second", "Second", ["first"]).restsOn).toEqual(["first"]);
  });

  test("a formula of forces holds for moments, areas then being their first moments, and the other way", () => {
    const turning = formula({
      id: "test-turning",
      symbol: "M",
      name: "moment by pressure",
      measure: "moment",
      arguments: [
        ["p", "pressure", "pressure"],
        ["w", "per pressure", "first-moment"],
      ],
      expression: "p * w",
      citation,
      evaluate: (pressure, per) => pressure * per,
    });
    const measures = (of: typeof turning) => [of, ...of.arguments].map(({ measure }) => measure);
    const pushing = inMeasure(turning, "force");
    expect(measures(pushing)).toEqual(["force", "pressure", "area"]);
    expect(measures(inMeasure(pushing, "moment"))).toEqual(["moment", "pressure", "first-moment"]);
    expect(measures(inMeasure(turning, "moment"))).toEqual(measures(turning));
    expect(pushing.evaluate(2, 3)).toBe(6);
  });
});
