import { Chapter, constant, derived, formula } from "@hoopstay/core";
import { renderReport } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { sampleReview } from "./sample-review.ts";

const product = formula({
  id: "test-product",
  symbol: "P",
  name: "product",
  measure: "force",
  arguments: [
    ["p", "a pressure of the test", "pressure"],
    ["A", "a face of the test", "area"],
  ],
  expression: "p * A",
  citation: derived("test"),
  evaluate: (p, a) => p * a,
});
const double = formula({
  id: "test-double",
  symbol: "D",
  name: "twice",
  measure: "force",
  arguments: [["P", "a force of the test", "force"]],
  expression: "2 * P",
  citation: derived("test"),
  evaluate: (p) => 2 * p,
});

const factor = constant("test-factor", "C_f", "a factor of the test", 3, "ratio", derived("test"));
const many = formula({
  id: "test-many",
  symbol: "F",
  name: "many forces",
  measure: "force",
  arguments: [
    ["n", "how many", "ratio"],
    ["C", "their factor", "ratio"],
    ["P", "a force of the test", "force"],
  ],
  expression: "n * C * P",
  citation: derived("test"),
  evaluate: (n, c, p) => n * c * p,
});

const place = constant("test-place", "x_q", "a place of the test", 2.3, "length", derived("test"));
const stretch = formula({
  id: "test-stretch",
  symbol: "l",
  name: "a stretch of the test",
  measure: "length",
  arguments: [
    ["x_A", "where it begins", "length"],
    ["z_A", "how high it begins", "length"],
  ],
  expression: "x_A - z_A",
  citation: derived("test"),
  evaluate: (x, z) => x - z,
});

const chapter = new Chapter("Z", "where numbers come from");
const force = chapter.work(product, [31.5, 2.7]);
chapter.work(double, [-force]);
chapter.work(double, [force * 1.001]);
chapter.work(many, [3, chapter.work(factor, []), force]);
const aside = new Chapter("Y", "of another state");
aside.work(product, [31.5, 2.7]);
aside.work(factor, []);
const later = new Chapter("X", "resting on the first", ["Z"]);
later.work(double, [force]);
later.work(many, [3, -3, force]);
const alone = new Chapter("V", "resting on none");
alone.work(double, [force]);
const sides = new Chapter("U", "to either side");
sides.work(stretch, [-sides.work(place, []), -2.3]);
const { chapters } = sampleReview();
const shown = [...chapters, chapter, aside, later, alone, sides];
const { html } = renderReport(sampleReview({ chapters: shown }), { system: "si" });
const row = (number: string): string =>
  html.slice(html.indexOf(`>${number}<`), html.indexOf("</tr>", html.indexOf(`>${number}<`)));

describe("where the numbers of a step come from", () => {
  it("names the step a number came out of, whatever its sign", () => {
    expect(row("Z.02")).toContain("P from Z.01");
  });

  it("names none for a number of the house, or one that only looks alike", () => {
    expect(row("Z.01")).not.toContain(" from ");
    expect(row("Z.03")).not.toContain(" from ");
  });

  it("takes a count for no factor that happens to be as large", () => {
    expect(row("Z.05")).toContain("<small>C from Z.04, P from Z.01</small>");
  });

  it("names a step of a chapter that this one rests on, never one of another that is as large", () => {
    expect(row("X.01")).toContain("P from Z.01");
    expect(row("V.01")).not.toContain(" from ");
  });

  it("takes no ratio for its negative", () => {
    expect(row("X.02")).toContain("<small>P from Z.01</small>");
  });

  it("names a place laid off to the other side, no length of another letter", () => {
    expect(row("U.02")).toContain("<small>x_A from U.01</small>");
  });

  it("lists what every symbol means", () => {
    for (const name of ["a pressure of the test", "a face of the test", "a force of the test"]) {
      expect(html).toContain(name);
    }
  });
});
