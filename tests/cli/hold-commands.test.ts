import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as makers from "@hoopstay/house";
import { beforeAll, describe, expect, test } from "vitest";
import { unbalanced } from "../report/unbalanced.ts";
import { buildOnce, fixture, inFolder, run, soundHouse, soundSite } from "./program.ts";

const made = ["holdReview", "moveCard", "stormLadder"].every((name) => name in makers);

const examples = [
  ["harrow-brook", "sheltered-paddock"],
  ["harrow-brook", "hill-top"],
  ["lind-meadow", "lind-meadow-pasture"],
] as const;

const leads = {
  hold: /^(HOLDS|DOES NOT HOLD) {3}\S/,
  card: /^(GO|DO NOT GO) {3}\S/,
  ladder: /^STORM LADDER {3}\S/,
  pulls: /^PULL LOG {3}\S/,
} as const;
type Name = keyof typeof leads;
const names = Object.keys(leads) as Name[];

beforeAll(buildOnce);

describe.runIf(made).each(examples)("%s at %s", (house, site) => {
  const files = [fixture(`houses/${house}.yaml`), fixture(`sites/${site}.yaml`)];

  describe.each(["us", "si"])("in %s", (units) => {
    test.each(names)("%s leads with its answer and fits the screen's width", async (name) => {
      const { code, stdout, stderr } = await run(".", [name, ...files, "--units", units]);
      expect(stderr).toBe("");
      expect([0, 1]).toContain(code);
      expect(stdout).toMatch(leads[name]);
      const lines = stdout.trimEnd().split("\n");
      for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
      if (name === "hold") expect(lines.length).toBeLessThanOrEqual(48);
      expect(stdout).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
      expect(stdout).not.toMatch(units === "us" ? / m\/s/ : / mph/);
    });
  });

  test("the exit code of hold and card is their answer", async () => {
    const [hold, card] = await Promise.all(
      ["hold", "card"].map((name) => run(".", [name, ...files])),
    );
    expect(hold?.code).toBe(hold?.stdout.startsWith("HOLDS") ? 0 : 1);
    expect(card?.code).toBe(card?.stdout.startsWith("GO") ? 0 : 1);
  });

  test("the forces in balance add up to the last row", async () => {
    const { stdout } = await run(".", ["hold", ...files, "--json"]);
    const { fitted } = JSON.parse(stdout);
    const proof = fitted?.joint.certificate;
    if (!proof) return;
    const parts = [...proof.tethers, ...proof.corners].map(({ sums }: { sums: number[] }) => sums);
    const rows: number[][] = [proof.wind, proof.weight, ...parts];
    for (const place of [0, 1, 2, 3, 4, 5]) {
      const column = rows.map((row) => row[place] ?? 0);
      const size = Math.max(1, ...column.map(Math.abs));
      const sum = column.reduce((total, value) => total + value, 0);
      expect(Math.abs(sum)).toBeLessThan(1e-5 * size);
      expect(Math.abs(proof.left[place])).toBeLessThan(1e-5 * size);
    }
  });

  test.each(names)("%s as JSON is the same in any units, and says what it is of", async (name) => {
    const [us, si] = await Promise.all(
      ["us", "si"].map((units) => run(".", [name, ...files, "--json", "--units", units])),
    );
    expect(si).toEqual(us);
    const record = JSON.parse(us?.stdout ?? "");
    expect(record.program).toBe("hoopstay");
    expect(record.digest).toMatch(/^[0-9a-f]{64}$/);
  });

  test.each(["card", "ladder"])("%s is written as one page", async (name) => {
    await inFolder(async (folder) => {
      const { stdout, stderr } = await run(folder, [name, ...files, "--to", "page.html"]);
      expect(stderr).toBe("");
      expect(stdout).toContain("page.html");
      expect(readdirSync(folder)).toEqual(["page.html"]);
      const html = readFileSync(join(folder, "page.html"), "utf8");
      expect(unbalanced(html)).toEqual([]);
      expect(html).toContain("Consult a licensed engineer");
    });
  });
});

describe.runIf(made)("the forecast", () => {
  const files = [fixture("houses/harrow-brook.yaml"), fixture("sites/hill-top.yaml")];

  test("reaches the more rungs the stronger it is", async () => {
    const reached = async (gust: string): Promise<number> => {
      const { stdout } = await run(".", ["ladder", ...files, "--gust", gust, "--json"]);
      const { rungs } = JSON.parse(stdout) as { rungs: { reached: boolean }[] };
      return rungs.filter((rung) => rung.reached).length;
    };
    expect(await reached("1 mph")).toBe(0);
    expect(await reached("200 mph")).toBeGreaterThan(await reached("12 mph"));
  });

  test("is refused without its unit, and nothing is written", async () => {
    await inFolder(async (folder) => {
      const args = ["ladder", ...files, "--gust", "45", "--to", "page.html"];
      const { code, stdout, stderr } = await run(folder, args);
      expect(code).toBe(2);
      expect(stdout).toBe("");
      expect(stderr).toMatch(/^--gust {2}\[unit-missing\]$/m);
      expect(existsSync(join(folder, "page.html"))).toBe(false);
    });
  });
});

describe.runIf(made)("a page", () => {
  test.each(["card", "ladder"])("of %s is never written over the house file", async (name) => {
    await inFolder(async (folder) => {
      writeFileSync(join(folder, "house.yaml"), soundHouse);
      writeFileSync(join(folder, "site.yaml"), soundSite);
      const args = [name, "house.yaml", "site.yaml", "--to", "house.yaml"];
      const { code, stderr } = await run(folder, args);
      expect(code).toBe(2);
      expect(stderr).toContain("[report-unwritable]");
      expect(readFileSync(join(folder, "house.yaml"), "utf8")).toBe(soundHouse);
    });
  });
});

describe.runIf(made).each(names)("hoopstay %s --help", (name) => {
  test("has an example, and the units", async () => {
    const { code, stdout } = await run(".", [name, "--help"]);
    expect(code).toBe(0);
    expect(stdout).toContain(`hoopstay ${name} fixtures/`);
    for (const option of ["--units", "--json"]) expect(stdout).toContain(option);
  });
});
