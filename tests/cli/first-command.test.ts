import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { unbalanced } from "../report/unbalanced.ts";
import { buildOnce, fixture, inFolder, run, soundHouse, soundSite } from "./program.ts";

const examples = [
  ["harrow-brook", "hill-top"],
  ["lind-meadow", "lind-meadow-pasture"],
] as const;

beforeAll(buildOnce);

describe.each(examples)("first: %s at %s", (house, site) => {
  const files = [fixture(`houses/${house}.yaml`), fixture(`sites/${site}.yaml`)];

  test("leads with the verdict, which is the exit code, and fits the screen's width", async () => {
    const { code, stdout, stderr } = await run(".", ["first", ...files]);
    expect(stderr).toBe("");
    expect([0, 1]).toContain(code);
    expect(stdout).toMatch(
      code === 1 ? /^A LINK FAILS {3}\S/ : /^(LINKS HOLD|NOT ALL KNOWN) {3}\S/,
    );
    expect(stdout).toMatch(/^ {2}First to go, at a gust of \d+ mph, /m);
    for (const line of stdout.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    expect(stdout).not.toMatch(/undefined|NaN|Infinity|\[object|null| m\/s/);
  });

  test("as JSON is the same in any units, whole, and with its cautions", async () => {
    const [us, si] = await Promise.all(
      ["us", "si"].map((units) => run(".", ["first", ...files, "--json", "--units", units])),
    );
    expect(si).toEqual(us);
    const record = JSON.parse(us?.stdout ?? "");
    expect(record.program).toBe("hoopstay");
    expect(record.digest).toMatch(/^[0-9a-f]{64}$/);
    expect(us?.code).toBe(record.holds ? 0 : 1);
    expect(record.cautions.length).toBeGreaterThan(0);
    expect(record.notCheckedBeside).toContain("snow, ice");
    const gusts = record.links.map(
      (link: { worst: { check: { workingGust: number | null } } }) =>
        link.worst.check.workingGust ?? Number.POSITIVE_INFINITY,
    );
    expect(gusts).toEqual(gusts.toSorted((one: number, other: number) => one - other));
    for (const { first } of record.states) expect(first.link).toEqual(expect.any(String));
  });
});

describe("first --report", () => {
  test("writes the whole report with the chain and its working, one page", async () => {
    await inFolder(async (folder) => {
      const files = [fixture("houses/harrow-brook.yaml"), fixture("sites/hill-top.yaml")];
      const args = ["first", ...files, "--report", "first.html", "--units", "si"];
      const { stdout, stderr } = await run(folder, args);
      expect(stderr).toBe("");
      expect(stdout).toContain("Report: first.html");
      expect(readdirSync(folder)).toEqual(["first.html"]);
      const html = readFileSync(join(folder, "first.html"), "utf8");
      expect(unbalanced(html)).toEqual([]);
      expect(html).toContain('<section class="sheet" id="chain"');
      expect(html).toMatch(/aria-label="Working S1, Strength of /);
      expect(html).not.toMatch(/undefined|NaN|Infinity|\[object/);
    });
  });

  test("is never written over the house file", async () => {
    await inFolder(async (folder) => {
      writeFileSync(join(folder, "house.yaml"), soundHouse);
      writeFileSync(join(folder, "site.yaml"), soundSite);
      const args = ["first", "house.yaml", "site.yaml", "--report", "house.yaml"];
      const { code, stderr } = await run(folder, args);
      expect(code).toBe(2);
      expect(stderr).toContain("[report-unwritable]");
      expect(readFileSync(join(folder, "house.yaml"), "utf8")).toBe(soundHouse);
    });
  });

  test("is not written where an input is refused", async () => {
    await inFolder(async (folder) => {
      writeFileSync(join(folder, "house.yaml"), soundHouse);
      writeFileSync(join(folder, "site.yaml"), soundSite.replace(/^ {2}speed:.*$/m, "  speed: 12"));
      const args = ["first", "house.yaml", "site.yaml", "--report", "first.html"];
      const { code, stdout } = await run(folder, args);
      expect(code).toBe(2);
      expect(stdout).toBe("");
      expect(existsSync(join(folder, "first.html"))).toBe(false);
    });
  });
});

test("first --help has an example, and the units", async () => {
  const { code, stdout } = await run(".", ["first", "--help"]);
  expect(code).toBe(0);
  for (const said of ["hoopstay first fixtures/", "--units", "--json", "--report"])
    expect(stdout).toContain(said);
});

test("check says in plain words where strength is looked at", async () => {
  const files = [fixture("houses/harrow-brook.yaml"), fixture("sites/hill-top.yaml")];
  const { stdout } = await run(".", ["check", ...files]);
  expect(stdout.replace(/\s+/g, " ")).toContain("the frame's strength (see hoopstay first)");
});
