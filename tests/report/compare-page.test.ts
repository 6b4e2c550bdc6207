import { readQuantity, type System } from "@hoopstay/core";
import { renderCompare, renderSearch } from "@hoopstay/report";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutLength } from "../../packages/report/src/value/cut-length.ts";
import { sampleCompare, sampleSearch } from "./sample-compare.ts";
import { unbalanced } from "./unbalanced.ts";

const stamp = { date: "2026-11-12", digest: "3f9a1c20b7de4458a1", version: "0.1.0" };
const of = (system: System = "us") => ({ house: "Harrow Brook", site: "Hill top", stamp, system });

/** What a reader without pictures gets: markup taken out. */
const said = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");

const drawn = (html: string, id: string): string =>
  new RegExp(`<svg [^>]*aria-labelledby="${id}-t[\\s\\S]*?</svg>`).exec(html)?.[0] ?? "";

const pages = [
  ["comparison", (system: System) => renderCompare(sampleCompare(), of(system))],
  ["comparison of two", (system: System) => renderCompare(sampleCompare(1), of(system))],
  ["search", (system: System) => renderSearch(sampleSearch(), of(system))],
  [
    "search that was stopped",
    (system: System) => renderSearch(sampleSearch({ complete: false, looked: 9000 }), of(system)),
  ],
] as const;

describe.each(pages)("the page of a %s", (_, made) => {
  it.each(["us", "si"] as const)("is well formed in %s, and speaks its units only", (system) => {
    const html = made(system);
    expect(unbalanced(html)).toEqual([]);
    for (const what of [/ id="([^"]*)"/g, / aria-label="([^"]*)"/g]) {
      const names = [...html.matchAll(what)].map(([, name]) => name);
      expect(new Set(names).size).toBe(names.length);
    }
    expect(/undefined|NaN|Infinity|\[object|<script|https?:/.exec(html)?.[0]).toBeUndefined();
    const text = said(html).replace(/hoops\.spacing: .*?→ \d+ in/g, "");
    expect(text).not.toMatch(system === "us" ? / m\/s|\bkN\b|\bmm\b/ : / mph|\d lb\b/);
  });

  it("fetches and runs nothing, names its house, and warns", () => {
    const html = made("us");
    expect(html).toMatch(/http-equiv="Content-Security-Policy" content="default-src 'none'; /);
    for (const words of ["Consult a licensed engineer", "Harrow Brook", "Hill top"])
      expect(said(html)).toContain(words);
    expect(html).toContain("inputs 3f9a1c20b7de");
  });
});

describe("the comparison", () => {
  const html = renderCompare(sampleCompare(), of());

  it("has a column for every house, today's first", () => {
    const head = /aria-label="Houses side by side"[\s\S]*?<\/thead>/.exec(html)?.[0] ?? "";
    const columns = [...head.matchAll(/<th scope="col">([\s\S]*?)<\/th>/g)].map(([, one]) => one);
    expect(columns).toHaveLength(8);
    expect(columns[1]).toContain("as it is");
    expect(columns[2]).toMatch(/^<bdi>1 variant 1/);
  });

  it("prints the lowest gust of every house large, rounded down", () => {
    const { today, variants } = sampleCompare();
    const large = [...html.matchAll(/<b class="big">(\d+)<\/b>/g)].map(([, one]) => Number(one));
    const lowest = [today, ...variants].map(({ states }) =>
      Math.min(...states.flatMap(({ whole, link }) => [whole.gust, link.gust])),
    );
    expect(large).toEqual(lowest.map((gust) => Math.floor(gust / 0.44704)));
  });

  it("says what has no price, and where none is given", () => {
    const text = said(html);
    expect(text).toContain("1,159 USD and what has no price: bolts");
    expect(text).toContain("no prices");
    expect(said(renderCompare(sampleCompare(), of("si")))).toContain(
      "1\u202f159\u00a0USD".replace(/[\u202f\u00a0]/g, " "),
    );
  });

  it("draws all houses to one scale", () => {
    const crowns = sampleCompare().variants.map(
      (_, place) =>
        drawn(html, `outline-${place + 1}`).match(/<polyline class="o" points="([^"]*)"/)?.[1],
    );
    expect(new Set(crowns).size).toBe(1);
    const depths = [0, 1].map((number) =>
      Number(drawn(html, `outline-${number}`).match(/<rect class="r"[^>]*height="([\d.]+)"/)?.[1]),
    );
    expect((depths[0] ?? 0) / (depths[1] ?? 1)).toBeCloseTo(1.5, 1);
  });

  it("draws every stick to scale, alike ones once, and does not print today's again", () => {
    const drawing = drawn(html, "cut-a");
    const rows = [
      ...drawing.matchAll(/<rect (?:class="r" )?x="[\d.]+" y="(\d+)" width="([\d.]+)"/g),
    ];
    const first = rows.filter(([, y]) => y === rows[0]?.[1]).map(([, , width]) => Number(width));
    const { pieces, waste } = sampleCompare().today.cuts[0]?.sticks[0] ?? { pieces: [], waste: 0 };
    const lengths = [...pieces.map(({ length }) => length), waste];
    const scale = (first[0] ?? 0) / (lengths[0] ?? 1);
    expect(first).toHaveLength(lengths.length);
    for (const [place, width] of first.entries())
      expect(Math.abs(width - scale * (lengths[place] ?? 0))).toBeLessThan(0.2);
    expect(drawing).toContain("8 ×");
    expect(said(html).match(/Cut as today/g)).toHaveLength(6);
    expect(html).not.toContain('id="cut-1b-t"');
  });

  it("says whether a plan with fewer sticks may exist, and that there is no list without lengths", () => {
    expect(said(html)).toContain("a plan with fewer sticks may exist");
    expect(said(html)).toContain("no plan for these pieces has fewer sticks");
    const sample = sampleCompare(1);
    const without = { ...sample, today: { ...sample.today, cuts: [] } };
    expect(said(renderCompare(without, of()))).toContain("so there is no cut list");
  });
});

describe("the search", () => {
  const html = renderSearch(sampleSearch(), of());

  it("says how many it looked at, and where it was stopped", () => {
    expect(said(html)).toContain("All 48000 designs asked for were looked at");
    const stopped = said(renderSearch(sampleSearch({ complete: false, looked: 9000 }), of()));
    expect(stopped).toContain("✗ Not complete");
    expect(stopped).toContain("stopped after 9000 of 48000");
  });

  it("plots steel and gust to scale, today's house as a square, those worth a look as diamonds", () => {
    const plot = drawn(html, "search-plot");
    const { unbeaten, worthALook } = sampleSearch();
    const looks = new Set(worthALook.map(({ place }) => place));
    const plain = unbeaten.filter((_, place) => !looks.has(place)).toReversed();
    const spots = [...plot.matchAll(/<circle class="o" cx="([\d.]+)" cy="([\d.]+)"/g)].map(
      ([, x, y]) => ({ x: Number(x), y: Number(y) }),
    );
    expect(spots).toHaveLength(plain.length);
    const [a, b] = [spots[0], spots.at(-1)];
    const [p, q] = [plain[0], plain.at(-1)];
    if (!(a && b && p && q)) throw new Error("nothing is plotted");
    for (const [place, spot] of spots.entries()) {
      const one = plain[place] ?? p;
      const steel = (one.steel.value - p.steel.value) / (q.steel.value - p.steel.value);
      const gust = (one.gust - p.gust) / (q.gust - p.gust);
      expect(Math.abs(spot.x - a.x - steel * (b.x - a.x))).toBeLessThan(0.2);
      expect(Math.abs(spot.y - a.y - gust * (b.y - a.y))).toBeLessThan(0.2);
    }
    expect(plot.match(/<rect class="b"/g)).toHaveLength(1);
    expect(plot.match(/<path class="f"/g)).toHaveLength(worthALook.length);
    for (const words of ["today", "A (2)", "B (6)", "C (13)"]) expect(plot).toContain(`>${words}<`);
  });

  it("names why a design is worth a look, and which keys make it", () => {
    const text = said(html);
    for (const { why } of sampleSearch().worthALook)
      expect(text).toContain(why.replace("'", "&#39;"));
    expect(text).toContain("hoops.tube.gauge : 15".replace(" :", ":").replace(":", " :"));
  });

  it("is drawn where nothing was found", () => {
    const none = renderSearch(sampleSearch({ unbeaten: [], worthALook: [], cloud: [] }), of());
    expect(unbalanced(none)).toEqual([]);
    expect(none).not.toMatch(/NaN|Infinity/);
  });

  it("keeps a design without limit on the plot", () => {
    const [first, ...others] = sampleSearch().unbeaten;
    if (!first) throw new Error("the sample is empty");
    const endless = { ...first, gust: Number.POSITIVE_INFINITY };
    const page = renderSearch(sampleSearch({ unbeaten: [endless, ...others] }), of());
    expect(page).not.toMatch(/NaN|Infinity/);
    expect(said(page)).toContain("no limit");
  });
});

describe("a length to cut", () => {
  it.each([
    [158.25, "13 ft 2-1/4 in", "4020 mm"],
    [12, "1 ft", "305 mm"],
    [9.5, "9-1/2 in", "241 mm"],
    [0.4375, "7/16 in", "11 mm"],
    [12.0625, "1 ft 1/16 in", "306 mm"],
    [287.99, "24 ft", "7315 mm"],
    [0, "0 in", "0 mm"],
  ])("of %d in reads as %s", (inches, us, si) => {
    expect(cutLength(inches * 0.0254, "us")).toBe(us);
    expect(cutLength(inches * 0.0254, "si")).toBe(si);
  });

  it("is read back to a thirty-second of an inch, or half a millimetre", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 30, noNaN: true }), (length) => {
        for (const [system, close] of [
          ["us", 0.0254 / 32],
          ["si", 0.0005],
        ] as const) {
          const read = readQuantity(cutLength(length, system), "length");
          if (!read.ok) throw new Error(cutLength(length, system));
          expect(Math.abs(read.value - length)).toBeLessThanOrEqual(close * (1 + 1e-9));
        }
      }),
      { seed: 20240601 },
    );
  });
});
