import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import axe, { type AxeResults } from "axe-core";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const folder = join(import.meta.dirname, "../../reports");
const reports = existsSync(folder) ? readdirSync(folder).filter((f) => f.endsWith(".html")) : [];

const screens = [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
];
/** Inside margins of 10 mm, in CSS pixels. */
const papers = [
  { format: "A4", width: 718, height: 1047 },
  { format: "Letter", width: 740, height: 980 },
];

let browser: Browser;
const executable = process.env.CHROMIUM ?? "/usr/bin/chromium";
/** The gates install the browser; a machine with Node and npm alone has none to test with. */
const withBrowser = process.env.CI !== undefined || existsSync(executable);

beforeAll(async () => {
  if (!withBrowser) return;
  browser = await chromium.launch({
    executablePath: executable,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--disable-quic",
    ],
  });
});

afterAll(() => browser?.close());

const urlOf = (report: string) => pathToFileURL(join(folder, report)).href;

/** Opens a report in a context of its own and closes it after use. */
async function opened<T>(
  report: string,
  options: BrowserContextOptions,
  use: (page: Page, requests: string[]) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    const requests: string[] = [];
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(urlOf(report));
    return await use(page, requests);
  } finally {
    await context.close();
  }
}

const textOf = (page: Page) => page.locator("body").allInnerTexts();

it("finds the committed reports", () => {
  expect(reports).not.toEqual([]);
});

describe.skipIf(!withBrowser).each(reports)("%s", (report) => {
  it.each(screens)("reads well at $width px", (viewport) =>
    opened(report, { viewport }, async (page, requests) => {
      expect.soft(await page.title()).not.toBe("");
      const banner = await page
        .getByText(/licensed engineer/i)
        .first()
        .boundingBox();
      const bottom = banner ? banner.y + banner.height : Number.POSITIVE_INFINITY;
      expect.soft(bottom).toBeLessThanOrEqual(viewport.height);
      const width = await page.evaluate(() => document.scrollingElement?.scrollWidth);
      expect.soft(width).toBeLessThanOrEqual(viewport.width);

      const { violations } = await page.evaluate<AxeResults>(`${axe.source}; axe.run()`);
      const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target)}`);
      expect.soft(found).toEqual([]);
      expect(requests).toEqual([urlOf(report)]);
    }),
  );

  it.each(papers)("prints on $format", ({ format, ...viewport }) =>
    opened(report, { viewport }, async (page) => {
      await page.emulateMedia({ media: "print" });
      const tooWide = await page.evaluate(() =>
        [...document.querySelectorAll("table, svg")]
          .filter(
            (e) => e.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5,
          )
          .map((e) => e.outerHTML.slice(0, 120)),
      );
      expect(tooWide).toEqual([]);
      const pdf = await page.pdf({ format });
      expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    }),
  );

  it("says the same without JavaScript", async () => {
    const shown = await opened(report, {}, textOf);
    expect(shown).not.toEqual([""]);
    expect(await opened(report, { javaScriptEnabled: false }, textOf)).toEqual(shown);
  });
});
