import { measured } from "@hoopstay/core";
import { renderCard, renderLadder, renderReport } from "@hoopstay/report";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread } from "../../packages/report/src/drawing/spread.ts";
import { sampleDrawings } from "./sample-drawings.ts";
import { sampleCard, sampleHold, sampleLadder, sampleLayout } from "./sample-hold.ts";
import { sampleReview } from "./sample-review.ts";
import { unbalanced } from "./unbalanced.ts";
import { withoutData } from "./without-data.ts";

const us = { system: "us" } as const;
const stamp = { date: null, digest: "3f9a1c20b7de4458a1", version: "0.1.0" };
const drawings = sampleDrawings();
const reportOf = (hold = sampleHold(), system: "us" | "si" = "us"): string =>
  renderReport(sampleReview({ hold, ladder: sampleLadder() }, 5), { system }).html;
const cardOf = (...changes: Parameters<typeof sampleCard>): string =>
  renderCard(sampleCard(...changes), drawings, us);
const ladderOf = (...changes: Parameters<typeof sampleLadder>): string =>
  renderLadder(sampleLadder(...changes), { ...us, stamp });

/** What a reader without pictures gets: markup taken out. */
const said = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");

describe.each([
  ["report", reportOf()],
  ["report in SI", reportOf(sampleHold(), "si")],
  ["card", cardOf()],
  ["ladder", ladderOf()],
  ["ladder without forecast", ladderOf(null)],
])("%s", (_, html) => {
  it("is well formed, with every id once", () => {
    expect(unbalanced(html)).toEqual([]);
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(
      /undefined|NaN|Infinity|\[object|<script|https?:/.exec(withoutData(html))?.[0],
    ).toBeUndefined();
  });

  it("names every region once, and every table has a caption and headings", () => {
    const labels = [...html.matchAll(/ aria-label="([^"]*)"/g)].map(([, label]) => label);
    expect(new Set(labels).size).toBe(labels.length);
    const tables = html.match(/<table[\s\S]*?<\/table>/g) ?? [];
    for (const table of tables) {
      expect(table).toMatch(/<caption>\S/);
      expect(table).toContain('<th scope="col">');
    }
  });

  it("fetches and runs nothing, by its own policy", () => {
    expect(html).toMatch(/http-equiv="Content-Security-Policy" content="default-src 'none'; /);
    expect(html).toContain("Consult a licensed engineer");
  });
});

describe("the sheet of what holds it here", () => {
  it("is left out where nothing was worked out", () => {
    const { html } = renderReport(sampleReview({}, 5), us);
    expect(html).not.toContain('id="hold"');
    expect(html).not.toContain('id="storm"');
    expect(html).toContain("Sheet 1 of 8");
  });

  it("comes right after the answer, the ladder after it", () => {
    const sheets = [...reportOf().matchAll(/<section class="sheet" id="([^"]*)"/g)];
    expect(sheets.slice(0, 4).map(([, id]) => id)).toEqual([
      "answer",
      "hold",
      "storm",
      "governing",
    ]);
  });

  it("prints the forces in balance so that the six columns can be added", () => {
    const html = reportOf();
    const table = /<table class="[^"]*proof"[\s\S]*?<\/table>/.exec(html)?.[0] ?? "";
    const rows = [...table.matchAll(/<tr><th scope="row">[\s\S]*?<\/tr>/g)];
    expect(rows).toHaveLength(2 + 4 + 2 + 1);
    for (const [row] of rows) expect(row.match(/<td>/g)).toHaveLength(8);
  });

  it("tells states by words", () => {
    const text = said(reportOf());
    for (const words of ["✗ does not hold", "not rated", "none holds", "? doubtful", "✗ no"]) {
      expect(text).toContain(words);
    }
  });

  it("says so where nothing is fitted, rated, pulled or towed", () => {
    const bare = sampleHold({
      fitted: null,
      kinds: [],
      ballast: [],
      tow: null,
      pulls: { kinds: [], next: [] },
    });
    const text = said(reportOf(bare));
    for (const words of ["Nothing is fitted", "No pull tests", "No ballast was worked out"]) {
      expect(text).toContain(words);
    }
  });

  it("says that no limit was found where there is none", () => {
    const layout = sampleLayout(4);
    const endless = { ...layout.joint, gust: Number.POSITIVE_INFINITY, factor: Infinity };
    const html = reportOf(sampleHold({ fitted: { ...layout, joint: endless } }));
    expect(said(html)).toMatch(/any multiple of the design wind, a working gust of no limit/);
  });
});

describe("the move card", () => {
  it("has everything the person on the ground needs", () => {
    const card = sampleCard();
    const text = said(cardOf());
    for (const { ask } of card.questions) expect(text).toContain(ask.replaceAll("'", "&#39;"));
    for (const item of [...card.close, card.order, card.looseState]) expect(text).toContain(item);
    for (const { what, count } of card.shopping) expect(text).toContain(`${count} × ${what}`);
    for (const part of ["Do not unhook until", "DO NOT GO", "2026-11-12", "3f9a1c20b7de"]) {
      expect(text).toContain(part);
    }
    expect(cardOf().match(/<span class="tick">/g)).toHaveLength(card.anchors.length);
  });

  it("rounds a gust it stands down, never up", () => {
    // 6.7 m/s is 14.99 mph, 7.6 is 17.0007 and 33.2 is 74.27.
    expect(cardOf().match(/<dd>\d+ mph<\/dd>/g)).toEqual([
      "<dd>14 mph</dd>",
      "<dd>17 mph</dd>",
      "<dd>74 mph</dd>",
    ]);
    expect(cardOf(5, { gustDone: Number.POSITIVE_INFINITY })).toContain("<dd>no limit</dd>");
  });

  it("marks an anchor pulled beyond what it may carry, and says what the mark is", () => {
    const text = said(cardOf());
    expect(text).toContain("✗: more than this anchor may carry");
    expect(text.match(/✗ 1,150/g)).toHaveLength(2);
    const good = sampleCard(5).anchors.map((one) => ({ ...one, ratio: 0.9 }));
    expect(said(cardOf(5, { anchors: good }))).not.toContain("may carry");
  });

  it("says so where no anchor is known to hold", () => {
    expect(said(cardOf(0))).toContain("No anchors: none is known to hold here.");
  });

  it("draws the plan to scale: places on paper are places on the ground", () => {
    const { anchors } = sampleCard();
    const spots = [...cardOf().matchAll(/<circle class="f" cx="([\d.]+)" cy="([\d.]+)"/g)].map(
      ([, x, y]) => ({ x: Number(x), y: Number(y) }),
    );
    expect(spots).toHaveLength(anchors.length);
    const across = (at: number) => anchors[at]?.across ?? 0;
    const along = (at: number) => anchors[at]?.along ?? 0;
    const [one, other, last] = [0, 1, anchors.length - 1];
    const scale = ((spots[other]?.x ?? 0) - (spots[one]?.x ?? 0)) / (across(other) - across(one));
    for (const [place, spot] of spots.entries()) {
      const wanted = (along(last) - along(place)) * scale;
      expect(Math.abs((spots[last]?.y ?? 0) - spot.y + wanted)).toBeLessThan(0.3);
    }
  });
});

describe("the storm ladder", () => {
  /** Gust in m/s and height on the page of every rung, strongest first. */
  const heights = (html: string): number[] =>
    [...html.matchAll(/<path class="[ou]" d="M52,([\d.]+)L84,\1"/g)].map(([, y]) => Number(y));

  it("is drawn to the scale of the gust", () => {
    const gusts = sampleLadder()
      .rungs.map(({ gust }) => gust)
      .toReversed();
    const places = heights(ladderOf());
    expect(places).toHaveLength(gusts.length);
    const [first = 0, last = 0] = [gusts[0], gusts.at(-1)];
    const [top = 0, foot = 0] = [places[0], places.at(-1)];
    const perGust = (foot - top) / (first - last);
    for (const [place, gust] of gusts.entries()) {
      const wanted = top + (first - gust) * perGust;
      expect(Math.abs((places[place] ?? 0) - wanted)).toBeLessThan(0.2);
    }
  });

  it("marks the forecast, and which rungs it reaches, in words", () => {
    const text = said(ladderOf());
    expect(text).toContain("◀ forecast 45 mph");
    expect(text.match(/■ reached/g)).toHaveLength(2 * 3);
    expect(text.match(/□ not reached/g)).toHaveLength(2 * 2);
    expect(said(ladderOf(null))).toContain("No forecast was given");
    expect(ladderOf(null)).not.toContain("◀");
  });

  it("says how long each rung takes", () => {
    const text = said(ladderOf());
    for (const hours of ["15 to 30 min", "30 min to 1 h", "3 to 6 h"])
      expect(text).toContain(hours);
  });

  it("keeps a rung without limit off the drawing and in the table", () => {
    const sample = sampleLadder();
    const [first, ...others] = sample.rungs;
    const endless = { ...(first as (typeof others)[number]), gust: Number.POSITIVE_INFINITY };
    const ladder = { ...sample, rungs: [...others, endless] };
    const html = renderLadder(ladder, { ...us, stamp });
    expect(heights(html)).toHaveLength(others.length);
    expect(said(html)).toContain("no limit");
  });

  it("draws a house without any rung", () => {
    const none = { ...sampleLadder(null), rungs: [], landmarks: [] };
    expect(unbalanced(renderLadder(none, { ...us, stamp }))).toEqual([]);
  });
});

it("places labels in order, apart from each other, and within the drawing where there is room", () => {
  const label = fc.record({
    at: fc.double({ min: 0, max: 400, noNaN: true }),
    room: fc.double({ min: 1, max: 40, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(label, { maxLength: 10 }), (labels) => {
      const wanted = labels.toSorted((one, other) => one.at - other.at);
      const places = spread(wanted, 0, 400);
      for (const [place, spot] of places.entries()) {
        const { at = 0, room = 0 } = wanted[place - 1] ?? {};
        expect(at).toBeLessThanOrEqual(wanted[place]?.at ?? 0);
        if (place > 0) expect(spot - (places[place - 1] ?? 0)).toBeGreaterThanOrEqual(room - 1e-9);
        expect(spot).toBeGreaterThanOrEqual(-1e-9);
        expect(spot).toBeLessThanOrEqual(400 + 1e-9);
      }
      const apart = wanted.every(
        ({ at }, place) =>
          place === 0 || at - (wanted[place - 1]?.at ?? 0) >= (wanted[place - 1]?.room ?? 0),
      );
      if (apart) expect(places).toEqual(wanted.map(({ at }) => at));
    }),
    { seed: 20_261_112 },
  );
});

it("shows a measured value of the card in the reader's units", () => {
  const headline = ["A gust of ", measured(20, "speed", 2), " is coming."];
  expect(said(cardOf(5, { headline }))).toContain("A gust of 45 mph is coming.");
});
