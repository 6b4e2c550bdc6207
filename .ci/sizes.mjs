import { statSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";

// Ceilings for the built program, in kB, with the reason of each.
const ceilings = {
  "program.cjs": [550, "check and the command line: read at every start"],
  "program.compiled": [1100, "V8's code of what the main job runs: read at every start"],
  "report.cjs": [285, "the pages, read on demand; the second evaluation is half"],
  "report.compiled": [440, "V8's code of what the report runs"],
  "more.cjs": [930, "the other commands, read on demand"],
  "hoopstay.js": [2, "the launcher: nothing but reading them"],
};

const dist = join(import.meta.dirname, "../packages/cli/dist");
let good = true;
for (const [file, [ceiling, reason]] of Object.entries(ceilings)) {
  const size = statSync(join(dist, file)).size / 1000;
  const holds = size <= ceiling;
  good &&= holds;
  console.log(
    `${holds ? "ok  " : "OVER"} ${size.toFixed(0)} kB of ${ceiling} kB  ${file} (${reason})`,
  );
}
process.exit(good ? 0 : 1);
