import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { opened, papers, screens, violationsOn, widerThanPaper, withBrowser } from "./open-page.ts";

const file = resolve(import.meta.dirname, "../../reports/verification-sheet.html");
const url = pathToFileURL(file).href;

describe.skipIf(!withBrowser)("the verification sheet", () => {
  it.each(screens)("reads well at $width px", (viewport) =>
    opened(url, { viewport }, async (page, requests) => {
      const banner = await page
        .getByText(/consult a licensed engineer/i)
        .first()
        .boundingBox();
      expect.soft(banner && banner.y + banner.height).toBeLessThanOrEqual(viewport.height);
      const width = await page.evaluate(() => document.scrollingElement?.scrollWidth);
      expect.soft(width).toBeLessThanOrEqual(viewport.width);
      const shifted = await page.evaluate(() =>
        [...document.querySelectorAll(".box")]
          .filter((box) => box.scrollWidth > box.clientWidth)
          .map((box) => box.getAttribute("aria-label")),
      );
      expect.soft(shifted).toEqual([]);
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
