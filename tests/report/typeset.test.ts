import { derived, formula, sumOf } from "@hoopstay/core";
import { describe, expect, it } from "vitest";
import { expressionRow } from "../../packages/report/src/typeset/expression.ts";
import { equationMarkup, symbolMarkup } from "../../packages/report/src/typeset/mathml.ts";
import { withNumbers } from "../../packages/report/src/typeset/numbers.ts";
import { symbolRow } from "../../packages/report/src/typeset/symbol.ts";
import { sampleChapters } from "./sample-chapters.ts";

const thin = '<mspace width=".17em"/>';
const comma = '<mo rspace=".28em">,</mo>';

it.each([
  ["K_zt", "<msub><mi>K</mi><mi>zt</mi></msub>"],
  ["GC_pi", "<msub><mi>GC</mi><mi>pi</mi></msub>"],
  ["gamma_W", "<msub><mi>\u03b3</mi><mi>W</mi></msub>"],
  ["x_alpha", "<msub><mi>x</mi><mi>\u03b1</mi></msub>"],
  ["Omega", '<mi mathvariant="normal">\u03a9</mi>'],
  ["q_1", "<msub><mi>q</mi><mn>1</mn></msub>"],
  ["q1", "<msub><mi>q</mi><mn>1</mn></msub>"],
  ["p_min,r", "<msub><mi>p</mi><mrow><mi>min</mi><mo>,</mo><mi>r</mi></mrow></msub>"],
  ["mu", "<mi>\u03bc</mi>"],
])("typesets the name %s", (symbol, mathml) => {
  expect(symbolRow(symbol).join("")).toBe(mathml);
});

it.each([
  [
    "(R - S) / (gamma_W * w)",
    `<mfrac><mrow><mi>R</mi><mo>\u2212</mo><mi>S</mi></mrow><mrow><msub><mi>\u03b3</mi><mi>W</mi></msub>${thin}<mi>w</mi></mrow></mfrac>`,
  ],
  ["2 * 3 * a^2", `<mn>2</mn><mo>\u22c5</mo><mn>3</mn>${thin}<msup><mi>a</mi><mn>2</mn></msup>`],
  ["a * 10^n", "<mi>a</mi><mo>\u22c5</mo><msup><mn>10</mn><mi>n</mi></msup>"],
  ["a * -b", "<mi>a</mi><mo>\u22c5</mo><mrow><mo>\u2212</mo><mi>b</mi></mrow>"],
  [
    "a - (b - c)",
    "<mi>a</mi><mo>\u2212</mo><mrow><mo>(</mo><mi>b</mi><mo>\u2212</mo><mi>c</mi><mo>)</mo></mrow>",
  ],
  [
    "(z / h)^(2 / alpha)",
    "<msup><mrow><mo>(</mo><mfrac><mi>z</mi><mi>h</mi></mfrac><mo>)</mo></mrow><mfrac><mn>2</mn><mi>\u03b1</mi></mfrac></msup>",
  ],
  [
    "max(0, 1 - abs(x) / mu)",
    `<mi>max</mi><mrow><mo>(</mo><mn>0</mn>${comma}<mn>1</mn><mo>\u2212</mo><mfrac><mrow><mo>|</mo><mi>x</mi><mo>|</mo></mrow><mi>\u03bc</mi></mfrac><mo>)</mo></mrow>`,
  ],
  [
    "3.141592653589793 / 64 * sqrt(D + d)",
    `<mfrac><mi>\u03c0</mi><mn>64</mn></mfrac>${thin}<msqrt><mi>D</mi><mo>+</mo><mi>d</mi></msqrt>`,
  ],
  [
    "exp(-0.0000362 * z)",
    `<mi>exp</mi><mrow><mo>(</mo><mrow><mo>\u2212</mo><mn>0.0000362</mn></mrow>${thin}<mi>z</mi><mo>)</mo></mrow>`,
  ],
  [
    "2.5e-9 * log(x)",
    `<mn>2.5</mn><mo>\u22c5</mo><msup><mn>10</mn><mrow><mo>\u2212</mo><mn>9</mn></mrow></msup>${thin}<mi>ln</mi><mrow><mo>(</mo><mi>x</mi><mo>)</mo></mrow>`,
  ],
])("typesets the expression %s", (expression, mathml) => {
  expect(expressionRow(expression).join("")).toBe(mathml);
});

it.each(["a % b", "a < b", "[a]"])("refuses to typeset %s", (expression) => {
  expect(() => expressionRow(expression)).toThrow("no typesetting");
});

describe("markup", () => {
  it("has no redundant attribute", () => {
    expect(symbolMarkup("K_zt")).toBe("<math><msub><mi>K</mi><mi>zt</mi></msub></math>");
  });

  it("keeps words after a symbol", () => {
    expect(symbolMarkup("F_z case 3")).toBe(
      "<math><msub><mi>F</mi><mi>z</mi></msub></math> case 3",
    );
  });

  it("shows two names with a fraction bar", () => {
    expect(symbolMarkup("D/t")).toBe("<math><mfrac><mi>D</mi><mi>t</mi></mfrac></math>");
  });

  it("sets an equation in one row", () => {
    const area = formula({
      id: "area",
      symbol: "A",
      name: "area",
      measure: "area",
      arguments: [["b", "width", "length"]],
      expression: "b^2",
      citation: derived("square"),
      evaluate: (b) => b ** 2,
    });
    expect(equationMarkup(area)).toBe(
      "<math><mi>A</mi><mo>=</mo><msup><mi>b</mi><mn>2</mn></msup></math>",
    );
  });

  it("lets a line break within a long sum", () => {
    const terms = "abcdefgh".split("");
    const given = terms.map((symbol) => ({ symbol, name: symbol, measure: "force" }) as const);
    const sum = sumOf("sum", "S", "sum", "force", given, derived("sum"));
    const row = (start: string, letters: string[]) =>
      `<math>${start}${letters.map((letter) => `<mi>${letter}</mi>`).join("<mo>+</mo>")}</math>`;
    expect(equationMarkup(sum)).toBe(
      `${row("<mi>S</mi><mo>=</mo>", terms.slice(0, 6))} ${row('<mo form="infix">+</mo>', terms.slice(6))}`,
    );
  });

  it("shows a symbol that is no name as text", () => {
    expect(symbolMarkup("<F_z> 3")).toBe("&lt;F_z&gt; 3");
  });
});

it("puts the numbers into the formula", () => {
  const steps = sampleChapters(1).flatMap((chapter) => chapter.steps);
  expect(steps.map(withNumbers).slice(0, 4)).toEqual([
    "2.01 \u00b7 (4.572 / 274.32)^(2 / 9.5)",
    "exp(\u22120.0000362 \u00b7 310 / 0.3048)",
    "",
    "max(0, 1 \u2212 abs(\u221240) / (1.5 \u00b7 120))",
  ]);
});
