import { beforeAll, describe, expect, it } from "vitest";
import { opened, screens, violationsOn, withBrowser } from "../browser/open-page.ts";
import { buildOnce } from "../cli/program.ts";
import { pageUrl } from "./opened-page.ts";
import { startFromExample, workedOut } from "./started.ts";

beforeAll(buildOnce);

const views = ["house", "place", "answer", "papers"] as const;
const looks = screens.flatMap((viewport) =>
  (["light", "dark"] as const).map((colorScheme) => ({ ...viewport, colorScheme })),
);

describe.skipIf(!withBrowser).each(looks)(
  "$width px wide, $colorScheme",
  ({ width, height, colorScheme }) => {
    const options = { viewport: { width, height }, colorScheme };

    it(
      "axe finds nothing in any view, nothing reaches beyond the screen, nothing is fetched",
      {
        timeout: 240_000,
      },
      () =>
        opened(pageUrl, options, async (page, requests) => {
          const found: string[] = [];
          const look = async (where: string): Promise<void> => {
            const banner = await page
              .getByText(/consult a licensed engineer/i)
              .first()
              .boundingBox();
            if (!banner || banner.y < 0) found.push(`${where}: the warning is out of sight`);
            found.push(...(await violationsOn(page)).map((one) => `${where}: ${one}`));
            const wide = await page.evaluate(() => document.scrollingElement?.scrollWidth ?? 0);
            if (wide > width) found.push(`${where}: ${wide} px wide`);
          };
          await page.locator("h2").first().waitFor();
          await look("start");
          await startFromExample(page);
          await workedOut(page);
          for (const view of views) {
            await page.evaluate((hash) => {
              location.hash = hash;
            }, `#${view}`);
            const shut = page.locator("details.section:not([open]) > summary");
            while ((await shut.count()) > 0) await shut.first().click();
            await look(view);
          }
          await page.evaluate(() => {
            location.hash = "#answer";
          });
          await page.locator("button.number.large").first().click();
          await page.locator("dialog.working table").first().waitFor();
          await look("working");
          expect(found).toEqual([]);
          expect(requests.filter((url) => !/^(file|blob|data|about):/.test(url))).toEqual([]);
          expect(requests.filter((url) => url.startsWith("file:"))).toEqual([pageUrl]);
        }),
    );
  },
);

describe.skipIf(!withBrowser)("on a phone", () => {
  const options = { viewport: { width: 390, height: 844 }, hasTouch: true };

  it("what is touched is large enough for a thumb: 44 px high", { timeout: 60_000 }, () =>
    opened(pageUrl, options, async (page) => {
      await startFromExample(page);
      for (const view of views) {
        await page.evaluate((hash) => {
          location.hash = hash;
        }, `#${view}`);
        const small = await page.evaluate(() =>
          [...document.querySelectorAll("button, select, summary, input, .tabs a")]
            .filter(
              (e) => !e.closest(".number, td, ol.links") && e.getBoundingClientRect().height > 0,
            )
            .filter((e) => !(e instanceof HTMLInputElement && e.type === "checkbox"))
            .filter((e) => e.getBoundingClientRect().height < 43.5)
            .map((e) => `${e.tagName} ${e.textContent?.slice(0, 40)}`),
        );
        expect(small, view).toEqual([]);
      }
    }),
  );

  it("works without a network", { timeout: 60_000 }, () =>
    opened(pageUrl, options, async (page) => {
      await page.context().setOffline(true);
      await page.reload();
      await startFromExample(page);
      await expect
        .poll(() => page.locator("p.verdict").first().textContent())
        .toContain("Does not hold");
    }),
  );

  it("is worked by keyboard alone", { timeout: 60_000 }, () =>
    opened(pageUrl, options, async (page) => {
      await page.locator(".large-button").first().waitFor();
      for (let count = 0; count < 5; count += 1) {
        await page.keyboard.press("Tab");
        if (await page.evaluate(() => document.activeElement?.matches(".large-button"))) break;
      }
      await page.keyboard.press("Enter");
      await page.locator(".boxes").waitFor();
      await page.locator("button.number.large").first().focus();
      await page.keyboard.press("Enter");
      await page.locator("dialog.working table").first().waitFor();
      await page.keyboard.press("Escape");
      await expect.poll(() => page.locator("dialog.working").isVisible()).toBe(false);
    }),
  );
});
