import { execFile, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import process from "node:process";

const root = resolve(import.meta.dirname, "../..");
export const built = join(root, "packages/cli/dist/hoopstay.js");

/** Builds the program, where that has not been done. */
export function buildOnce(): void {
  if (existsSync(built)) return;
  const script = join(root, "packages/cli/build.mjs");
  const { status, stderr } = spawnSync(process.execPath, [script], { encoding: "utf8" });
  if (status !== 0) throw new Error(`the program does not build: ${stderr}`);
}

export interface Ran {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the built program in a folder, as a user would. */
export function run(
  folder: string,
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Ran> {
  return new Promise((done) => {
    const options = { cwd: folder, env: { ...process.env, ...env }, maxBuffer: 1e8 };
    const child = execFile(process.execPath, [built, ...args], options, (_, stdout, stderr) => {
      done({ code: child.exitCode ?? -1, stdout, stderr });
    });
  });
}

/** Does something in a new empty folder, which is gone afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), "hoopstay-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export const fixture = (path: string): string => join(root, "fixtures", path);
export const readFixture = (path: string): string => readFileSync(fixture(path), "utf8");

export const soundHouse = readFixture("houses/harrow-brook.yaml");
export const soundSite = readFixture("sites/sheltered-paddock.yaml");
