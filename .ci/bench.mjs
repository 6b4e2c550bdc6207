import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { cpus } from "node:os";
import { join } from "node:path";
import process from "node:process";

// Runs the benchmarks of tests/bench, bundled as the command is, and holds their ratios to the committed
// ones with room for a busy machine. A name picks one; --write keeps what was measured.
const root = join(import.meta.dirname, "..");
const bench = join(root, "tests/bench");
const committed = join(bench, "ratios.json");
const { buildSync } = createRequire(join(root, "packages/cli/package.json"))("esbuild");
const write = process.argv.includes("--write");
const [only] = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const names = [
  "cold-start",
  "whole-house",
  "hoop-solve",
  "count-search",
  "design-search",
  "page-response",
].filter((name) => only === undefined || name === only);

// Within the workspace of the tests, where their libraries are found.
const made = mkdtempSync(join(root, "tests/node_modules/bench-"));
const told = join(made, "told");
for (const name of names) {
  const outfile = join(made, `${name}.cjs`);
  buildSync({
    entryPoints: [join(bench, `${name}.ts`)],
    outfile,
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    external: ["playwright-core"],
  });
  const { status } = spawnSync(process.execPath, [outfile, join(root, "fixtures"), told], {
    stdio: "inherit",
  });
  if (status !== 0) process.exitCode = 1;
}
const measured = existsSync(told)
  ? readFileSync(told, "utf8").trim().split("\n").map(JSON.parse)
  : [];
rmSync(made, { recursive: true });

const before = existsSync(committed) ? JSON.parse(readFileSync(committed, "utf8")) : { ratios: [] };
const known = new Map(before.ratios.map((one) => [one.name, one]));
if (write) {
  for (const { ratio, ...one } of measured) {
    known.set(one.name, { ...one, ratio: Number(ratio.toPrecision(3)) });
  }
  const [{ model }] = cpus();
  const date = new Date().toISOString().slice(0, 10);
  const ratios = [...known.values()];
  const record = { date, processor: model, node: process.version, ratios };
  writeFileSync(committed, `${JSON.stringify(record, null, 2)}\n`);
}
for (const { name, ratio, better, room } of measured) {
  const was = known.get(name)?.ratio;
  const worse = better === "less" ? ratio / was : was / ratio;
  const good = worse <= room;
  if (!good) process.exitCode = 1;
  console.log(
    `${good ? "ok  " : "SLOW"} ${name}: ${ratio.toPrecision(3)}, committed ${was ?? "none"} (${better} is better, room ${room})`,
  );
}
