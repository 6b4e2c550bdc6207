import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";

export const pageUrl = pathToFileURL(
  join(resolve(import.meta.dirname, "../.."), "packages/cli/dist/page.html"),
).href;

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
  await rows.first().waitFor();
  return (await rows.allInnerTexts()).map((row) => row.split(/\s*\t\s*|\s*\n\s*/).join(" | "));
}

/** The same table out of the command line's answer. */
export function reviewersLines(stdout: string): string[] {
  const lines = stdout.split("\n");
  const from = lines.findIndex((line) => line.includes("For the reviewer"));
  const to = lines.findIndex((line) => line.includes("Not a sealed design"));
  return lines.slice(from + 1, to).map((line) => line.trim().split(/ {2,}/).join(" | "));
}
