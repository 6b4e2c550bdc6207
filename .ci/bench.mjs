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

/** What one benchmark tells of its ratios, and whether its own bounds were missed. */
function measure(name) {
  const [outfile, told] = [join(made, `${name}.cjs`), join(made, "told")];
  buildSync({
    entryPoints: [join(bench, `${name}.ts`)],
    outfile,
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    external: ["playwright-core"],
  });
  rmSync(told, { force: true });
  const { status } = spawnSync(process.execPath, [outfile, join(root, "fixtures"), told], {
    stdio: "inherit",
  });
  const lines = existsSync(told) ? readFileSync(told, "utf8").trim().split("\n") : [];
  return { missed: status !== 0, ratios: lines.map((line) => JSON.parse(line)) };
}

const before = existsSync(committed) ? JSON.parse(readFileSync(committed, "utf8")) : { ratios: [] };
const known = new Map(before.ratios.map((one) => [one.name, one]));

/** How many times worse than the committed ratio; what is not committed is not good either. */
function worse({ name, ratio, better }) {
  const was = known.get(name)?.ratio;
  return better === "less" ? ratio / was : was / ratio;
}
const slow = (one) => !(worse(one) <= one.room);

/** What else the machine does only slows a run: a slow one is run again, and the best of each ratio counts. */
function bestOf(name) {
  let { missed, ratios } = measure(name);
  for (let more = 0; more < 2 && (missed || ratios.some(slow)); more += 1) {
    console.log("  slow: measured again");
    const again = measure(name);
    missed &&= again.missed;
    const best = new Map(ratios.map((one) => [one.name, one]));
    for (const one of again.ratios) {
      const kept = best.get(one.name);
      if (kept === undefined || worse(one) < worse(kept)) best.set(one.name, one);
    }
    ratios = [...best.values()];
  }
  if (missed) process.exitCode = 1;
  return ratios;
}

const measured = names.flatMap(bestOf);
rmSync(made, { recursive: true });

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
for (const one of measured) {
  if (slow(one)) process.exitCode = 1;
  const { name, ratio, better, room } = one;
  console.log(
    `${slow(one) ? "SLOW" : "ok  "} ${name}: ${ratio.toPrecision(3)}, committed ${known.get(name)?.ratio ?? "none"} (${better} is better, room ${room})`,
  );
}
