import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { dirname } from "node:path";
import process from "node:process";

// Installs what pnpm-lock.yaml asks for, when that is not what is installed, and builds the command.
process.chdir(dirname(import.meta.dirname));

const read = (file) => (existsSync(file) ? readFileSync(file, "utf8") : "");
const installed = () => read("pnpm-lock.yaml") === read("node_modules/.pnpm/lock.yaml");

function run(what, command) {
  const { status, stdout, stderr } = spawnSync(command, { shell: true, encoding: "utf8" });
  if (status === 0) return;
  console.error(`${stdout}${stderr}setup: ${what} failed`);
  process.exit(1);
}

const start = performance.now();
if (!installed()) run("install", "npx --yes pnpm@10.34.9 install --frozen-lockfile");
run("build", "node packages/cli/build.mjs");
console.error(`setup: ready in ${((performance.now() - start) / 1000).toFixed(1)} s`);
