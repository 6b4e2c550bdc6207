import { describe, expect, it } from "vitest";
import { expressionToTex } from "../../packages/report/src/typeset/expression.ts";
import { symbolMarkup } from "../../packages/report/src/typeset/mathml.ts";
import { withNumbers } from "../../packages/report/src/typeset/numbers.ts";
import { symbolToTex } from "../../packages/report/src/typeset/symbol.ts";
import { sampleChapters } from "./sample-chapters.ts";

it.each([
  ["K_zt", "K_{\\mathrm{zt}}"],
  ["GC_pi", "\\mathrm{GC}_{\\mathrm{pi}}"],
  ["gamma_W", "\\gamma_{W}"],
  ["F_x", "F_{x}"],
  ["q_1", "q_{1}"],
  ["p_min,r", "p_{\\mathrm{min},r}"],
  ["mu", "\\mu"],
])("typesets the name %s", (symbol, tex) => {
  expect(symbolToTex(symbol)).toBe(tex);
});

it.each([
  ["(R - S) / (gamma_W * w)", "\\frac{R-S}{\\gamma_{W}\\,w}"],
  ["2 * 3 * a^2", "2\\cdot 3\\,{a}^{2}"],
  ["(z / z_g)^(2 / alpha)", "{\\left(\\frac{z}{z_{g}}\\right)}^{\\frac{2}{\\alpha}}"],
  [
    "max(0, 1 - abs(x) / (mu * L_h))",
    "\\max\\left(0{,}\\;1-\\frac{\\left|x\\right|}{\\mu\\,L_{h}}\\right)",
  ],
  ["3.141592653589793 / 64 * sqrt(D)", "\\frac{\\pi }{64}\\,\\sqrt{D}"],
  ["exp(-0.0000362 * z)", "\\exp\\left(-0.0000362\\,z\\right)"],
])("typesets the expression %s", (expression, tex) => {
  expect(expressionToTex(expression)).toBe(tex);
});

describe("markup", () => {
  it("has no redundant attribute", () => {
    expect(symbolMarkup("K_zt")).toBe("<math><msub><mi>K</mi><mi>zt</mi></msub></math>");
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
