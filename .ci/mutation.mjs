import { dirname } from "node:path";
import process from "node:process";
import { parseArgs } from "node:util";
import { explanationOf, readExplained } from "../tests/mutation/explained.mjs";
import { sourcesOf } from "../tests/mutation/instrument.mjs";
import {
  countsOf,
  digestOf,
  nameOf,
  readRecord,
  recounted,
  totalsOf,
  writeRecord,
} from "../tests/mutation/record.mjs";
import { rooms, testsOf, tryMutants } from "../tests/mutation/try-mutants.mjs";

// Mutation tests. Names of packages, or --all: these whole, and their record written; with --again
// only what is alive in the record or stands in changed files, and of these only the files whose paths
// hold one of the parts behind --in. Without a name: the gate, which tries the changed files, within
// bounded time.
const packages = ["section", "core", "load", "stability", "ground", "strength", "frame"];
const boundMinutes = 12;

const root = dirname(import.meta.dirname);
const explained = readExplained(root);
const record = readRecord(root);
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    all: { type: "boolean" },
    again: { type: "boolean" },
    in: { type: "string", multiple: true },
  },
});
const { again, in: parts = [""] } = values;
if (values.in && !again) throw new Error("--in stands with --again: a record is made whole first");
const asked = values.all ? packages : positionals;
for (const name of asked) {
  if (!packages.includes(name)) throw new Error(`${name} is none of ${packages.join(", ")}`);
}
process.exitCode = (asked.length > 0 ? await written(asked) : await changed()) ? 0 : 1;

async function written(names) {
  for (const name of names) {
    const sources = sourcesOf(root, name);
    const known = again ? (record[name]?.files ?? {}) : {};
    const stale = new Set(staleOf(sources, known));
    const chosen = sources.filter((file) => parts.some((part) => file.includes(part)));
    const wanted = ({ file, ...mutant }) =>
      stale.has(file) || known[file].alive.includes(nameOf(mutant));
    const before = record[name];
    const files = { ...before?.files };
    const inOrder = () =>
      Object.fromEntries(sources.filter((file) => files[file]).map((file) => [file, files[file]]));
    // What is done is kept, so that --again goes on where a run was ended.
    const keep = (head) => {
      record[name] = { ...head, ...totalsOf(inOrder()), files: inOrder() };
      writeRecord(root, { ...readRecord(root), [name]: record[name] });
    };
    await tried(name, chosen, {
      wanted,
      tellFile(file, own) {
        const counts = countsOf(root, file, own, explained);
        files[file] = stale.has(file) ? counts : recounted(known[file], counts);
        keep(before);
      },
    });
    const { raw, seconds } = totalsOf(inOrder());
    const minutes = Math.round((10 * seconds) / 60 / rooms) / 10;
    const now = { date: new Date().toISOString().slice(0, 10), minutes };
    const whole = (again && before?.whole) || now;
    keep({ whole, floor: Math.max(before?.floor ?? 0, Math.floor(raw) - 1) });
  }
  return judge();
}

async function changed() {
  const work = packages.flatMap((name) => {
    const known = record[name];
    if (!known?.whole) return [];
    const sources = sourcesOf(root, name);
    const files = staleOf(sources, known.files);
    known.files = Object.fromEntries(sources.map((file) => [file, known.files[file]]));
    return files.length > 0 ? [{ name, files, seconds: secondsOf(known, files) }] : [];
  });
  if (sum(work.map(({ seconds }) => seconds)) > 60 * boundMinutes) {
    console.log(`Too much has changed to be tried within ${boundMinutes} minutes:`);
    console.log(work.flatMap(({ files }) => files).join("\n"));
    console.log(`Run: node .ci/mutation.mjs --again ${work.map(({ name }) => name).join(" ")}`);
    return false;
  }
  for (const { name, files } of work) {
    const mutants = await tried(name, files);
    for (const file of files) {
      const own = mutants.filter((mutant) => mutant.file === file);
      record[name].files[file] = countsOf(root, file, own, explained);
    }
    Object.assign(record[name], totalsOf(record[name].files));
  }
  return judge();
}

function staleOf(sources, known) {
  return sources.filter((file) => known[file]?.digest !== digestOf(root, file));
}

/** Seconds that some files will take, by what they or the package's mutants took before. */
function secondsOf({ files: known, seconds, mutants }, files) {
  const newFile = (40 * seconds) / mutants;
  return 60 + sum(files.map((file) => known[file]?.seconds ?? newFile)) / 2;
}

function tried(name, files, settings = {}) {
  return tryMutants(root, testsOf(root, name), files, {
    ...settings,
    tell: (text) => console.log(`${name}: ${text}`),
    tellAlive(mutant) {
      const explanation = explanationOf(explained, mutant) ? ", explained" : "";
      console.log(`${mutant.fate}${explanation}: ${mutant.file}:${nameOf(mutant)}`);
    },
  });
}

/** Tells every package's figures; false where one has fallen under its floor. */
function judge() {
  let good = true;
  for (const name of packages) {
    const known = record[name];
    if (!known?.whole) {
      console.log(`${name}: not yet run whole`);
      continue;
    }
    const holds = known.raw >= known.floor;
    good &&= holds;
    console.log(
      `${holds ? "ok  " : "LOW "} ${name}: ${known.mutants} mutants, ${known.killed} killed, ` +
        `${known.endless} endless, ${known.survived} survived, ${known.notCovered} not covered, ` +
        `${known.explained} of these explained; ${known.raw} % killed, floor ${known.floor} %, ` +
        `${known.adjusted} % without the explained`,
    );
  }
  return good;
}

function sum(numbers) {
  return numbers.reduce((total, one) => total + one, 0);
}
