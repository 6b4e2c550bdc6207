import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";

export const pageUrl = pathToFileURL(
  join(resolve(import.meta.dirname, "../.."), "packages/cli/dist/page.html"),
).href;

/** Touches the first example and waits for its answer. */
export async function startFromExample(page: Page, place = 0): Promise<void> {
  await page.locator(".large-button").nth(place).click();
  await page.locator(".boxes").waitFor();
}

/** Waits until everything about the present state of the work is worked out. */
export const workedOut = (page: Page): Promise<unknown> =>
  page.waitForFunction(
    () => {
      const main = document.querySelector("main");
      return main?.dataset.turn !== undefined && main.dataset.turn === main.dataset.linked;
    },
    null,
    { timeout: 120_000 },
  );

/** The reviewer's table: check, ratio, code speed and case as printed. */
export async function reviewersTable(page: Page): Promise<string[]> {
  await page.evaluate(() => {
    location.hash = "#answer";
  });
  const fold = page.locator("details", { hasText: "For the reviewer" });
  if (await fold.evaluate((e) => !(e as HTMLDetailsElement).open)) {
    await fold.locator("> summary").click();
  }
  const rows = fold.locator("tbody tr");
  return (await rows.allInnerTexts()).map((row) => row.split(/\s*\t\s*|\s*\n\s*/).join(" | "));
}

/** The same table out of the command line's answer. */
export function reviewersLines(stdout: string): string[] {
  const lines = stdout.split("\n");
  const from = lines.findIndex((line) => line.includes("For the reviewer"));
  const to = lines.findIndex((line) => line.includes("Not a sealed design"));
  return lines.slice(from + 1, to).map((line) => line.trim().split(/ {2,}/).join(" | "));
}
