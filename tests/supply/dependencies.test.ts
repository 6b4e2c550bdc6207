import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";

const root = resolve(import.meta.dirname, "../..");
const read = (file: string): string => readFileSync(join(root, file), "utf8");

interface Locked {
  readonly resolution: Readonly<Record<string, string>>;
}
const lock = parse(read("pnpm-lock.yaml")) as { readonly packages: Record<string, Locked> };
const locked = Object.entries(lock.packages);

test("every locked package is told by the digest of its bytes, and by no address", () => {
  expect(locked.length).toBeGreaterThan(100);
  const odd = locked.filter(([, { resolution }]) => {
    const { integrity = "", ...rest } = resolution;
    return !/^sha512-[A-Za-z0-9+/]{86}==$/.test(integrity) || Object.keys(rest).length > 0;
  });
  expect(odd.map(([name]) => name)).toEqual([]);
  expect(read("pnpm-lock.yaml")).not.toMatch(/\w:\/\/|\btarball:|\.tgz\b|\bgit@/);
});

test("no dependency runs a script when it is installed", () => {
  const settings = parse(read("pnpm-workspace.yaml")) as Record<string, unknown>;
  expect(settings.ignoreScripts).toBe(true);
  const allowing = /onlyBuilt|neverBuilt|dangerously|registry/i;
  expect(Object.keys(settings).filter((key) => allowing.test(key))).toEqual([]);
  expect(existsSync(join(root, ".npmrc")) ? read(".npmrc") : "").toBe("");
});

describe("what the workspace asks for", () => {
  const manifests = [
    "package.json",
    "tests/package.json",
    ...readdirSync(join(root, "packages")).map((name) => `packages/${name}/package.json`),
  ];
  test.each(manifests)("%s names exact versions, and no script of its installing", (file) => {
    const { dependencies, devDependencies, scripts } = JSON.parse(read(file));
    for (const version of Object.values({ ...dependencies, ...devDependencies }))
      expect(version).toMatch(/^(workspace:\*|\d+\.\d+\.\d+)$/);
    expect(Object.keys(scripts ?? {}).filter((one) => /install|prepare/.test(one))).toEqual([]);
  });
});
