import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { System } from "@hoopstay/core";
import { renderReport } from "@hoopstay/report";
import type { Page } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { sampleChain } from "../report/sample-chain.ts";
import { sampleReview } from "../report/sample-review.ts";
import { opened, papers, screens, violationsOn, widerThanPaper, withBrowser } from "./open-page.ts";

const folder = mkdtempSync(join(tmpdir(), "chain-"));
afterAll(() => rmSync(folder, { recursive: true }));

const laid = (system: System): string => {
  const file = join(folder, `${system}.html`);
  writeFileSync(file, renderReport(sampleReview({ chain: sampleChain() }, 5), { system }).html);
  return pathToFileURL(file).href;
};

/** Words of the drawings that reach beyond them. */
const cutWords = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<SVGTextElement>("#chain svg text")]
      .filter((words) => {
        const { x, y, width, height } = words.getBBox();
        const view = words.ownerSVGElement?.viewBox.baseVal;
        if (!view) return true;
        return x < 0 || y < 0 || x + width > view.width || y + height > view.height;
      })
      .map(({ textContent }) => textContent ?? ""),
  );

/** Owner's tables that have to be shifted to be read. */
const shifted = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll("#chain .box:has(.plain)")]
      .filter((box) => box.scrollWidth > box.clientWidth)
      .map((box) => box.getAttribute("aria-label") ?? ""),
  );

describe.skipIf(!withBrowser).each(["us", "si"] as const)("what goes first, in %s", (system) => {
  const url = laid(system);

  it.each(screens)("reads well at $width px", (viewport) =>
    opened(url, { viewport }, async (page, requests) => {
      const width = await page.evaluate(() => document.scrollingElement?.scrollWidth);
      expect.soft(width).toBeLessThanOrEqual(viewport.width);
      expect.soft(await cutWords(page)).toEqual([]);
      expect.soft(await shifted(page)).toEqual([]);
      expect.soft(await violationsOn(page)).toEqual([]);
      expect(requests).toEqual([url]);
    }),
  );

  it.each(papers)("nothing is cut off on $format", ({ format, ...viewport }) =>
    opened(url, { viewport }, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await widerThanPaper(page)).toEqual([]);
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    }),
  );
});
