import assert from "node:assert/strict";
import process from "node:process";
import { evaluate, houseSchema, readRange } from "@hoopstay/house";
import { QuickLinks } from "../../packages/house/src/chain/quick/quick-links.ts";
import { anchorLayouts } from "../../packages/house/src/design-search/design/anchor-layouts.ts";
import { designAt, stepThrough } from "../../packages/house/src/design-search/design/design.ts";
import { PreparedShells } from "../../packages/house/src/design-search/design/prepared-shell.ts";
import { quickDesign } from "../../packages/house/src/design-search/quick-design.ts";
import { designsIn } from "../../packages/house/src/design-search/range/design-range.ts";
import { knownSlides } from "../../packages/house/src/design-search/stability/known-slides.ts";
import { flattenedFloor } from "./flattened-floor.ts";
import { perSecond } from "./per-second.ts";
import { readExample, readFixture } from "./read-example.ts";
import { tell } from "./told.ts";

// Designs of the range round the example house, on a slope, its tethers slanted, as search looks at them.
const document = readFixture("houses/harrow-brook.yaml");
const input = houseSchema.parse(document);
const { house, site } = readExample("harrow-brook", "hill-top");
const range = readRange({ document, input, house }, []);
const layouts = anchorLayouts(range, house, site);
const shells = new PreparedShells(input, house, site, knownSlides(evaluate(house, site)));
const all = designsIn(range);
const step = stepThrough(range);

type Links = Pick<QuickLinks, "limit">;
const stabilityOnly = (): Links => ({ limit: () => Number.POSITIVE_INFINITY });

/** Designs a second of processor time, all threads of the program, best of some rounds through the range. */
function designsPerSecond(linksOf: () => Links, rounds: number): number {
  let best = 0;
  for (let round = 0; round < rounds; round += 1) {
    const links = linksOf();
    const start = process.cpuUsage();
    for (let looked = 0; looked < all; looked += 1) {
      quickDesign(shells, designAt(range, layouts, (looked * step) % all), site, links);
    }
    const { user, system } = process.cpuUsage(start);
    best = Math.max(best, (1e6 * all) / (user + system));
  }
  return best;
}

designsPerSecond(stabilityOnly, 1);
const stable = designsPerSecond(stabilityOnly, 10);
const framed = designsPerSecond(() => new QuickLinks(), 4);
const unanchored = { ...house, anchors: [], ballast: [] };
const passes = perSecond(flattenedFloor(evaluate(unanchored, site)), 20, 1000);
console.log(
  `search, ${all} designs, wind of each shell worked before: ${stable.toFixed(0)} a second weighed and checked for lift off, turning and sliding;
  ${framed.toFixed(0)} a second with the hoop's frame and the links it loads`,
);
const told = { better: "more", room: 1.6 } as const;
tell({
  name: "search",
  words: "designs a second, stability alone, over passes of the whole-house flattened arithmetic",
  ratio: stable / passes,
  ...told,
});
tell({
  name: "search-with-frame",
  words:
    "designs a second with the hoop's frame, over passes of the whole-house flattened arithmetic",
  ratio: framed / passes,
  ...told,
});
assert.ok(stable > 10_000, "the stability part of the search has become slow");
assert.ok(framed > 500, "the search with the hoop frame has become slow");
