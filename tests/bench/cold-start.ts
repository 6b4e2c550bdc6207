import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import { tell } from "./told.ts";

// The built command on the example, from nothing to its answer, beside Node that does nothing. Taken in
// turn, because the machine is shared; the medians are compared.
const fixtures = process.argv[2] ?? "fixtures";
const command = join(fixtures, "../packages/cli/dist/hoopstay.js");
const files = ["houses/harrow-brook.yaml", "sites/sheltered-paddock.yaml"].map((file) =>
  join(fixtures, file),
);
const runs = 25;

function timeOf(args: readonly string[], expected: number): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
  const took = performance.now() - start;
  assert.equal(status, expected, stderr);
  return took;
}

const bare: number[] = [];
const check: number[] = [];
for (let run = 0; run < runs; run += 1) {
  bare.push(timeOf(["-e", "0"], 0));
  check.push(timeOf([command, "check", ...files], 1));
}
const median = (times: number[]): number =>
  times.sort((one, other) => one - other)[Math.floor(runs / 2)] as number;
console.log(
  `cold start, ${runs} runs in turn: bare Node ${median(bare).toFixed(0)} ms, check ${median(check).toFixed(0)} ms`,
);
tell({
  name: "cold-start",
  words: "check over node -e 0",
  ratio: median(check) / median(bare),
  better: "less",
  room: 1.5,
});
