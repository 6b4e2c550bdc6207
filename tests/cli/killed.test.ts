import { spawn } from "node:child_process";
import { readdirSync, readFileSync, rmSync, watch, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { beforeAll, expect, test } from "vitest";
import { Random } from "../fuzz/random.ts";
import { buildOnce, built, fixture, inFolder } from "./program.ts";

/** Kills of a run; KILLS=300 for the long one. */
const kills = Number(process.env.KILLS ?? 40);
const seed = 9;
const old = "the page of last year\n";
const target = "page.html";

const files = [fixture("houses/lind-meadow.yaml"), fixture("sites/lind-meadow-pasture.yaml")];
const commands: readonly (readonly string[])[] = [
  ["hold", ...files, "--report", target],
  ["page", "--to", target],
  ["hold", ...files, "--report", target],
  ["card", ...files, "--to", target],
  ["ladder", ...files, "--to", target],
];

interface Killed {
  readonly page: string;
  readonly beside: readonly string[];
  readonly milliseconds: number;
}

/** When a process is killed: after so many milliseconds, once its new file appears, or never. */
type When = number | "writing" | "never";

/** Runs a command on a folder with the old page in it, and kills it with SIGKILL. */
function runKilled(folder: string, args: readonly string[], when: When): Promise<Killed> {
  writeFileSync(join(folder, target), old);
  return new Promise((done) => {
    const start = performance.now();
    const child = spawn(process.execPath, [built, ...args], { cwd: folder, stdio: "ignore" });
    const kill = (): void => {
      child.kill("SIGKILL");
    };
    const timer = typeof when === "number" ? setTimeout(kill, when) : undefined;
    const watcher = when === "writing" ? watch(folder, kill) : undefined;
    child.on("close", () => {
      clearTimeout(timer);
      watcher?.close();
      const page = readFileSync(join(folder, target), "utf8");
      const beside = readdirSync(folder).filter((name) => name !== target);
      done({ page, beside, milliseconds: performance.now() - start });
    });
  });
}

beforeAll(buildOnce);

test(`killed ${kills} times (seed ${seed}), a page is the old one or the whole new one`, async () => {
  const random = new Random(seed, 0);
  const tally = { old: 0, whole: 0, leftOver: 0 };
  await inFolder(async (folder) => {
    const whole: Killed[] = [];
    for (const args of commands) whole.push(await runKilled(folder, args, "never"));
    for (let place = 0; place < kills; place += 1) {
      const which = place % commands.length;
      const { page: made, milliseconds } = whole[which] as Killed;
      expect(made.length).toBeGreaterThan(old.length);
      const args = commands[which] as string[];
      const when = random.chance(0.5) ? "writing" : 1.1 * milliseconds * random.next();
      const { page, beside } = await runKilled(folder, args, when);
      expect(page === old || page === made, `${args[0]} killed at ${when}`).toBe(true);
      tally[page === old ? "old" : "whole"] += 1;
      // What is left over says whose it is, and the next run takes its place.
      expect([[], [`${target}.part`]]).toContainEqual(beside);
      if (beside.length === 0) continue;
      tally.leftOver += 1;
      const after = await runKilled(folder, args, "never");
      expect(after.page === made).toBe(true);
      expect(after.beside).toEqual([]);
      rmSync(join(folder, `${target}.part`), { force: true });
    }
  });
  console.log(
    `${kills} kills (seed ${seed}): the old page ${tally.old} times, the new one ${tally.whole}; left over beside it ${tally.leftOver} times`,
  );
  expect(tally.old).toBeGreaterThan(0);
}, 1_800_000);
