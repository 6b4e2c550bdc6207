import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";

// Runs the tests; arguments go on to vitest.
const tests = join(import.meta.dirname, "../tests");
const vitest = join(tests, "node_modules/vitest/vitest.mjs");
const args = [vitest, "run", "--config", join(tests, "vitest.config.ts"), ...process.argv.slice(2)];
process.exit(spawnSync(process.execPath, args, { cwd: tests, stdio: "inherit" }).status ?? 1);
