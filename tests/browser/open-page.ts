import axe, { type AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launch, withBrowser } from "./chromium.ts";

export { withBrowser } from "./chromium.ts";

export const screens = [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
];
/** Inside margins of 10 mm, in CSS pixels. */
export const papers = [
  { format: "A4", width: 718, height: 1047 },
  { format: "Letter", width: 740, height: 980 },
];

let browser: Browser;
beforeAll(async () => {
  if (withBrowser) browser = await launch();
});

afterAll(() => browser?.close());

/** Opens a page in a context of its own and closes it after use. */
export async function opened<T>(
  url: string,
  options: BrowserContextOptions,
  use: (page: Page, requests: string[]) => Promise<T>,
): Promise<T> {
  const context = await browser.newContext(options);
  try {
    const page = await context.newPage();
    const requests: string[] = [];
    page.on("request", (request) => requests.push(request.url()));
    await page.goto(url);
    return await use(page, requests);
  } finally {
    await context.close();
  }
}

/** What the accessibility checks find on a page. */
export async function violationsOn(page: Page): Promise<string[]> {
  const { violations } = await page.evaluate<AxeResults>(
    `${axe.source}; axe.run({ resultTypes: ["violations"] })`,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map((n) => n.target)}`);
}

/** Tables and drawings that reach beyond the paper. */
export const widerThanPaper = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll("table, svg")]
      .filter((e) => e.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
      .map((e) => e.outerHTML.slice(0, 120)),
  );
