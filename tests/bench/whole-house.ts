import assert from "node:assert/strict";
import { evaluate } from "@hoopstay/house";
import { evaluatedFloor, flattenedFloor } from "./flattened-floor.ts";
import { perSecond } from "./per-second.ts";
import { readExample } from "./read-example.ts";
import { tell } from "./told.ts";

// Whole-house check (take-off, all states and directions), beside its hand-flattened arithmetic.
const { house, site } = readExample("harrow-brook", "sheltered-paddock");
const unanchored = { ...house, anchors: [], ballast: [] };
const evaluation = evaluate(unanchored, site);
const floor = flattenedFloor(evaluation);
const found = floor();
const known = evaluatedFloor(evaluation);
assert.ok(Math.abs(found.lift - known.lift) < 1e-9);
assert.equal(found.slide, known.slide);

const checks = perSecond(() => evaluate(unanchored, site), 40, 1000);
const anchored = perSecond(() => evaluate(house, site), 5, 100);
const arithmetic = perSecond(floor, 20, 1000);
const tables = new Set(evaluation.states.map(({ set }) => set.table));
const cases = [...tables].reduce((sum, { count }) => sum + count, 0);
console.log(
  `whole-house check, ${evaluation.states.length} states, ${cases} load cases: ${checks.toFixed(0)} per second
  with 8 slanted anchors: ${anchored.toFixed(0)} per second
  hand-flattened arithmetic of every case: ${arithmetic.toFixed(0)} per second`,
);
tell({
  name: "whole-house",
  words: "checks a second over passes of their flattened arithmetic",
  ratio: checks / arithmetic,
  better: "more",
  room: 1.4,
});
// Rows that cannot govern are passed over, so the check keeps up with the arithmetic of all of them;
// a quarter below it is left for a busy machine.
assert.ok(checks > 0.75 * arithmetic, "the whole-house check has become slow");
