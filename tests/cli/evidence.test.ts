import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { EvidenceReview } from "@hoopstay/core";
import { beforeAll, describe, expect, test } from "vitest";
import { buildOnce, inFolder, type Ran, run } from "./program.ts";

beforeAll(buildOnce);

/** It searches for the worst direction of whole houses: half a minute alone, more beside others. */
const patience = 600_000;

const totals = resolve(import.meta.dirname, "../../packages/report/src/sheet/evidence-totals.json");

describe("hoopstay evidence", () => {
  let shown: Ran;
  let page = "";
  beforeAll(
    () =>
      inFolder(async (folder) => {
        shown = await run(folder, ["evidence", "--to", "sheet.html"]);
        page = readFileSync(join(folder, "sheet.html"), "utf8");
        expect(existsSync(join(folder, "sheet.html.part"))).toBe(false);
      }),
    patience,
  );

  test("leads with its answer, fits the screen's width, and says what it is not", () => {
    expect(shown.stderr).toBe("");
    expect(shown.code).toBe(0);
    expect(shown.stdout).toMatch(/^AGREES {3}\d/);
    const lines = shown.stdout.trimEnd().split("\n");
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
    expect(shown.stdout).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
    expect(shown.stdout.replace(/\s+/g, " ")).toContain("no test of a real one stands here");
    expect(shown.stdout).toContain("Not a sealed design");
    expect(shown.stdout).toContain("Verification sheet: sheet.html");
  });

  test("writes the page that is committed, whole", () => {
    const committed = resolve(import.meta.dirname, "../../reports/verification-sheet.html");
    expect(page).toBe(readFileSync(committed, "utf8"));
  });

  test(
    "as JSON is the record, with the totals that every report names",
    async () => {
      const { code, stdout } = await run(".", ["evidence", "--json"]);
      const record = JSON.parse(stdout) as EvidenceReview & { program: string; version: string };
      expect(code).toBe(0);
      expect(record.program).toBe("hoopstay");
      expect(record.version).toMatch(/^\d/);
      expect(record.totals).toEqual(JSON.parse(readFileSync(totals, "utf8")));
      expect(stdout).not.toMatch(/:null,"allowed"/);
    },
    patience,
  );
});

test("an argument that it does not have is refused", async () => {
  const { code, stderr } = await run(".", ["evidence", "house.yaml"]);
  expect(code).toBe(2);
  expect(stderr).toContain("command-unknown");
});
