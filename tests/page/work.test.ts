import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { opened, withBrowser } from "../browser/open-page.ts";
import { buildOnce, inFolder, run, soundHouse, soundSite } from "../cli/program.ts";
import { pageUrl, reviewersLines, reviewersTable } from "./opened-page.ts";
import { startFromExample } from "./started.ts";

beforeAll(buildOnce);

const wide = { viewport: { width: 1280, height: 900 } };

const to = (page: Page, view: string): Promise<void> =>
  page.locator(".tabs").getByRole("link", { name: view, exact: true }).click();

async function saved(page: Page, file: "house" | "site"): Promise<string> {
  await to(page, "Papers");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: `Save the ${file} file` }).click(),
  ]);
  return readFileSync(await download.path(), "utf8");
}

const openFile = (page: Page, file: "house" | "site", name: string, text: string | Buffer) =>
  page.getByLabel(`Open a ${file} file`).setInputFiles({
    name,
    mimeType: "application/yaml",
    buffer: Buffer.from(text),
  });

async function span(page: Page, typed: string): Promise<void> {
  await to(page, "House");
  await page.getByLabel("How wide is it, foot to foot?").fill(typed);
}

describe.skipIf(!withBrowser)("files", () => {
  it(
    "opened, changed, saved and opened again: nothing but the change differs",
    {
      timeout: 60_000,
    },
    () =>
      opened(pageUrl, wide, (page) =>
        inFolder(async (folder) => {
          await openFile(page, "house", "mine.yaml", soundHouse);
          await openFile(page, "site", "here.yaml", soundSite);
          await page.locator(".boxes").waitFor();
          expect(await saved(page, "house")).toBe(soundHouse);
          expect(await saved(page, "site")).toBe(soundSite);
          await span(page, "19 ft 6 in");
          await expect
            .poll(() => saved(page, "house"))
            .toBe(soundHouse.replace("span: 18 ft ", "span: 19 ft 6 in "));
          const text = await saved(page, "house");
          await openFile(page, "house", "mine.yaml", text);
          expect(await saved(page, "house")).toBe(text);
          const [house, site] = [join(folder, "house.yaml"), join(folder, "site.yaml")];
          writeFileSync(house, text);
          writeFileSync(site, soundSite);
          const { stdout } = await run(folder, ["check", house, site]);
          await expect
            .poll(() => reviewersTable(page), { timeout: 20_000 })
            .toEqual(reviewersLines(stdout));
        }),
      ),
  );

  it("JSON is opened and saved as JSON", { timeout: 60_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      const text = `{\n  "site": "Meadow",\n  "wind": { "standard": "ASCE 7-22", "speed": "110 mph", "basis": "design", "risk_category": "I" }\n}\n`;
      await startFromExample(page);
      await to(page, "Papers");
      await openFile(page, "site", "here.json", text);
      await to(page, "Place");
      await page.getByLabel("What do you call the place?").fill("Lower meadow");
      await expect.poll(() => saved(page, "site")).toBe(text.replace("Meadow", "Lower meadow"));
    }),
  );

  const bad = [
    ["binary", Buffer.from([0, 255, 254, 1, 2]), "no UTF-8 text"],
    ["a picture of text", "just some words", "Is this the right file?"],
    ["a tab", "house: x\nhoops:\n\tspan: 18 ft\n", "tab"],
    ["a key twice", "house: a\nhouse: b\n", "again"],
    ["aliases without end", "a: &a [x]\nb: *a\n".repeat(2000), ""],
    ["a list", "- house\n", "Is this the right file?"],
    ["1 MB", `house: ${"x".repeat(1_000_001)}\n`, "more than 1 MB"],
  ] as const;
  it.each(bad)(
    "%s is refused by name; the work before it stays",
    { timeout: 60_000 },
    (_, text, says) =>
      opened(pageUrl, wide, async (page) => {
        await startFromExample(page);
        await to(page, "Papers");
        await openFile(page, "house", "bad.yaml", text);
        await page.getByText("What was here before stays.").waitFor();
        await expect.poll(() => page.locator(".to-mend").textContent()).toContain(says);
        expect(await page.locator(".to-mend").textContent()).toContain("bad.yaml");
        expect(await saved(page, "house")).toBe(soundHouse);
      }),
  );

  it("hostile text in every name does no harm", { timeout: 120_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      const hostile = `"</script><img src=x onerror=window.hurt=1>\\u202E{{x}}'&quot;"`;
      const house = soundHouse
        .replace("house: Harrow Brook lambing and greens house", `house: ${hostile}`)
        .replace(/name: [^,}]+/g, (found) => (found.includes("door") ? `name: ${hostile}` : found))
        .replace("what: lambing hurdles", `what: ${hostile}`);
      await startFromExample(page);
      await to(page, "Papers");
      await openFile(page, "house", "hostile.yaml", house);
      await to(page, "Answer");
      await page.waitForFunction(() => document.querySelector("main")?.dataset.linked, null, {
        timeout: 60_000,
      });
      await to(page, "Papers");
      await page.getByRole("button", { name: "Move card", exact: true }).click();
      await page.locator("dialog.paper iframe").waitFor({ timeout: 60_000 });
      await page.waitForTimeout(500);
      const hurt = await page.evaluate(() =>
        [window, ...[...document.querySelectorAll("iframe")].map((e) => e.contentWindow)].some(
          (one) => one !== null && "hurt" in one,
        ),
      );
      expect(hurt).toBe(false);
      expect(await page.locator("img").count()).toBe(0);
    }),
  );
});

describe.skipIf(!withBrowser)("the work", () => {
  it(
    "is still there after the page is loaded again, half-typed text too",
    { timeout: 60_000 },
    () =>
      opened(pageUrl, wide, async (page) => {
        await startFromExample(page);
        await span(page, "18 feat");
        await page.getByLabel("How wide is it, foot to foot?").blur();
        await page.getByText("wait for what is missing or wrong").waitFor();
        await page.reload();
        await to(page, "House");
        await expect
          .poll(() => page.getByLabel("How wide is it, foot to foot?").inputValue())
          .toBe("18 feat");
      }),
  );

  it(
    "a page of which a part was lost on the way says that its engine does not start",
    {
      timeout: 60_000,
    },
    () =>
      inFolder((folder) => {
        const whole = readFileSync(fileURLToPath(pageUrl), "utf8");
        const engine = whole.match(/id="engine">([^<]+)</)?.[1] ?? "";
        expect(engine.length).toBeGreaterThan(100_000);
        const broken = join(folder, "page.html");
        writeFileSync(
          broken,
          whole.replace(engine, () => engine.slice(0, 40_000)),
        );
        return opened(pathToFileURL(broken).href, wide, async (page) => {
          const fault = page.getByRole("alert");
          await fault.waitFor();
          expect(await fault.textContent()).toContain("own: this browser cannot start the engine");
        });
      }),
  );

  it("a browser without workers is told so, not shown an empty page", { timeout: 60_000 }, () =>
    opened("about:blank", wide, async (page) => {
      await page.addInitScript(() => {
        window.Worker = class {
          constructor() {
            throw new Error("no workers here");
          }
        } as unknown as typeof Worker;
      });
      await page.goto(pageUrl);
      const fault = page.getByRole("alert");
      await fault.waitFor();
      expect(await fault.textContent()).toContain("cannot start the engine (no workers here)");
    }),
  );

  it("a step is taken back and done again", { timeout: 60_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      await startFromExample(page);
      await span(page, "20 ft");
      const now = page.getByLabel("How wide is it, foot to foot?");
      await expect.poll(() => page.locator("main").getAttribute("data-turn")).toBe("2");
      await now.blur();
      await page.getByRole("button", { name: "Undo" }).click();
      await expect.poll(() => now.inputValue()).toBe("18 ft");
      await page.getByRole("button", { name: "Redo" }).click();
      await expect.poll(() => now.inputValue()).toBe("20 ft");
    }),
  );

  it("is gone from this device when it is cleared", { timeout: 60_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      await startFromExample(page);
      await to(page, "Papers");
      page.on("dialog", (dialog) => dialog.accept());
      await page.getByRole("button", { name: "Clear everything" }).click();
      await page.locator(".large-button").first().waitFor();
      expect(await page.evaluate(() => localStorage.length)).toBe(0);
      await page.reload();
      await page.locator(".large-button").first().waitFor();
    }),
  );

  it(
    "what is wrong is told beside its field, and the old answer says that it is old",
    {
      timeout: 60_000,
    },
    () =>
      opened(pageUrl, wide, async (page) => {
        await startFromExample(page);
        await span(page, "-18 ft");
        const field = page.locator('.field[data-key="house hoops.span"]');
        await expect.poll(() => field.textContent()).toContain("above zero");
        await page.getByText("The numbers below are those of before").waitFor();
        await to(page, "Papers");
        expect(await page.getByRole("button", { name: "Report", exact: true }).isDisabled()).toBe(
          true,
        );
      }),
  );

  it(
    "what is missing leads to its own question on a phone, with the cursor in it",
    {
      timeout: 60_000,
    },
    () =>
      opened(pageUrl, { viewport: { width: 390, height: 844 } }, async (page) => {
        await page.getByRole("button", { name: "Empty questions" }).click();
        for (const [words, key] of [
          ["Hoops: How wide is it", "house hoops.span"],
          ["Stubs and feet: How long is a stub", "house stubs.length"],
          ["Wind and openness: What wind speed", "site wind.speed"],
        ] as const) {
          await to(page, "Answer");
          await page.locator(".to-mend").getByRole("link", { name: words }).click();
          const field = page.locator(`.field[data-key="${key}"]`);
          const inSight = () =>
            field.evaluate((one) => {
              const { top, bottom } = one.getBoundingClientRect();
              return one.contains(document.activeElement) && top > 0 && bottom < innerHeight;
            });
          await expect.poll(inSight).toBe(true);
        }
      }),
  );

  it(
    "an end of which nothing is told is drawn as it is worked: closed with film",
    {
      timeout: 60_000,
    },
    () =>
      opened(pageUrl, wide, async (page) => {
        await startFromExample(page);
        await to(page, "Papers");
        const text = soundHouse.replace(/^end_walls:\n(?: .*\n)+/m, "");
        expect(text).not.toBe(soundHouse);
        await openFile(page, "house", "mine.yaml", text);
        await to(page, "House");
        await page.locator("#ask-ends > summary").click();
        const drawn = page.locator("#ask-ends figure");
        await expect.poll(() => drawn.textContent()).toContain("front: film, assumed");
      }),
  );

  it("numbers open the working that the report prints", { timeout: 120_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      await startFromExample(page);
      await to(page, "Answer");
      await page.locator("button.number.large").first().click();
      const working = page.locator("dialog.working");
      await working.locator("table.steps").first().waitFor({ timeout: 60_000 });
      expect(await working.textContent()).toMatch(/(\d+) formulas, \1 evaluated twice, \1 agree/);
      expect(await working.locator("math").count()).toBeGreaterThan(10);
    }),
  );

  it("the forecast stands on the ladder as on the command line's", { timeout: 120_000 }, () =>
    opened(pageUrl, wide, async (page) => {
      await startFromExample(page);
      await page.getByLabel("What gust is forecast?").fill("45 mph");
      const storm = page.locator('section[aria-labelledby="storm-title"]');
      await expect
        .poll(() => storm.textContent(), { timeout: 60_000 })
        .toMatch(/Forecast gust: 45 mph/);
    }),
  );
});
