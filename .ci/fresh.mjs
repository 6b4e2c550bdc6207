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

const totals = "packages/report/src/sheet/evidence-totals.json";

/** The verification sheet, and its totals, which every report names: they are built into it. */
function evidence() {
  const made = join(folder, "verification-sheet.html");
  const record = JSON.parse(hoopstay(["evidence", "--json", "--to", made], [0]));
  return [`${JSON.stringify(record.totals, null, 2)}\n`, readFileSync(made, "utf8")];
}
let evidenceMade;
const evidenceOnce = () => (evidenceMade ??= evidence());

/** Reports are made by a program that has the totals as they are now. */
function rebuilt(text) {
  const committed = existsSync(totals) ? readFileSync(totals, "utf8") : undefined;
  if (!write || committed === text) return text;
  writeFileSync(totals, text);
  const { status, stderr } = spawnSync(process.execPath, ["packages/cli/build.mjs"], {
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr.trim());
  return text;
}

const generated = [
  [totals, () => rebuilt(evidenceOnce()[0])],
  ["reports/verification-sheet.html", () => evidenceOnce()[1]],
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
