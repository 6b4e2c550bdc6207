import type { Page } from "playwright-core";

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
