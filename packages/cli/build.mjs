import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, join } from "node:path";
import process from "node:process";
import { build } from "esbuild";
import { buildPage } from "../page/build.mjs";
import { noticesOf, packagesOf } from "./notices.mjs";

// Bundles the command into five files, so that a check reads what it needs only: the program with
// `check`, the other commands, the published values, the schemas, the report. Beside a bundle lies
// V8's compiled code of it, so that a start compiles nothing: launch.cjs runs the one with the other.
const here = import.meta.dirname;
const root = join(here, "../..");
const dist = join(here, "dist");
const { version } = JSON.parse(readFileSync(join(here, "package.json"), "utf8"));

const bundles = {
  program: join(here, "src/main.ts"),
  more: join(here, "src/commands/more.ts"),
  evidence: join(here, "src/commands/evidence.ts"),
  schema: join(here, "src/commands/schema.ts"),
  report: join(root, "packages/report/src/index.ts"),
};

/**
 * What is imported on demand stays in its own bundle. The command line's reader could start other
 * programs; this one never does, and what starts them is slow to load.
 */
const apart = {
  name: "apart",
  setup(plugin) {
    plugin.onResolve({ filter: /^node:child_process$/ }, ({ path }) => ({
      path,
      namespace: "none",
    }));
    plugin.onLoad({ filter: /./, namespace: "none" }, () => ({ contents: "" }));
    plugin.onResolve(
      { filter: /\/(more\.ts|evidence\.ts|schema\.ts|report)$/ },
      ({ kind, path }) =>
        kind === "dynamic-import"
          ? { path: `./${basename(path, ".ts")}.cjs`, external: true }
          : undefined,
    );
  },
};

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist, { recursive: true });
const { metafile } = await build({
  absWorkingDir: root,
  entryPoints: bundles,
  outdir: dist,
  outExtension: { ".js": ".cjs" },
  bundle: true,
  format: "cjs",
  platform: "node",
  target: "node20",
  minify: true,
  metafile: true,
  legalComments: "none",
  banner: { js: "(function (exports, require, module, __filename, __dirname) {" },
  footer: { js: "})" },
  supported: { "dynamic-import": false },
  define: { __VERSION__: JSON.stringify(version) },
  plugins: [apart],
});
// Signs in patterns are all that is left beyond ASCII; written out, a start reads one byte a letter.
const escaped = (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;
for (const name of Object.keys(bundles)) {
  const file = join(dist, `${name}.cjs`);
  writeFileSync(file, readFileSync(file, "utf8").replace(/[^\0-\x7f]/g, escaped));
}
writeFileSync(join(dist, "meta.json"), JSON.stringify(metafile));
const bundled = Object.values(metafile.outputs).flatMap(({ inputs }) =>
  Object.keys(inputs).filter((file) => inputs[file].bytesInOutput > 0),
);
const modules = bundled.map((file) => join(root, file));
writeFileSync(join(dist, "licences.txt"), noticesOf(packagesOf(modules)));
writeFileSync(join(dist, "package.json"), '{ "type": "commonjs" }\n');
cpSync(join(here, "launch.cjs"), join(dist, "hoopstay.js"));

// The published values ship with the command, packed into one file that `evidence` alone reads.
const fixtures = join(root, "fixtures");
const published = ["published", "statics", "independent"].flatMap((folder) =>
  readdirSync(join(fixtures, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(yaml|json)$/.test(name))
    .sort()
    .map((name) => [
      `${folder}/${name.replaceAll("\\", "/")}`,
      readFileSync(join(fixtures, folder, name), "utf8"),
    ]),
);
writeFileSync(join(dist, "published.json"), JSON.stringify(Object.fromEntries(published)));

// The schemas ship with the command; the freshness check keeps the committed ones true.
const schemas = join(root, "packages/house/schema");
if (existsSync(schemas)) cpSync(schemas, join(dist, "schemas"), { recursive: true });

// The offline page ships with it too.
const page = await buildPage(join(dist, "page.html"));

const shipped = packagesOf([...modules, ...page]);
writeFileSync(join(dist, "shipped.json"), JSON.stringify(shipped.map(({ text, ...rest }) => rest)));

const example = ["houses/harrow-brook.yaml", "sites/sheltered-paddock.yaml"].map((file) =>
  join(root, "fixtures", file),
);
const warm = spawnSync(process.execPath, [join(here, "warm.cjs"), ...example], {
  stdio: ["ignore", "ignore", "inherit"],
});
if (warm.status !== 0) process.exitCode = 1;
