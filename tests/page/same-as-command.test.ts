import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { opened, withBrowser } from "../browser/open-page.ts";
import { buildOnce, fixture, inFolder, run } from "../cli/program.ts";
import { fillIn } from "./fill-in.ts";
import { pageUrl, reviewersLines, reviewersTable } from "./opened-page.ts";
import { startFromExample } from "./started.ts";

const examples = [
  {
    place: 0,
    house: "houses/harrow-brook.yaml",
    site: "sites/sheltered-paddock.yaml",
    units: "us",
  },
  { place: 1, house: "houses/harrow-brook.yaml", site: "sites/hill-top.yaml", units: "us" },
  {
    place: 2,
    house: "houses/lind-meadow.yaml",
    site: "sites/lind-meadow-pasture.yaml",
    units: "si",
  },
] as const;

const papers = [
  { title: "Report", command: (to: string) => ["hold", "--report", to] },
  { title: "Report of the load path", command: (to: string) => ["first", "--report", to] },
  { title: "Move card", command: (to: string) => ["card", "--to", to] },
  { title: "Storm ladder", command: (to: string) => ["ladder", "--to", to] },
] as const;

beforeAll(buildOnce);

describe.skipIf(!withBrowser).each(examples)("$house at $site", ({ place, house, site, units }) => {
  const files = [fixture(house), fixture(site)];

  it("gives the ratios, code speeds and cases of the command line, to the last printed digit", () =>
    opened(pageUrl, {}, async (page) => {
      await startFromExample(page, place);
      const { stdout } = await run(".", ["check", ...files, "--units", units]);
      expect(await reviewersTable(page)).toEqual(reviewersLines(stdout));
    }));

  it("saves the papers that the command line writes, byte for byte", { timeout: 240_000 }, () =>
    opened(pageUrl, {}, (page) =>
      inFolder(async (folder) => {
        await startFromExample(page, place);
        await page.locator(".tabs").getByRole("link", { name: "Papers" }).click();
        for (const { title, command } of papers) {
          await page.getByRole("button", { name: title, exact: true }).click();
          const save = page.locator("dialog").getByRole("button", { name: "Save" });
          const [download] = await Promise.all([
            page.waitForEvent("download", { timeout: 120_000 }),
            save.click({ timeout: 120_000 }),
          ]);
          await page.locator("dialog").getByRole("button", { name: "Close" }).click();
          const mine = readFileSync(await download.path(), "utf8");
          const to = join(folder, "command.html");
          const [name = "", ...options] = command(to);
          await run(folder, [name, ...files, "--units", units, ...options]);
          expect(mine === readFileSync(to, "utf8"), title).toBe(true);
        }
      }),
    ),
  );
});

describe.skipIf(!withBrowser)("entered by hand, value by value", () => {
  const { house, site } = examples[0];
  /** What the files hold beside the house and its place. */
  const ofOthers = ["prices", "variants", "search"];

  it("the example gives the same ratios as its files", { timeout: 300_000 }, () =>
    opened(pageUrl, { viewport: { width: 1280, height: 900 } }, async (page) => {
      await page.getByRole("button", { name: "Empty questions" }).click();
      for (const [file, view, path] of [
        ["house", "House", house],
        ["site", "Place", site],
      ] as const) {
        await page.locator(".tabs").getByRole("link", { name: view, exact: true }).click();
        await page.locator("details.section").first().waitFor();
        const sections = page.locator("details.section:not([open]) > summary");
        while ((await sections.count()) > 0) await sections.first().click();
        const value = parse(readFileSync(fixture(path), "utf8")) as Record<string, unknown>;
        for (const key of ofOthers) delete value[key];
        await fillIn(page, file, value);
      }
      await page.locator(".boxes").waitFor();
      const { stdout } = await run(".", ["check", fixture(house), fixture(site)]);
      expect(await reviewersTable(page)).toEqual(reviewersLines(stdout));
    }),
  );
});
