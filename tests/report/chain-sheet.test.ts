import { firstToGo, linkIds, measured, type System } from "@hoopstay/core";
import { renderReport } from "@hoopstay/report";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { peaksOf } from "../../packages/report/src/chain/diagram.ts";
import { sampleChain } from "./sample-chain.ts";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";
import { withoutData } from "./without-data.ts";

const reportOf = (chain = sampleChain(), system: System = "us"): string =>
  renderReport(sampleReview({ chain }, 5), { system }).html;

/** The sheet alone. */
const sheetOf = (html: string): string =>
  /<section class="sheet" id="chain"[\s\S]*?<\/section>/.exec(html)?.[0] ?? "";

/** What a reader without pictures gets: markup taken out. */
const said = (html: string): string => html.replace(/<[^>]*>/g, " ").replace(/\s+/g, " ");

/** A drawing by its id. */
const drawn = (html: string, id: string): string =>
  new RegExp(`<svg [^>]*aria-labelledby="${id}-t[\\s\\S]*?</svg>`).exec(html)?.[0] ?? "";

const tableOf = (html: string, label: string): string =>
  new RegExp(`aria-label="${label}">\\s*<table[\\s\\S]*?</table>`).exec(html)?.[0] ?? "";

describe.each(["us", "si"] as const)("the sheet of what goes first, in %s", (system) => {
  const html = reportOf(sampleChain(), system);
  const sheet = sheetOf(html);

  it("is well formed, with every id and every region's name once", () => {
    expect(unbalanced(html)).toEqual([]);
    for (const what of [/ id="([^"]*)"/g, / aria-label="([^"]*)"/g]) {
      const names = [...html.matchAll(what)].map(([, name]) => name);
      expect(new Set(names).size).toBe(names.length);
    }
    expect(
      /undefined|NaN|Infinity|\[object|<script|https?:/.exec(withoutData(html))?.[0],
    ).toBeUndefined();
  });

  it("speaks the reader's units only", () => {
    expect(said(sheet)).not.toMatch(system === "us" ? / m\/s|\bkN\b|\bmm\b/ : / mph|\blb\b|\bft\b/);
  });

  it("answers first, then ranks", () => {
    const text = said(sheet);
    expect(text).toContain(system === "us" ? "at a 61 mph gust" : "at a 27 m/s gust");
    const ranked = tableOf(sheet, "Links, weakest first");
    const named = [...ranked.matchAll(/<th scope="row">([\s\S]*?)<td>/g)].map(([cell]) =>
      said(cell),
    );
    const { links } = sampleChain();
    expect(named).toHaveLength(links.length);
    for (const [place, { words }] of links.entries())
      expect(named[place]).toContain(` ${words.replace("'", "&#39;")} `);
  });
});

describe("the sheet of what goes first", () => {
  const sheet = sheetOf(reportOf());

  it("is left out where it was not asked for, and stands before the ladder", () => {
    const without = renderReport(sampleReview({}, 5), { system: "us" }).html;
    expect(sheetOf(without)).toBe("");
    const ids = [...reportOf().matchAll(/<section class="sheet" id="([^"]*)"/g)];
    expect(ids.slice(0, 3).map(([, id]) => id)).toEqual(["answer", "chain", "governing"]);
  });

  it("shows every link's gust rounded down, never up", () => {
    const rows = [...tableOf(sheet, "Links, weakest first").matchAll(/<tr><th[\s\S]*?<\/tr>/g)];
    const gusts = rows.slice(1).map(([row]) => Number(/(\d+)<\/b><\/tr>/.exec(row)?.[1]));
    for (const [place, { worst }] of sampleChain().links.entries()) {
      if (!Number.isFinite(worst.check.workingGust)) continue;
      const inMiles = worst.check.workingGust / 0.44704;
      expect(gusts[place]).toBeLessThanOrEqual(inMiles);
      expect(gusts[place]).toBeGreaterThan(inMiles - 1);
    }
  });

  it("marks the first to go by words and by shape, once", () => {
    const picture = drawn(sheet, "chain-picture");
    expect(picture.match(/FIRST TO GO/g)).toHaveLength(1);
    expect(picture.match(/class="torn"/g)).toHaveLength(2);
    expect(picture.match(/<rect class="f"[^>]*width="20"/g)).toHaveLength(1);
    expect(said(tableOf(sheet, "Links, weakest first")).match(/first to go/g)).toHaveLength(1);
  });

  it("numbers the links in the order of the load path, those not checked among them", () => {
    const picture = said(drawn(sheet, "chain-picture").replace(/<desc[\s\S]*?<\/desc>/, ""));
    const names = [...picture.matchAll(/(\d+) (cover edge|boards|hoop|bolts|anchors)/g)].map(
      ([words]) => words,
    );
    expect(names).toEqual(["1 cover edge", "2 boards", "3 hoop", "5 bolts", "14 anchors"]);
    expect(picture.match(/\? not checked/g)).toHaveLength(2);
    expect(picture).toMatch(/boards \d+ mph \?/);
  });

  it("says in words where it is beyond any strength, and prints speeds rounded down", () => {
    const [first, ...others] = sampleChain().links;
    if (!first) throw new Error("the sample has no links");
    const none = Number.POSITIVE_INFINITY;
    const check = {
      ...first.worst.check,
      demand: measured(none, "ratio"),
      resistance: measured(1, "ratio"),
      ratio: { ASD: none, LRFD: none },
      workingGust: 12.29 * 0.44704,
    };
    const links = [{ ...first, worst: { ...first.worst, check } }, ...others];
    const html = sheetOf(reportOf(sampleChain({ links })));
    const row = said(tableOf(html, "The worst check of every link")).split(/(?= \d+ the )/)[1];
    expect(row).toContain("– – beyond any strength");
    expect(row).toMatch(/ 12\.2$/);
    expect(html).not.toMatch(/NaN|Infinity|no hold/);
  });

  it("says where the wind comes from, not by a code", () => {
    const chain = sampleChain();
    const [first, ...others] = chain.links;
    if (!first) throw new Error("the sample has no links");
    const { check } = first.worst;
    const governs = { ...check.governs, direction: "+x (right)" };
    const worst = { ...first.worst, check: { ...check, governs } };
    const directions = [{ direction: "-y", check }];
    const sheet = said(
      sheetOf(reportOf({ ...chain, links: [{ ...first, worst, directions }, ...others] })),
    );
    expect(sheet).toContain("wind from the left");
    expect(sheet).toContain("from the front");
    expect(sheet).not.toMatch(/[+-][xy]\b/);
  });

  it("prints what an unchecked link would have to carry", () => {
    const text = said(tableOf(sheet, "Links not checked"));
    expect(text).toContain("no plates are entered");
    expect(text).toMatch(/546.lb·ft/);
    expect(text).toContain("not known");
  });

  it("says so where nothing is left out, found or could be checked", () => {
    const good = sheetOf(reportOf(sampleChain({ notChecked: [], findings: [], holds: true })));
    expect(said(good)).toContain("Nothing is left out of the links above");
    expect(said(good)).toContain("✓ Every link holds the design wind in every state.");
    const none = reportOf(sampleChain({ links: [], states: [] }));
    expect(unbalanced(none)).toEqual([]);
    expect(sheetOf(none)).not.toContain("chain-picture");
    const bare = { title: "The hoop is not computed", points: [], bars: [] };
    const nothing = { lines: [], hoops: [], anchors: [], crossMembers: [] };
    const empty = reportOf(sampleChain({ hoop: bare, rail: nothing }));
    expect(unbalanced(empty)).toEqual([]);
    expect(said(empty)).toContain("The hoop is not computed");
    expect(said(empty)).toContain("No rail was worked out");
  });

  it("keeps ties that go early apart from the first to go", () => {
    const chain = sampleChain();
    const ties = chain.links.find(({ id }) => id === "ties");
    if (!ties) throw new Error("the sample has no ties");
    const weak = { ...ties.worst.check, workingGust: 12 };
    const early = { ...ties, worst: { ...ties.worst, check: weak } };
    const links = [early, ...chain.links.filter(({ id }) => id !== "ties")];
    expect(firstToGo({ ...chain, links })).toBe("bolts");
    const ranked = said(tableOf(reportOf({ ...chain, links }), "Links, weakest first"));
    expect(ranked).toMatch(/the collar ties ◇ the house is rated without/);
    expect(ranked).toMatch(/foot of a hoop ◀ first to go/);
  });

  it("has a row for every state and a column for every link", () => {
    const byState = tableOf(sheet, "Links by state of the house");
    expect(byState.match(/<th scope="col">/g)).toHaveLength(1 + sampleChain().links.length);
    expect(byState.match(/<th scope="row">/g)).toHaveLength(7);
  });
});

/** Points of a path or of a polyline. */
const pointsOf = (text = ""): { x: number; y: number }[] =>
  [...text.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

describe("the drawings of the hoop", () => {
  const sheet = sheetOf(reportOf());
  const { points } = sampleChain().hoop;
  const lineOf = (id: string, kind: string) =>
    pointsOf(new RegExp(`<polyline class="${kind}" points="([^"]*)"`).exec(drawn(sheet, id))?.[1]);
  const line = lineOf("hoop-bending", "o");
  const [first, last] = [line[0], line.at(-1)];
  const scale = ((last?.x ?? 0) - (first?.x ?? 0)) / (2 * 2.7432);

  it("are to scale, the same both ways", () => {
    expect(line).toHaveLength(points.length);
    for (const [place, spot] of line.entries()) {
      const { x, z } = points[place] ?? { x: 0, z: 0 };
      expect(Math.abs(spot.x - (first?.x ?? 0) - scale * (x + 2.7432))).toBeLessThan(0.3);
      expect(Math.abs((first?.y ?? 0) - spot.y - scale * (z - 0.0762))).toBeLessThan(0.3);
    }
  });

  it("show bending on the side that is pulled, as wide as it is", () => {
    const shape = pointsOf(
      /<path class="lobe" d="([^"]*)"/.exec(drawn(sheet, "hoop-bending"))?.[1],
    );
    const tips = shape.slice(points.length).toReversed();
    const middle = { x: 170, y: (first?.y ?? 0) - 1.2 * scale };
    const most = Math.max(...points.map(({ moment }) => Math.abs(moment)));
    const offsets = tips.map((tip, place) => {
      const spot = line[place] ?? tip;
      const size = Math.hypot(tip.x - spot.x, tip.y - spot.y);
      const outward =
        (tip.x - spot.x) * (spot.x - middle.x) + (tip.y - spot.y) * (spot.y - middle.y) > 0;
      return outward ? -size : size;
    });
    const largest = Math.max(...offsets.map(Math.abs));
    for (const [place, offset] of offsets.entries()) {
      const wanted = (largest * (points[place]?.moment ?? 0)) / most;
      expect(Math.abs(offset - wanted)).toBeLessThan(0.4);
    }
  });

  it("show the bent shape as many times larger as is printed", () => {
    const times = Number(/drawn (\d+) times/.exec(said(sheet))?.[1]);
    const bent = lineOf("hoop-shape", "o");
    for (const [place, spot] of bent.entries()) {
      const { x, z, dx, dz } = points[place] ?? { x: 0, z: 0, dx: 0, dz: 0 };
      const wanted = {
        x: (first?.x ?? 0) + scale * (x + times * dx + 2.7432),
        y: (first?.y ?? 0) - scale * (z + times * dz - 0.0762),
      };
      expect(Math.hypot(spot.x - wanted.x, spot.y - wanted.y)).toBeLessThan(0.4);
    }
  });

  it("tell in words which tie pulls, pushes or hangs slack", () => {
    const numbers = said(tableOf(sheet, "The hoop in numbers"));
    expect(numbers).toContain("T1: a tie in compression (pushed together) 279 lb");
    expect(numbers).toContain("T2: a tie in tension (pulled) 85.4 lb");
    expect(numbers).toContain("T3: a tie, slack");
    expect(drawn(sheet, "hoop-thrust")).toContain("T1 279 lb push");
  });

  it("say so where it does not move", () => {
    const { hoop } = sampleChain();
    const still = { ...hoop, points: hoop.points.map((one) => ({ ...one, dx: 0, dz: 0 })) };
    const html = reportOf(sampleChain({ hoop: still }));
    expect(html).toContain("The hoop does not move");
    expect(html).not.toMatch(/NaN|Infinity/);
  });
});

describe("the drawing of the rail", () => {
  it("is to scale along its length, and marks what stands on it", () => {
    const { rail } = sampleChain();
    const drawing = drawn(sheetOf(reportOf()), "rail-lines");
    const squares = [...drawing.matchAll(/<rect class="f" x="([\d.]+)"/g)].map(([, x]) =>
      Number(x),
    );
    expect(squares).toHaveLength(rail.crossMembers.length);
    const [one = 0, other = 0, last = 0] = squares;
    const [a = 0, b = 0, c = 0] = rail.crossMembers;
    expect((other - one) / (last - one)).toBeCloseTo((b - a) / (c - a), 2);
    expect(drawing.match(/<path class="f"/g)).toHaveLength(rail.anchors.length);
  });

  it("has no sign before values that have but one", () => {
    const { rail } = sampleChain();
    const lines = rail.lines.map((one) => ({
      ...one,
      points: one.points.map(({ at, value }) => ({ at, value: Math.abs(value) })),
    }));
    const sheet = sheetOf(reportOf(sampleChain({ rail: { ...rail, lines } })));
    expect(said(tableOf(sheet, "The rail in numbers"))).not.toMatch(/[+−]\d/);
    expect(said(tableOf(sheetOf(reportOf()), "The rail in numbers"))).toMatch(/\+\d.*−\d/);
  });
});

it("has a drawing for every link there may be", () => {
  const chain = sampleChain({
    notChecked: linkIds.map((link) => ({ link, words: link, why: "not known", demand: null })),
  });
  const picture = drawn(reportOf(chain), "chain-picture");
  for (const number of linkIds.keys()) expect(picture).toContain(`>${number + 1}</text>`);
});

it("finds the largest value of either sign among those worth a number", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1 }), (values) => {
      const peaks = peaksOf(values);
      const most = Math.max(...values.map(Math.abs));
      if (most === 0) {
        expect(peaks).toEqual([]);
        return;
      }
      expect(peaks.some(({ value }) => Math.abs(value) === most)).toBe(true);
      for (const { place, value } of peaks) expect(values[place]).toBe(value);
    }),
    { seed: 20240601 },
  );
});
