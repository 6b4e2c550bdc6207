import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { gzipSync } from "node:zlib";

// Ceilings for the built program, in kB, with the reason of each.
const ceilings = {
  "program.cjs": [518, "check and the command line: read at every start"],
  "program.compiled": [1090, "V8's code of what the main job runs: read at every start"],
  "report.cjs": [285, "the pages, read on demand; the second evaluation is half"],
  "report.compiled": [440, "V8's code of what the report runs"],
  "more.cjs": [925, "the other commands, read on demand"],
  "schema.cjs": [90, "what makes the schemas, read by `schema` alone"],
  "evidence.cjs": [
    1000,
    "the published values' computations, read by `evidence` alone: all packages",
  ],
  "published.json": [1100, "the published values themselves, read by `evidence` alone"],
  "hoopstay.js": [2, "the launcher: nothing but reading them"],
  "page.html": [
    632,
    "the offline page as it is sent to a phone; the engine is packed in it, with the working of every number",
  ],
  "page.html.gz": [
    423,
    "the same as a server sends it: two thirds are our own packages, the load path the most of them",
  ],
};

const sizeOf = (file) =>
  file.endsWith(".gz")
    ? gzipSync(readFileSync(join(dist, file.slice(0, -3))), { level: 9 }).length
    : statSync(join(dist, file)).size;

const dist = join(import.meta.dirname, "../packages/cli/dist");
let good = true;
for (const [file, [ceiling, reason]] of Object.entries(ceilings)) {
  const size = sizeOf(file) / 1000;
  const holds = size <= ceiling;
  good &&= holds;
  console.log(
    `${holds ? "ok  " : "OVER"} ${size.toFixed(0)} kB of ${ceiling} kB  ${file} (${reason})`,
  );
}
process.exit(good ? 0 : 1);
