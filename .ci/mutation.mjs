import { dirname } from "node:path";
import process from "node:process";
import { explanationOf, plain, readExplained } from "../tests/mutation/explained.mjs";
import { sourcesOf } from "../tests/mutation/instrument.mjs";
import {
  countsOf,
  digestOf,
  readRecord,
  totalsOf,
  writeRecord,
} from "../tests/mutation/record.mjs";
import { dead, testsOf, tryMutants } from "../tests/mutation/try-mutants.mjs";

// Mutation tests. Names of packages, or --all: these whole, and their record written. Without:
// the gate, which tries the files that differ from the record, within bounded time.
const packages = ["section", "core", "load", "stability", "ground", "strength", "frame"];
const bound = 12 * 60;

const root = dirname(import.meta.dirname);
const explained = readExplained(root);
const record = readRecord(root);
const asked = process.argv.includes("--all") ? packages : process.argv.slice(2);
for (const name of asked) {
  if (!packages.includes(name)) throw new Error(`${name} is none of ${packages.join(", ")}`);
}
process.exitCode = (asked.length > 0 ? await whole(asked) : await changed()) ? 0 : 1;

async function whole(names) {
  for (const name of names) {
    const tests = testsOf(root, name);
    const sources = sourcesOf(root, name);
    const start = performance.now();
    const mutants = await tryMutants(root, tests, sources, (text) =>
      console.log(`${name}: ${text}`),
    );
    tellAlive(mutants);
    const files = byFile(sources, mutants);
    const minutes = Math.round((performance.now() - start) / 6000) / 10;
    const totals = totalsOf(files);
    const floor = Math.max(record[name]?.floor ?? 0, Math.floor(totals.raw));
    const date = new Date().toISOString().slice(0, 10);
    record[name] = { date, floor, tests: tests.length, minutes, ...totals, files };
    writeRecord(root, { ...readRecord(root), [name]: record[name] });
  }
  return judge();
}

async function changed() {
  const work = packages.flatMap((name) => {
    const known = record[name];
    if (!known) return [];
    const sources = sourcesOf(root, name);
    const files = sources.filter((file) => known.files[file]?.digest !== digestOf(root, file));
    known.files = Object.fromEntries(
      Object.entries(known.files).filter(([file]) => sources.includes(file)),
    );
    const usual = known.seconds / known.mutants;
    const seconds = files.map((file) => known.files[file]?.seconds ?? 40 * usual);
    return files.length > 0 ? [{ name, files, seconds: sum(seconds) / 2 + 60 }] : [];
  });
  const seconds = sum(work.map((one) => one.seconds));
  if (seconds > bound) {
    const files = work.flatMap((one) => one.files);
    console.log(`Too much has changed to be tried within ${bound / 60} minutes:`);
    console.log(files.join("\n"));
    console.log(`Run: node .ci/mutation.mjs ${work.map(({ name }) => name).join(" ")}`);
    return false;
  }
  for (const { name, files } of work) {
    const tests = testsOf(root, name);
    const mutants = await tryMutants(root, tests, files, (text) => console.log(`${name}: ${text}`));
    tellAlive(mutants);
    Object.assign(record[name].files, byFile(files, mutants));
    Object.assign(record[name], totalsOf(record[name].files));
  }
  return judge();
}

/** Tells every package's figures; false where one has fallen under its floor. */
function judge() {
  let good = true;
  for (const name of packages) {
    const known = record[name];
    if (!known) {
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

function byFile(files, mutants) {
  return Object.fromEntries(
    files.map((file) => {
      const own = mutants.filter((mutant) => mutant.file === file);
      return [file, countsOf(root, file, own, explained)];
    }),
  );
}

function tellAlive(mutants) {
  for (const mutant of mutants.filter(({ fate }) => !dead(fate))) {
    if (explanationOf(explained, mutant)) continue;
    const { fate, file, line, original, replacement } = mutant;
    console.log(`${fate}: ${file}:${line}: ${original} -> ${plain(replacement)}`);
  }
}

function sum(numbers) {
  return numbers.reduce((total, one) => total + one, 0);
}
