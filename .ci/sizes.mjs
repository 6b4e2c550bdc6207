import { readFileSync, statSync } from "node:fs";
import { dirname } from "node:path";
import process from "node:process";

// Ceilings for what Node reads, in kB of minified code: at start, and in addition for each part
// that is loaded on demand.
const ceilings = {
  "packages/cli/hoopstay.js": [
    900,
    "files, checks and the answer: parsed at every start, within a tenth of a second",
  ],
  "packages/report/src/index.ts": [450, "formula typesetting is most of it; only --report pays"],
  "packages/core/src/formula/second-evaluation.ts": [
    250,
    "an evaluator with the few functions used, not the whole library",
  ],
};

process.chdir(dirname(import.meta.dirname));
const { outputs } = JSON.parse(readFileSync("packages/cli/dist/meta.json", "utf8"));

/** The files that come along when this one is imported. */
function loaded(file, seen = new Set()) {
  if (seen.has(file) || !outputs[file]) return seen;
  seen.add(file);
  for (const { path, kind } of outputs[file].imports)
    if (kind === "import-statement") loaded(path, seen);
  return seen;
}

const parts = new Map(
  Object.entries(outputs).flatMap(([file, { entryPoint }]) =>
    entryPoint ? [[entryPoint, file]] : [],
  ),
);
const atStart = loaded("packages/cli/dist/hoopstay.js");
let good = true;
for (const [part, file] of parts) {
  const files = [...loaded(file)].filter(
    (one) => file.endsWith("/hoopstay.js") || !atStart.has(one),
  );
  const size = files.reduce((sum, one) => sum + statSync(one).size, 0) / 1000;
  const [ceiling, reason] = ceilings[part] ?? [0, "no ceiling is set: add one"];
  const holds = size <= ceiling;
  good &&= holds;
  console.log(
    `${holds ? "ok  " : "OVER"} ${size.toFixed(0)} kB of ${ceiling} kB  ${part} (${reason})`,
  );
}
for (const part of Object.keys(ceilings))
  if (!parts.has(part)) {
    good = false;
    console.log(`GONE ${part}: no longer a part of its own`);
  }
process.exit(good ? 0 : 1);
