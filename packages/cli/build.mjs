import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { build } from "esbuild";

// Bundles the command into dist/program.cjs, and keeps V8's compiled code of it beside it, so that
// a start compiles nothing: launch.cjs runs the one with the other. What is imported on demand
// (report, second evaluation) lies in the same file and is not touched before it is asked for.
const here = import.meta.dirname;
const root = join(here, "../..");
const dist = join(here, "dist");
const { version } = JSON.parse(readFileSync(join(here, "package.json"), "utf8"));

mkdirSync(dist, { recursive: true });
// Compiled code of another bundle must never run: it goes first and comes last.
rmSync(join(dist, "program.compiled"), { force: true });
const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: [join(here, "src/main.ts")],
  outfile: join(dist, "program.cjs"),
  bundle: true,
  format: "cjs",
  platform: "node",
  target: "node20",
  minify: true,
  metafile: true,
  legalComments: "none",
  define: { __VERSION__: JSON.stringify(version) },
});
writeFileSync(join(dist, "meta.json"), JSON.stringify(metafile));
writeFileSync(join(dist, "package.json"), '{ "type": "commonjs" }\n');
cpSync(join(here, "launch.cjs"), join(dist, "hoopstay.js"));

// The schemas ship with the command; the freshness check keeps the committed ones true.
const schemas = join(root, "packages/house/schema");
if (existsSync(schemas)) cpSync(schemas, join(dist, "schemas"), { recursive: true });

const example = ["houses/harrow-brook.yaml", "sites/sheltered-paddock.yaml"].map((file) =>
  join(root, "fixtures", file),
);
const warm = spawnSync(process.execPath, [join(here, "warm.cjs"), ...example], {
  stdio: ["ignore", "ignore", "inherit"],
});
if (warm.status !== 0) process.exitCode = 1;
