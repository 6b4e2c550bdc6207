import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import { createInterface } from "node:readline";
import { parseArgs } from "node:util";

// Garbled house and site files through the program's own commands, in processes of their own, so
// that one that hangs can be ended. tests/fuzz says what is asked of each.
const { values } = parseArgs({
  options: {
    runs: { type: "string", default: "5000" },
    seed: { type: "string", default: "20261130" },
    input: { type: "string" },
    failures: { type: "string", default: join(tmpdir(), "hoopstay-fuzz") },
    processes: { type: "string", default: "2" },
  },
});
const root = join(import.meta.dirname, "..");
const seed = Number(values.seed);
const runs = values.input === undefined ? Number(values.runs) : Number(values.input) + 1;
const processes = values.input === undefined ? Number(values.processes) : 1;

/** An input that gives no sign for so long hangs, ms: the answer alone has a second of CPU time. */
const silence = 300_000;

const made = mkdtempSync(join(tmpdir(), "fuzz-build-"));
const outfile = join(made, "fuzz.mjs");
createRequire(join(root, "packages/cli/package.json"))("esbuild").buildSync({
  entryPoints: [join(root, "tests/fuzz/fuzz-process.ts")],
  outfile,
  bundle: true,
  format: "esm",
  platform: "node",
  target: "node20",
  logLevel: "warning",
  define: { __VERSION__: '"fuzz"' },
  banner: {
    js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);',
  },
});

const start = Date.now();
let [tried, answered, deep, faults, longest, total, searches] = [0, 0, 0, 0, 0, 0, 0];
const codes = new Map();
const beside = new Map();
const formOnly = /^(yaml-|file-|key-duplicate$|aliases-)/;
const add = (tally, key) => tally.set(key, (tally.get(key) ?? 0) + 1);
const right = (count) => String(count).padStart(9);

function take({ place, codes: found = [], beside: command, seconds = 0, ...more }) {
  const { besideSeconds = 0, searched, fault } = more;
  if (searched) searches += 1;
  tried += 1;
  total += seconds;
  longest = Math.max(longest, seconds);
  for (const code of found) add(codes, code);
  if (found.length === 0) answered += 1;
  else if (found.some((code) => !formOnly.test(code))) deep += 1;
  if (command) {
    const { count, most } = beside.get(command) ?? { count: 0, most: 0 };
    beside.set(command, { count: count + 1, most: Math.max(most, besideSeconds) });
  }
  if (fault) {
    faults += 1;
    console.log(`input ${place}: ${fault.split("\n").slice(0, 4).join("\n  ")}`);
  }
  if (tried % 10_000 === 0) console.log(`${tried} of ${runs}, ${faults} faults`);
}

/** Ended early, it tells what it has tried. */
let ended = false;
const running = new Set();
for (const signal of ["SIGINT", "SIGTERM"]) {
  process.once(signal, () => {
    ended = true;
    for (const child of running) child.kill("SIGKILL");
  });
}

/** Tries every so-manieth input from one on; begins anew behind an input that hangs or ends it. */
function runFrom(first, step) {
  return new Promise((done) => {
    const args = [outfile, root, values.failures, seed, first, runs, step].map(String);
    const child = spawn(process.execPath, args, { stdio: ["ignore", "pipe", "inherit"] });
    running.add(child);
    let place = first - step;
    let open = false;
    let timer;
    const watch = () => {
      clearTimeout(timer);
      timer = setTimeout(() => child.kill("SIGKILL"), silence);
    };
    watch();
    const lines = createInterface({ input: child.stdout });
    lines.on("line", (line) => {
      watch();
      const said = JSON.parse(line);
      if (said.begins !== undefined) [place, open] = [said.begins, true];
      else {
        open = false;
        take(said);
      }
    });
    lines.on("close", () => {
      clearTimeout(timer);
      running.delete(child);
      if (ended || place < first) return done();
      if (open)
        take({ place, fault: `gave no sign for ${silence / 1000} s, or ended the process` });
      return place + step < runs ? runFrom(place + step, step).then(done) : done();
    });
  });
}

const firsts =
  values.input === undefined ? Array.from({ length: processes }, (_, at) => at) : [runs - 1];
await Promise.all(firsts.map((first) => runFrom(first, processes)));
rmSync(made, { recursive: true });

console.log(`${tried} garbled inputs, seed ${seed}: ${answered} answered, ${deep} refused by what they say, ${tried - answered - deep} by their form
answers: ${total.toFixed(0)} s of CPU time, the longest ${longest.toFixed(2)} s; ${searches} above a second, each on slanted tethers on a slope; ${((Date.now() - start) / 1000).toFixed(0)} s in all
refused with
${[...codes]
  .sort((a, b) => b[1] - a[1])
  .map(([code, count]) => `${right(count)}  ${code}`)
  .join("\n")}
through another command too
${[...beside].map(([command, { count, most }]) => `${right(count)}  ${command}, up to ${most.toFixed(1)} s`).join("\n")}
${faults} faults${faults > 0 ? `; their files: ${values.failures}` : ""}`);
if (tried < runs - firsts[0]) console.log("not every input was tried");
if (answered + deep < tried / 3)
  console.log("too many end at their form: the fuzzer proves little");
process.exitCode = faults > 0 || tried < runs - firsts[0] || answered + deep < tried / 3 ? 1 : 0;
