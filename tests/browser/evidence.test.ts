import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { renderEvidence } from "@hoopstay/report";
import { afterAll, describe, expect, it } from "vitest";
import { sampleEvidence } from "../report/sample-evidence.ts";
import { opened, papers, screens, violationsOn, widerThanPaper, withBrowser } from "./open-page.ts";

const folder = mkdtempSync(join(tmpdir(), "evidence-"));
afterAll(() => rmSync(folder, { recursive: true }));

const committed = resolve(import.meta.dirname, "../../reports/verification-sheet.html");
const sample = join(folder, "sample.html");
writeFileSync(sample, renderEvidence(sampleEvidence, { program: "hoopstay", version: "0.1.0" }));
const [whole, short] = [committed, sample].map((file) => pathToFileURL(file).href) as [
  string,
  string,
];

describe.skipIf(!withBrowser)("the verification sheet", () => {
  it.each(screens)("fits and asks for nothing at $width px", (viewport) =>
    opened(whole, { viewport }, async (page, requests) => {
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
      expect(requests).toEqual([whole]);
    }),
  );

  // The rules go through every element: all kinds of rows, but not all rows.
  it.each(screens)("can be read by anyone at $width px", (viewport) =>
    opened(short, { viewport }, async (page) => {
      expect(await violationsOn(page)).toEqual([]);
      for (const words of ["\u2717 Some differ", "known:", "24 numbers"]) {
        expect(await page.getByText(words).first().isVisible(), words).toBe(true);
      }
    }),
  );

  it.each(papers)("nothing is cut off on $format", ({ format, ...viewport }) =>
    opened(short, { viewport }, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await widerThanPaper(page)).toEqual([]);
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    }),
  );
});
