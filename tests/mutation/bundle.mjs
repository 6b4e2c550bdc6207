import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, isAbsolute } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/** What a bundle is called with: the switch of the mutants, and where it is told what was reached. */
const parameters = ["require", "exports", "stryMutAct_9fa48", "stryCov_9fa48"];

/**
 * One function text that holds tests and packages; each test file is read when it is asked for.
 * Libraries stay outside, so that they are read once and not for every mutant. Telling what is
 * reached is left out where nobody listens.
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
    ...(told ? {} : { minifySyntax: true, pure: [parameters[3]] }),
    plugins: [librariesOutside, placesKnown(sources)],
  });
  return `(function (${parameters.join(", ")}) {\n${made.outputFiles[0].text}\n})`;
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
