import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Result, resultSchema } from "@hoopstay/house";
import { beforeAll, describe, expect, test } from "vitest";
import { buildOnce, fixture, inFolder, run, soundHouse, soundSite } from "./program.ts";
import { keysOf, leaves, reordered, typedInMetric } from "./same-house.ts";

const examples = [
  ["harrow-brook", "sheltered-paddock"],
  ["harrow-brook", "hill-top"],
  ["lind-meadow", "lind-meadow-pasture"],
] as const;

const filesOf = (house: string, site: string): [string, string] => [
  fixture(`houses/${house}.yaml`),
  fixture(`sites/${site}.yaml`),
];

beforeAll(buildOnce);

describe.each(examples)("%s at %s", (house, site) => {
  const check = ["check", ...filesOf(house, site)];

  test.each(["us", "si"])(
    "the answer in %s leads with the verdict, on one screen",
    async (units) => {
      await inFolder(async (folder) => {
        const { code, stdout, stderr } = await run(folder, [...check, "--units", units]);
        expect(stderr).toBe("");
        expect([0, 1]).toContain(code);
        expect(stdout).toMatch(code === 0 ? /^HOLDS {3}\S/ : /^DOES NOT HOLD {3}\S/);
        const lines = stdout.trimEnd().split("\n");
        expect(lines.length).toBeLessThanOrEqual(24);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
        expect(stdout).not.toMatch(/undefined|NaN|Infinity|\[object|null/);
        expect(stdout).not.toMatch(units === "us" ? / m\/s/ : / mph/);
      });
    },
  );

  test("the JSON is as its schema says, and every single case is checked", async () => {
    await inFolder(async (folder) => {
      const [plain, json, inSi] = await Promise.all([
        run(folder, check),
        run(folder, [...check, "--json"]),
        run(folder, [...check, "--json", "--units", "si"]),
      ]);
      const result: Result = resultSchema().parse(JSON.parse(json.stdout));
      expect(inSi).toEqual(json);
      expect(json.code).toBe(plain.code);
      expect(json.code).toBe(result.holds ? 0 : 1);
      const cases = result.load_sets.flatMap((set) => set.cases);
      expect(new Set(cases.map(({ load_case: number }) => number))).toEqual(new Set([1, 2, 3, 4]));
      expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
      const every = result.weights.map(({ hold }) => hold);
      for (const { load_case: number, held } of cases) {
        const single = number === 1 || number === 3;
        expect(new Set(held.map(({ hold }) => hold))).toEqual(new Set(single ? every : []));
        for (const { checks } of held) expect(checks.length).toBe(6);
      }
      const ratios = result.states.flatMap(({ governing }) =>
        governing
          .filter(({ combination }) => combination === result.combination)
          .filter(({ hold }) => hold === every.at(-1))
          .flatMap(({ checks }) => checks.map(({ ratio }) => ratio)),
      );
      expect(ratios.length).toBeGreaterThan(0);
      if (result.holds) expect(ratios.every((ratio) => ratio !== null && ratio <= 1)).toBe(true);
    });
  });
});

describe("the answer depends on the house and the site alone", () => {
  async function answers(folder: string) {
    const check = ["check", "house.yaml", "site.yaml"];
    const told = await run(folder, [...check, "--report", "out.html"]);
    const json = await run(folder, [...check, "--json"]);
    const report = readFileSync(join(folder, "out.html"), "utf8");
    return { told, report, json, result: JSON.parse(json.stdout) as Result };
  }
  const laid = (change: (text: string) => string) =>
    inFolder((folder) => {
      writeFileSync(join(folder, "house.yaml"), change(soundHouse));
      writeFileSync(join(folder, "site.yaml"), change(soundSite));
      return answers(folder);
    });
  const asTyped = (text: string): string => text;

  test("not on the order of the keys", async () => {
    expect(keysOf(reordered(soundHouse))).not.toEqual(keysOf(soundHouse));
    const [one, other] = [await laid(asTyped), await laid(reordered)];
    expect(other.told).toEqual(one.told);
    expect({ ...other.result, digest: "" }).toEqual({ ...one.result, digest: "" });
  });

  test("not on the units the sizes were typed in", async () => {
    expect(typedInMetric(soundHouse)).not.toMatch(/\d (ft|in|lb|mph|mil)\b/);
    const [one, other] = [await laid(asTyped), await laid(typedInMetric)];
    expect(other.told.code).toBe(one.told.code);
    const found = new Map(leaves(other.result));
    const expected = leaves(one.result).filter(([path]) => path !== "/digest");
    expect(found.size).toBe(expected.length + 1);
    for (const [path, value] of expected) {
      const mine = found.get(path);
      if (typeof value !== "number") expect([path, mine]).toEqual([path, value]);
      else if (!(Math.abs((mine as number) - value) <= 1e-6 * Math.max(1, Math.abs(value)))) {
        expect([path, mine]).toEqual([path, value]);
      }
    }
  });
});
