import type { Chapter } from "@hoopstay/core";
import { chainOf, evaluate, makeReview, notChecked } from "@hoopstay/house";
import { renderReport } from "@hoopstay/report";
import { describe, expect, it } from "vitest";
import { sloping } from "../hold-down/example-house.ts";

const files = { house: "", site: "" };
const meta = { version: "0.1.0", digest: "3f9a1c20b7de4458a1", date: null, files, inputs: [] };
const evaluation = evaluate(sloping.house, sloping.site);
const chain = chainOf(evaluation);
const review = makeReview(evaluation, meta, { full: true, chain });
const without = makeReview(evaluation, meta, { full: true });
const { links } = chain.review;
const chapters = review.chapters.filter(({ id }) => /^S\d+$/.test(id));
const sections = review.chapters.find(({ id }) => id === "X") as Chapter;
const worked = links.map(({ worst }, place) => ({
  link: worst.check.link,
  check: worst.check,
  chapter: chapters[place] as Chapter,
}));

/** Every number of a record with its place in it; what JSON cannot say is found by its kind. */
function leaves(value: unknown, place = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null) return [[place, value]];
  return Object.entries(value).flatMap(([key, part]) => leaves(part, `${place}/${key}`));
}

describe("the working of what goes first", () => {
  it("has a chapter for every link, weakest first", () => {
    expect(chapters.map(({ id }) => id)).toEqual(links.map((_, place) => `S${place + 1}`));
    for (const [place, { words, worst }] of links.entries()) {
      expect(chapters[place]?.title).toContain(words);
      expect(chapters[place]?.title).toContain(worst.check.part);
    }
  });

  it.each(worked)("ends in the gust of the table: $link", ({ check, chapter }) => {
    const last = chapter.steps.at(-1);
    if (Number.isFinite(check.workingGust)) {
      expect(last?.symbol).toBe("V_w");
      expect(last?.value).toBeCloseTo(check.workingGust, 9);
    } else expect(last?.symbol).not.toBe("V_w");
  });

  it.each(worked)("comes to the demand over resistance of the table: $link", (one) => {
    const { demand, resistance } = one.check;
    const ratio = demand.value / resistance.value;
    if (!Number.isFinite(ratio)) return;
    const near = one.chapter.steps.map(({ value }) => Math.abs(value / ratio - 1));
    expect(Math.min(...near)).toBeLessThan(1e-9);
  });

  it("is evaluated twice and agrees, and its citations are among the sources", () => {
    const { steps, evaluated, agreeing } = renderReport(review, { system: "us" });
    const before = renderReport(without, { system: "us" });
    const all = [sections, ...chapters];
    const own = all.reduce((sum, chapter) => sum + chapter.steps.length, 0);
    expect(agreeing).toBe(evaluated);
    expect(steps).toBe(before.steps + own);
    const cited = new Set(review.citations);
    for (const chapter of all)
      for (const { formula } of chapter.steps) expect(cited.has(formula.citation)).toBe(true);
  });
});

describe("the review", () => {
  it("has no chain where it was not asked for, and then names strength as not checked", () => {
    expect(without.chain).toBeNull();
    expect(without.notChecked).toEqual(notChecked);
    expect(without.notChecked[0]).toMatch(/^strength of .*hoopstay first/);
    expect(without.chapters.some(({ id }) => /^S\d/.test(id))).toBe(false);
    // Every step names where its numbers come from, and every symbol is listed.
    expect(renderReport(without, { system: "us" }).html.length).toBeLessThan(550_000);
  });

  it("names what the chain left out in place of all strength", () => {
    const { notChecked: open } = chain.review;
    expect(open.length).toBeGreaterThan(0);
    for (const { words, why } of open) expect(review.notChecked).toContain(`${words}: ${why}`);
    expect(review.notChecked.join("\n")).not.toMatch(/hoopstay first/);
    expect(review.notChecked).toContain("snow, ice");
  });

  it("holds only where the house and all its links hold, and answers with both", () => {
    expect(chain.review.holds).toBe(false);
    expect(review.holds).toBe(false);
    expect(review.answers.slice(1)).toEqual(without.answers);
    expect(review.answers[0]).toEqual(["Strength, link by link. ", ...chain.review.answer]);
  });
});

it("a record of the chain has no value that is none", () => {
  for (const [place, value] of leaves(chain.review)) {
    expect(value, place).not.toBeUndefined();
    expect(Number.isNaN(value), place).toBe(false);
    if (value === Number.POSITIVE_INFINITY)
      expect(place).toMatch(
        /\/(workingGust|codeSpeed\/\w+|ratio\/\w+|demand\/value|answer\/\d+\/value)$/,
      );
  }
});
