import { Chapter, derived, formula, taken } from "@hoopstay/core";
import { renderReport } from "@hoopstay/report";
import { afterEach, describe, expect, it, vi } from "vitest";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";
import { withoutData } from "./without-data.ts";

const us = { system: "us" } as const;

describe("the whole report", () => {
  const report = renderReport(sampleReview(), us);

  it("counts its steps, and all agree", () => {
    expect(report.steps).toBeGreaterThan(140);
    expect(report.agreeing).toBe(report.evaluated);
    expect(report.html).toContain(`${report.evaluated} evaluated twice`);
  });

  it("counts no number that stands as it is among the formulas, and says where it comes from", () => {
    const chapter = new Chapter("Z", "found");
    const found = taken(
      "found by search",
      "z",
      "q_z",
      "a pressure",
      7,
      "pressure",
      derived("trial"),
    );
    chapter.work(found, []);
    const { chapters } = sampleReview();
    const more = renderReport(sampleReview({ chapters: [...chapters, chapter] }), us);
    expect(more.steps).toBe(report.steps + 1);
    expect(more.evaluated).toBe(report.evaluated);
    expect(more.html).toContain("not evaluated: found by search");
  });

  it("stays under 400 kB with 500 load cases", () => {
    expect(report.html.match(/^<tr><th>/gm)).toHaveLength(500);
    expect(Buffer.byteLength(report.html)).toBeLessThan(400_000);
  });

  it.each(["us", "si"] as const)("is well formed in %s", (system) => {
    const { html } = renderReport(sampleReview({ date: "2025-03-01" }), { system });
    expect(unbalanced(html)).toEqual([]);
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(/undefined|NaN|\[object|<script|https?:/.exec(withoutData(html))?.[0]).toBeUndefined();
  });

  it("numbers its sheets and its steps", () => {
    expect(report.html).toContain("Sheet 1 of 8");
    expect(report.html).toContain("W.07");
  });

  it("says that a limit is none where there is none", () => {
    expect(report.html).toContain("<td>no limit<");
  });

  it("keeps the standards' symbols off the owner's sheet", () => {
    const [, owner = ""] = report.html.split(/<section /);
    expect(owner).not.toMatch(/ASD|LRFD|MWFRS|<math/);
  });

  it("prints the detail chapters on a sheet of their own", () => {
    const detail = { of: "A001", chapters: [new Chapter("D", "A case by hand")] };
    const { html } = renderReport(sampleReview(), { ...us, detail });
    expect(html).toContain("Sheet 9 of 9");
    expect(html).toContain("D. <bdi>A case by hand</bdi>");
  });
});

it("throws where the second evaluation disagrees, and names the step", () => {
  const wrong = formula({
    id: "wrong-sum",
    symbol: "x",
    name: "sum",
    measure: "ratio",
    arguments: [["a", "a number", "ratio"]],
    expression: "a + 1",
    citation: derived("made wrong on purpose"),
    evaluate: (a) => a + 1.001,
  });
  const chapter = new Chapter("X", "wrong");
  chapter.work(wrong, [2]);
  expect(() => renderReport(sampleReview({ chapters: [chapter] }), us)).toThrow("X: wrong-sum (x)");
});

/** Everything that reads the locale or the clock. */
const places = [
  [Number.prototype, "toLocaleString"],
  [String.prototype, "localeCompare"],
  [String.prototype, "toLocaleUpperCase"],
  [Intl, "NumberFormat"],
  [Intl, "DateTimeFormat"],
  [Intl, "Collator"],
  [globalThis, "Date"],
] as const;

describe("a report made elsewhere", () => {
  afterEach(() => {
    vi.restoreAllMocks();
    vi.unstubAllEnvs();
  });

  it.each(["UTC", "Asia/Kathmandu", "America/St_Johns"])("is the same in %s", (zone) => {
    const { html } = renderReport(sampleReview(), us);
    vi.stubEnv("TZ", zone);
    const asked = places.map(([owner, name]) => vi.spyOn(owner as never, name as never));
    expect(renderReport(sampleReview(), us).html === html).toBe(true);
    for (const spy of asked) expect(spy).not.toHaveBeenCalled();
  });
});
