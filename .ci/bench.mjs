import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";

// Runs the benchmarks of tests/bench, bundled as the command is; a name picks one.
const root = join(import.meta.dirname, "..");
const bench = join(root, "tests/bench");
const { buildSync } = createRequire(join(root, "packages/cli/package.json"))("esbuild");
const benches = ["whole-house", "count-search", "design-search"].filter(
  (name) => !process.argv[2] || name === process.argv[2],
);
const made = mkdtempSync(join(tmpdir(), "bench-"));
for (const name of benches) {
  const outfile = join(made, `${name}.cjs`);
  buildSync({
    entryPoints: [join(bench, `${name}.ts`)],
    outfile,
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
  });
  const { status } = spawnSync(process.execPath, [outfile, join(root, "fixtures")], {
    stdio: "inherit",
  });
  if (status !== 0) process.exitCode = 1;
}
rmSync(made, { recursive: true });
