import { cpSync, existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

// Bundles the command into dist/. What is imported on demand (report, second evaluation) becomes a
// chunk of its own. meta.json tells the size check what each chunk holds.
const here = import.meta.dirname;
const root = join(here, "../..");
const dist = join(here, "dist");
const { version } = JSON.parse(readFileSync(join(here, "package.json"), "utf8"));

rmSync(dist, { recursive: true, force: true });
const { metafile } = await build({
  absWorkingDir: root,
  // An entry of its own, so that only the command starts with the hashbang.
  stdin: {
    contents: '#!/usr/bin/env node\nimport "./src/main.ts";\n',
    resolveDir: here,
    sourcefile: "hoopstay.js",
  },
  outdir: dist,
  entryNames: "hoopstay",
  chunkNames: "[name]-[hash]",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  minify: true,
  metafile: true,
  legalComments: "none",
  define: { __VERSION__: JSON.stringify(version) },
  // commander is CommonJS and asks for Node's modules by require.
  banner: {
    js: 'import { createRequire as _require } from "node:module"; const require = _require(import.meta.url);',
  },
});
writeFileSync(join(dist, "meta.json"), JSON.stringify(metafile));

// The schemas ship with the command; the freshness check keeps the committed ones true.
const schemas = join(root, "packages/house/schema");
if (existsSync(schemas)) cpSync(schemas, join(dist, "schemas"), { recursive: true });
