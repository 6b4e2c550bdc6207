import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { buildOnce, inFolder, run, soundHouse, soundSite } from "./program.ts";
import { layFiles, type RefusedRow, readTable } from "./refused-table.ts";

interface HostileRow extends RefusedRow {
  readonly screen?: readonly string[];
  readonly page?: readonly string[];
}

/** The files a report carries: no browser reads markup there before a "<". */
const inertData = /<script type="application\/json" id="[\w-]+">[^<]*<\/script>/;

const check = ["check", "house.yaml", "site.yaml"];
const rows = readTable<HostileRow>("not-refused");

beforeAll(buildOnce);

describe("fixtures/refused/not-refused.yaml", () => {
  test.concurrent.each(rows)("$name", async (row) => {
    await inFolder(async (folder) => {
      layFiles(row, folder);
      const { code, stdout, stderr } = await run(folder, [...check, "--report", "out.html"]);
      expect([code, stderr]).toEqual([1, ""]);
      const report = readFileSync(join(folder, "out.html"), "utf8");
      expect(stdout).toMatch(/^DOES NOT HOLD {3}/);
      for (const line of stdout.trimEnd().split("\n")) expect(line.length).toBeLessThanOrEqual(80);
      expect(row.screen?.filter((text) => stdout.includes(text)) ?? []).toEqual([]);
      const shown = report.replace(inertData, "");
      expect(row.page?.filter((text) => shown.includes(text)) ?? []).toEqual([]);
      expect(report.match(/<script\b/g)?.length ?? 0).toBeLessThanOrEqual(1);
    });
  });

  test.concurrent.each(rows)("$name, as JSON", async (row) => {
    await inFolder(async (folder) => {
      const texts = layFiles(row, folder);
      const { code, stdout } = await run(folder, [...check, "--json"]);
      const result = JSON.parse(stdout) as { house: string; site: string };
      expect(code).toBe(1);
      expect(result.house).toBe(parse(texts.house).house);
      expect(result.site).toBe(parse(texts.site).site);
    });
  });
});

test("JSON in place of YAML is read, indented by spaces or tabs or not at all", async () => {
  await inFolder(async (folder) => {
    layFiles({ name: "sound", code: "" }, folder);
    const { stdout: expected } = await run(folder, check);
    for (const indent of ["\t", 2, 0]) {
      for (const [file, text] of [
        ["house", soundHouse],
        ["site", soundSite],
      ] as const) {
        writeFileSync(join(folder, `${file}.json`), JSON.stringify(parse(text), null, indent));
      }
      const { code, stdout, stderr } = await run(folder, ["check", "house.json", "site.json"]);
      expect([code, stderr]).toEqual([1, ""]);
      expect(stdout).toBe(expected);
    }
  });
});
