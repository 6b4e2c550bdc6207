import { statSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";

// Ceilings for the built program, in kB, with the reason of each.
const ceilings = {
  "program.cjs": [1450, "everything in one file; the report's typesetting is more than a third"],
  "program.compiled": [
    2450,
    "V8's code of what the main job and its report run: read at every start",
  ],
  "hoopstay.js": [2, "the launcher: nothing but reading the two"],
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
