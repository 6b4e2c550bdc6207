import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { opened, papers, screens, violationsOn, widerThanPaper, withBrowser } from "./open-page.ts";

const root = join(import.meta.dirname, "../..");
const listed = JSON.parse(readFileSync(join(root, ".ci/reports.json"), "utf8"));
const reports: string[] = listed.map(({ report }: { report: string }) => report);

const urlOf = (report: string) => pathToFileURL(join(root, report)).href;

const textOf = (page: Page) => page.locator("body").allInnerTexts();

it("finds the committed reports", () => {
  expect(reports).not.toEqual([]);
});

describe.skipIf(!withBrowser).each(reports)("%s", (report) => {
  it.each(screens)("reads well at $width px", (viewport) =>
    opened(urlOf(report), { viewport }, async (page, requests) => {
      expect.soft(await page.title()).not.toBe("");
      const banner = await page
        .getByText(/licensed engineer/i)
        .first()
        .boundingBox();
      const bottom = banner ? banner.y + banner.height : Number.POSITIVE_INFINITY;
      expect.soft(bottom).toBeLessThanOrEqual(viewport.height);
      const width = await page.evaluate(() => document.scrollingElement?.scrollWidth);
      expect.soft(width).toBeLessThanOrEqual(viewport.width);

      expect.soft(await violationsOn(page)).toEqual([]);
      expect(requests).toEqual([urlOf(report)]);
    }),
  );

  it.each(papers)("prints on $format", ({ format, ...viewport }) =>
    opened(urlOf(report), { viewport }, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await widerThanPaper(page)).toEqual([]);
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    }),
  );

  it("says the same without JavaScript", async () => {
    const shown = await opened(urlOf(report), {}, textOf);
    expect(shown).not.toEqual([""]);
    expect(await opened(urlOf(report), { javaScriptEnabled: false }, textOf)).toEqual(shown);
  });
});
