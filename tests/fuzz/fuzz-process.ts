import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import process from "node:process";
import fc from "fast-check";
import { written } from "../laws/entry.ts";
import { farms } from "../laws/farms.ts";
import { fuzzedInput, type SoundFiles } from "./fuzzed-input.ts";
import { tryInput } from "./try-input.ts";

// One process of .ci/fuzz.mjs: tries every so-manieth input, and says on which it is.
const [root = "", failures = "", ...numbers] = process.argv.slice(2);
const [seed = 0, first = 0, end = 0, step = 1] = numbers.map(Number);

const texts = (folder: string): string[] =>
  readdirSync(join(root, folder)).map((name) => readFileSync(join(root, folder, name), "utf8"));
// Most of them on level ground: a slope takes slanted tethers a search.
const sample = (level: boolean, numRuns: number) =>
  fc.sample(farms({ level }), { seed: 1, numRuns });
const farmTexts = [...sample(true, 40), ...sample(false, 20)]
  .filter(({ house }) => house.only_these_states === undefined)
  .map(({ house, site }) => [written(house), written(site)] as const);
const sound: SoundFiles = {
  houses: [...texts("fixtures/houses"), ...farmTexts.map(([house]) => house)],
  sites: [...texts("fixtures/sites"), ...farmTexts.map(([, site]) => site)],
};
const safety = readFileSync(join(root, "SAFETY.md"), "utf8");
const listed = new Set(
  [...safety.matchAll(/^\| `([a-z0-9-]+)` \| [23] \|/gm)].map(([, code]) => code ?? ""),
);

// Written at once: what hangs afterwards can be named.
const say = (line: object): void => {
  writeSync(1, `${JSON.stringify(line)}\n`);
};

function keep(place: number, house: Uint8Array, site: Uint8Array, fault: string): void {
  const folder = join(failures, String(place));
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "house.yaml"), house);
  writeFileSync(join(folder, "site.yaml"), site);
  writeFileSync(join(folder, "fault.txt"), `seed ${seed}, input ${place}\n${fault}\n`);
}

const folder = mkdtempSync(join(tmpdir(), "fuzz-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
let now = -1;
process.on("uncaughtException", (error) => {
  say({ place: now, fault: `uncaught: ${error.stack}` });
  process.exit(1);
});

/** V8 has to see the program a few times before its time means anything. */
for (let warm = 0; warm < 30; warm += 1)
  await tryInput(fuzzedInput(sound, 1, warm), folder, listed);

for (let place = first; place < end; place += step) {
  now = place;
  say({ begins: place });
  const input = fuzzedInput(sound, seed, place);
  const tried = await tryInput(input, folder, listed);
  if (tried.fault) keep(place, input.house, input.site, tried.fault);
  say({ place, ...tried });
}
