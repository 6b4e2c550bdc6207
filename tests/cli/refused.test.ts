import { readdirSync } from "node:fs";
import { exitCodeOf, type RefusalCode, refusalCodes } from "@hoopstay/core";
import { beforeAll, describe, expect, test } from "vitest";
import { buildOnce, inFolder, run } from "./program.ts";
import { type CommandRow, headsOf, layFiles, type RefusedRow, readTable } from "./refused-table.ts";

const tables = [
  "quantities",
  "keys",
  "tubes",
  "shapes",
  "places",
  "steels",
  "sites",
  "forms",
  "several",
] as const;
const check = ["check", "house.yaml", "site.yaml"];
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true }).sort() as string[];
const codesIn = (stderr: string): string[] =>
  [...stderr.matchAll(/^\S.* {2}\[([a-z-]+)\]$|^\[([a-z-]+)\]$/gm)].map(
    (found) => found[1] ?? found[2] ?? "",
  );

beforeAll(buildOnce);

describe.each(tables)("fixtures/refused/%s.yaml", (table) => {
  test.concurrent.each(readTable<RefusedRow>(table))("$name", async (row) => {
    await inFolder(async (folder) => {
      const texts = layFiles(row, folder);
      const before = filesIn(folder);
      const { code, stdout, stderr } = await run(folder, [...check, "--report", "out.html"]);
      const expected = headsOf(row, texts);
      for (const { head, says } of expected) {
        expect(stderr).toContain(`\n${head}\n`);
        expect(stderr).toContain(says);
      }
      expect(code).toBe(row.exit ?? 2);
      expect(code).toBe(exitCodeOf(codesIn(stderr) as RefusalCode[]));
      if (!row.also) expect(codesIn(stderr)).toHaveLength(expected.length);
      expect(stderr).toMatch(/^(The input is refused|This is outside what hoopstay computes): /);
      expect(stderr.match(/^ {2}expected: \S/gm)).toHaveLength(codesIn(stderr).length);
      expect(stderr.match(/^ {2}mend: {5}\S/gm)).toHaveLength(codesIn(stderr).length);
      expect(stdout).toBe("");
      expect(filesIn(folder)).toEqual(before);
    });
  });
});

describe("fixtures/refused/commands.yaml", () => {
  test.concurrent.each(readTable<CommandRow>("commands"))("$name", async (row) => {
    await inFolder(async (folder) => {
      layFiles({ name: row.name, code: row.code }, folder);
      const before = filesIn(folder);
      const names: Record<string, string> = { HOUSE: "house.yaml", SITE: "site.yaml" };
      const { code, stdout, stderr } = await run(
        folder,
        row.args.map((arg) => names[arg] ?? arg),
      );
      expect(code).toBe(row.exit);
      expect(row.exit === 0 ? stdout : stderr).toContain(row.says ?? "");
      expect(row.exit === 0 ? stderr : stdout).toBe("");
      expect(codesIn(stderr)).toEqual(row.exit === 0 ? [] : [row.code]);
      expect(filesIn(folder)).toEqual(before);
    });
  });
});

test("the tables provoke every refusal", () => {
  const rows = tables.flatMap((table) => readTable<RefusedRow>(table));
  const provoked = [...rows, ...readTable<CommandRow>("commands")].flatMap((row) =>
    "complaints" in row ? (row.complaints ?? []).map(({ code }) => code) : [row.code],
  );
  expect(Object.keys(refusalCodes).filter((code) => !provoked.includes(code))).toEqual([]);
});

test("a garbled file is refused in seconds, without a flood of complaints", async () => {
  const garbled = [
    Array.from({ length: 20_000 }, (_, line) => `k${line}: 1`).join("\n"),
    "a: 1\n".repeat(80_000),
    "\tx: 1\n".repeat(60_000),
    `${"\t".repeat(900_000)}\n`,
  ];
  for (const content of garbled) {
    await inFolder(async (folder) => {
      layFiles({ name: "garbled", code: "", content }, folder);
      const start = performance.now();
      const { code, stdout, stderr } = await run(folder, check);
      expect([code, stdout]).toEqual([2, ""]);
      expect(stderr.length).toBeLessThan(100_000);
      expect(performance.now() - start).toBeLessThan(30_000);
    });
  }
}, 120_000);

test("both sound files are not refused", async () => {
  await inFolder(async (folder) => {
    layFiles({ name: "sound", code: "" }, folder);
    const { code, stderr } = await run(folder, check);
    expect([code, stderr]).toEqual([1, ""]);
  });
});
