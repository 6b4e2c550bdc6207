import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, isAbsolute } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/** What a bundle is called with: the switch of the mutants, and where it is told what was reached. */
const parameters = ["require", "exports", "stryMutAct_9fa48", "timesReached"];

/**
 * One function text that holds tests and packages; each test file is read when it is asked for.
 * Libraries stay outside, so that they are read once and not for every mutant. It either counts what
 * is reached or lets mutants be switched on.
 */
export async function bundle(root, tests, sources, told) {
  const entry = tests.map((file) => `${JSON.stringify(file)}: () => require("./${file}"),`);
  const made = await build({
    stdin: { contents: `exports.files = {${entry.join("\n")}};`, resolveDir: root },
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    target: "node20",
    logLevel: "error",
    minifySyntax: true,
    pure: ["stryCov_9fa48"],
    plugins: [librariesOutside, placesKnown(told ? counting(sources) : sources)],
  });
  return `(function (${parameters.join(", ")}) {\n${made.outputFiles[0].text}\n})`;
}

/** Sources without switches, in which each mutant's place adds one to its count. */
function counting(sources) {
  const counted = (_, ids) => `(${ids.replaceAll(/"(\d+)"/g, "timesReached[$1]++")})`;
  const plain = (text) =>
    text
      .replaceAll(/stryMutAct_9fa48\("\d+"\)/g, "false")
      .replaceAll(/stryCov_9fa48\(([^)]*)\)/g, counted);
  return new Map([...sources].map(([path, text]) => [path, plain(text)]));
}

const librariesOutside = {
  name: "libraries outside",
  setup(building) {
    building.onResolve({ filter: /^[^.]/ }, ({ path, importer }) => {
      if (path === "vitest") return { path, external: true };
      if (path.startsWith("@hoopstay/") || isAbsolute(path)) return undefined;
      return { path: createRequire(importer).resolve(path), external: true };
    });
  },
};

const placesKnown = (sources) => ({
  name: "places known",
  setup(building) {
    building.onLoad({ filter: /\.ts$/ }, ({ path }) => {
      const contents = (sources.get(path) ?? readFileSync(path, "utf8"))
        .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
        .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
      return { contents, loader: "ts" };
    });
  },
});
