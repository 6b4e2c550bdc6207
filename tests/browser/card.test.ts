import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { System } from "@hoopstay/core";
import { renderCard, renderLadder, renderReport } from "@hoopstay/report";
import { afterAll, describe, expect, it } from "vitest";
import { sampleDrawings } from "../report/sample-drawings.ts";
import { sampleCard, sampleHold, sampleLadder } from "../report/sample-hold.ts";
import { sampleReview } from "../report/sample-review.ts";
import { opened, papers, screens, violationsOn, widerThanPaper, withBrowser } from "./open-page.ts";

const folder = mkdtempSync(join(tmpdir(), "card-"));
afterAll(() => rmSync(folder, { recursive: true }));

const stamp = { date: "2026-11-12", digest: "3f9a1c20b7de4458a1", version: "0.1.0" };
const card = (perRail: number, system: System): string =>
  renderCard(sampleCard(perRail), sampleDrawings(), { system });

const cards = [
  ["card-10", card(5, "us")],
  ["card-24-si", card(12, "si")],
  ["card-30", card(15, "us")],
  ["card-none", card(0, "us")],
] as const;
const ladders = [
  ["ladder", renderLadder(sampleLadder(), { system: "us", stamp })],
  ["ladder-no-forecast", renderLadder(sampleLadder(null), { system: "si", stamp })],
] as const;
const review = sampleReview({ hold: sampleHold(), ladder: sampleLadder() }, 5);
const report = ["report-hold", renderReport(review, { system: "us" }).html] as const;

const laid = (name: string, html: string): string => {
  const file = join(folder, `${name}.html`);
  writeFileSync(file, html);
  return pathToFileURL(file).href;
};

describe.skipIf(!withBrowser).each([...cards, ...ladders, report])("%s", (name, html) => {
  const url = laid(name, html);

  it.each(screens)("reads well at $width px", (viewport) =>
    opened(url, { viewport }, async (page, requests) => {
      const banner = await page
        .getByText(/consult a licensed engineer/i)
        .first()
        .boundingBox();
      expect.soft(banner && banner.y + banner.height).toBeLessThanOrEqual(viewport.height);
      const width = await page.evaluate(() => document.scrollingElement?.scrollWidth);
      expect.soft(width).toBeLessThanOrEqual(viewport.width);
      expect.soft(await violationsOn(page)).toEqual([]);
      expect(requests).toEqual([url]);
    }),
  );

  it.each(papers)("nothing is cut off on $format", ({ width, height }) =>
    opened(url, { viewport: { width, height } }, async (page) => {
      await page.emulateMedia({ media: "print" });
      expect(await widerThanPaper(page)).toEqual([]);
    }),
  );
});

describe.skipIf(!withBrowser).each([...cards, ...ladders])("%s", (name, html) => {
  const url = laid(name, html);

  it.each(papers)("is one printed page on $format", ({ format }) =>
    opened(url, {}, async (page) => {
      const pdf = (await page.pdf({ format })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    }),
  );
});

describe.skipIf(!withBrowser).each(cards)("%s on a phone", (name, html) => {
  const url = laid(name, html);
  const phone = { viewport: { width: 390, height: 844 } };

  it("needs no zoom: no letters below 11 px, and no table or drawing to be shifted", () =>
    opened(url, phone, async (page) => {
      const small = await page.evaluate(() =>
        [...document.querySelectorAll("main *, footer")]
          .filter((e) => [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim()))
          .map((e) => {
            const drawing = e.closest("svg");
            const scale = drawing ? drawing.getBoundingClientRect().width / 340 : 1;
            return Number.parseFloat(getComputedStyle(e).fontSize) * scale;
          })
          .filter((size) => size < 11),
      );
      expect.soft(small).toEqual([]);
      const shifted = await page.evaluate(
        () =>
          [...document.querySelectorAll(".box")].filter((e) => e.scrollWidth > e.clientWidth)
            .length,
      );
      expect(shifted).toBe(0);
    }));

  it("stays dark on white where the phone is set to dark", () =>
    opened(url, { ...phone, colorScheme: "dark" }, async (page) => {
      const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
      expect(paper).toBe("rgb(255, 255, 255)");
      expect(await violationsOn(page)).toEqual([]);
    }));
});
