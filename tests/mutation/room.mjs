import { readFileSync } from "node:fs";
import process from "node:process";
import vm from "node:vm";
import { allExamples, library } from "./libraries-once.mjs";
import { plainVitest } from "./plain-vitest.mjs";
import { looksAtClock, slow } from "./slow-tests.mjs";

// A process in which mutants are tried, one after another, each with packages and tests read anew.
Error.stackTraceLimit = 0;

let opened;

function codeOf(path) {
  if (opened?.path !== path) {
    const text = readFileSync(path, "utf8");
    // Before any clock runs: a library that is stopped half way stays half read, and all tests fail.
    for (const [, name] of text.matchAll(/\brequire\("(\/[^"]+)"\)/g)) library(name);
    const script = new vm.Script(text, { filename: path });
    opened = { path, code: script.runInThisContext() };
  }
  return opened.code;
}

function open(path, isActive, timesReached) {
  const collected = [];
  const vitest = plainVitest(collected);
  const exports = {};
  const require = (name) => (name === "vitest" ? vitest : library(name));
  codeOf(path)(require, exports, isActive, timesReached);
  return (file) => {
    collected.length = 0;
    exports.files[file]();
    return [...collected];
  };
}

/** Reads and runs every test of a file unchanged: how long each takes, and what it reaches. */
function survey({ path, file, switches }) {
  const timesReached = new Float64Array(switches);
  const measured = (work) => {
    timesReached.fill(0);
    const start = performance.now();
    const result = work();
    const ms = performance.now() - start;
    const reached = [...timesReached].flatMap((times, id) => (times > 0 ? [[id, times]] : []));
    return { result, ms, reached };
  };
  const reading = measured(() => open(path, never, timesReached)(file));
  const surveyed = ({ name, body }, whole = false) => {
    if (looksAtClock(file, name)) return { left: true };
    try {
      allExamples(whole);
      const { ms, reached } = measured(body);
      return { ms, reached, whole, slow: slow(file, name) };
    } catch (error) {
      if (!whole) return surveyed({ name, body }, true);
      throw new Error(`${file}, without any mutant: ${name}: ${error.message}`);
    }
  };
  const tests = reading.result.map((test) => surveyed(test));
  return { reading: { ms: reading.ms, reached: reading.reached }, tests };
}

const never = () => false;

/** A mutant that is reached so many times as often as the source runs for ever. */
const often = 100;

/** Milliseconds after which a test that took `ms` counts as running for ever. */
const late = (ms) => Math.round(5000 + 6 * ms);

const step = new vm.Script("globalThis.mutationStep()");

function within(ms, work) {
  globalThis.mutationStep = work;
  step.runInThisContext({ timeout: late(ms) });
}

/** Runs the tests of a plan until one fails. */
function attempt({ path, mutant, plan, reading }) {
  let times = 0;
  let limit = 0;
  const isActive = (id) => {
    if (id !== mutant) return false;
    times++;
    if (times > limit) throw new Error("endless");
    return true;
  };
  const allow = (usual) => {
    times = 0;
    limit = often * (usual + 10);
  };
  allow(0);
  const read = open(path, isActive);
  const files = new Map();
  for (const test of plan) {
    const { file, place } = test;
    try {
      if (!files.has(file)) {
        allow(reading[file].times);
        within(reading[file].ms, () => files.set(file, read(file)));
      }
      allow(test.times);
      allExamples(test.whole);
      within(test.ms, () => files.get(file)[place]?.body());
    } catch (error) {
      const endless = times > limit || error?.code === "ERR_SCRIPT_EXECUTION_TIMEOUT";
      return { by: { file, place }, endless };
    }
  }
  return {};
}

process.on("message", (work) => {
  try {
    process.send({ answer: work.mutant ? attempt(work) : survey(work) });
  } catch (error) {
    process.send({ failure: String(error?.message ?? error) });
  }
});
process.on("disconnect", () => process.exit());
process.send({ ready: true });
