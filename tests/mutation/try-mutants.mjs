import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { bundle } from "./bundle.mjs";
import { instrument } from "./instrument.mjs";
import { openRoom } from "./open-room.mjs";

export const rooms = 2;
const fewest = 2;

/** Test files of a package, as paths from the root. */
export function testsOf(root, name) {
  return readdirSync(join(root, "tests", name), { recursive: true })
    .filter((file) => file.endsWith(".test.ts"))
    .sort()
    .map((file) => `tests/${name}/${file}`);
}

/**
 * Tries every mutant of some sources on some tests. Each comes back with its fate: killed, endless
 * (the tests would never end), survived, or not covered by any test. A file is told when all of its
 * mutants have been tried.
 */
export async function tryMutants(root, tests, files, settings) {
  const { tell, tellAlive, tellFile = () => {}, wanted = () => true } = settings;
  const { sources, mutants: all, switches } = await instrument(root, files);
  const mutants = all.filter(wanted);
  const folder = mkdtempSync(join(tmpdir(), "mutation-"));
  const paths = new Map();
  const write = async (path, mutated, told) => {
    writeFileSync(path, await bundle(root, tests, mutated, told));
    return path;
  };
  const written = (file) => {
    const mutated = new Map([[join(root, file), sources.get(join(root, file))]]);
    if (!paths.has(file)) paths.set(file, write(join(folder, `${paths.size}.js`), mutated, false));
    return paths.get(file);
  };
  try {
    const found = await survey(await write(join(folder, "all.js"), sources, true), tests, switches);
    const plans = plansOf(found, switches);
    tell(`${mutants.length} mutants, ${plans.tests} tests in ${plans.seconds.toFixed(1)} s`);
    const left = new Map(files.map((file) => [file, mutants.filter((one) => one.file === file)]));
    for (const [file, own] of left) if (own.length === 0) tellFile(file, own);
    const tellDone = (file, tried) => {
      const own = inOrder(tried.filter((one) => one.file === file));
      if (own.length === left.get(file).length) tellFile(file, own);
    };
    return await attemptAll(written, mutants, plans, { tell, tellAlive, tellDone });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function survey(path, tests, switches) {
  const room = await openRoom();
  const found = [];
  try {
    for (const file of tests) {
      found.push({ file, ...(await room.ask({ path, file, switches }, 600_000)) });
    }
  } finally {
    room.close();
  }
  return found;
}

/**
 * For each mutant the tests that reach it, the quickest first and the slow ones last, and how often
 * it is reached. One that hardly any test of a file reaches may stand where something is made once
 * and kept: all others of the file count as reaching it, too.
 */
function plansOf(found, count) {
  const plans = Array.from({ length: count }, () => []);
  const reading = Array.from({ length: count }, () => ({}));
  for (const { file, reading: read, tests } of found) {
    const usable = tests.flatMap((test, place) => (test.left ? [] : [{ ...test, place }]));
    const always = new Map(read.reached);
    const reaching = new Map();
    for (const { place, reached } of usable) {
      for (const [id, times] of reached) {
        if (!reaching.has(id)) reaching.set(id, new Map());
        reaching.get(id).set(place, times);
      }
    }
    for (const id of new Set([...always.keys(), ...reaching.keys()])) {
      const times = reaching.get(id) ?? new Map();
      const all = always.has(id) || times.size <= fewest;
      const most = Math.max(0, ...times.values());
      for (const { place, ms, whole, slow } of usable) {
        if (!all && !times.has(place)) continue;
        plans[id].push({ file, place, ms, cost: ms + read.ms, times: most, whole, slow });
      }
      reading[id][file] = { ms: read.ms, times: always.get(id) ?? 0 };
    }
  }
  for (const plan of plans) plan.sort((a, b) => a.slow - b.slow || a.cost - b.cost);
  const run = found.flatMap((file) => file.tests).filter((test) => !test.left);
  const all = [...run, ...found.map((file) => file.reading)];
  const seconds = all.reduce((sum, { ms }) => sum + ms, 0) / 1000;
  return { plans, reading, tests: run.length, seconds };
}

async function attemptAll(written, mutants, { plans, reading }, { tell, tellAlive, tellDone }) {
  const waiting = [...mutants];
  const killers = new Map();
  const done = [];
  const start = performance.now();
  let told = start;
  const work = async () => {
    let room = await openRoom();
    for (let mutant = waiting.shift(); mutant; mutant = waiting.shift()) {
      const { id, file } = mutant;
      const began = performance.now();
      const path = await written(file);
      const plan = killersFirst(plans[id], killers.get(file) ?? []);
      const request = { path, mutant: id, plan, reading: reading[id] };
      const answer = plan.length > 0 ? await room.ask(request, patience(plan)) : undefined;
      if (answer?.late) room = await openRoom();
      remember(killers, file, answer?.by);
      const tried = { ...mutant, fate: fateOf(answer), ms: performance.now() - began };
      done.push(tried);
      if (!dead(tried.fate)) tellAlive(tried);
      tellDone(file, done);
      if (performance.now() - told > 30_000) {
        told = performance.now();
        const alive = done.filter(({ fate }) => !dead(fate)).length;
        const each = (told - start) / done.length / 1000;
        tell(`${done.length} of ${mutants.length}, ${alive} alive, ${each.toFixed(3)} s each`);
      }
    }
    room.close();
  };
  await Promise.all(Array.from({ length: rooms }, work));
  return inOrder(done);
}

const inOrder = (mutants) => mutants.toSorted((a, b) => Number(a.id) - Number(b.id));

export const dead = (fate) => fate === "killed" || fate === "endless";

function fateOf(answer) {
  if (!answer) return "not covered";
  if (answer.late || answer.endless) return "endless";
  return answer.by ? "killed" : "survived";
}

/** Milliseconds after which a room that does not answer is given up: it guards each test itself. */
const patience = (plan) => 120_000 + 100 * plan.reduce((sum, { ms }) => sum + ms, 0);

const same = (one, other) => one.file === other.file && one.place === other.place;

/** Tests that killed neighbours come first, unless they are slow. */
function killersFirst(plan, killers) {
  const first = killers.flatMap((killer) =>
    plan.filter((test) => !test.slow && same(test, killer)),
  );
  return [...first, ...plan.filter((test) => !first.includes(test))];
}

function remember(killers, file, by) {
  if (!by) return;
  const known = killers.get(file) ?? [];
  killers.set(file, [by, ...known.filter((killer) => !same(killer, by))].slice(0, 5));
}
