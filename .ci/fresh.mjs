import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import process from "node:process";

// Makes every generated file again and compares it with the committed one; --write replaces it.
process.chdir(dirname(import.meta.dirname));
const write = process.argv.includes("--write");
const folder = mkdtempSync(join(tmpdir(), "fresh-"));
const reports = JSON.parse(readFileSync(".ci/reports.json", "utf8"));

function hoopstay(args, accepted) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["packages/cli/dist/hoopstay.js", ...args],
    { encoding: "utf8", maxBuffer: 1e8 },
  );
  if (!accepted.includes(status)) throw new Error(`exit ${status}\n${stdout}${stderr}`.trim());
  return stdout;
}

/** A house that does not hold (exit 1) has a report too. */
function report({ house, site, report, units }) {
  const made = join(folder, basename(report));
  hoopstay(["hold", house, site, "--units", units, "--report", made], [0, 1]);
  return readFileSync(made, "utf8");
}

const generated = [
  ...reports.map((entry) => [entry.report, () => report(entry)]),
  ...["house", "site", "result"].map((name) => [
    `packages/house/schema/${name}.schema.json`,
    () => hoopstay(["schema", name], [0]),
  ]),
];

function state([file, make]) {
  try {
    const text = make();
    const committed = existsSync(file) ? readFileSync(file, "utf8") : undefined;
    if (committed === text) return "fresh";
    if (!write) return committed === undefined ? "missing" : "stale";
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
    return "written";
  } catch (error) {
    return `failed: ${error.message}`;
  }
}

const states = generated.map((entry) => [entry[0], state(entry)]);
const known = new Set(generated.map(([file]) => file));
for (const name of existsSync("reports") ? readdirSync("reports") : [])
  if (!known.has(`reports/${name}`))
    states.push([`reports/${name}`, "not listed in .ci/reports.json"]);
rmSync(folder, { recursive: true });

for (const [file, text] of states) console.log(`${file}: ${text}`);
const good = states.every(([, text]) => text === "fresh" || text === "written");
if (!good) console.log("`npm run fresh` writes the generated files again.");
process.exit(good ? 0 : 1);
