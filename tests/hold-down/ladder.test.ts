import { type RungId, type StormLadder, showWords, speedLimit } from "@hoopstay/core";
import { type Evaluation, evaluate, stormLadder } from "@hoopstay/house";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gustIn,
  holdOf,
  layout,
  mph,
  ratioInGust,
  readHouse,
  readSite,
  row,
} from "./card-sample.ts";

const paddock = readSite("sheltered-paddock");
const pasture = readSite("lind-meadow-pasture");
const harrow = evaluate(readHouse("harrow-brook"), paddock);
const lind = evaluate(readHouse("lind-meadow"), pasture);
const open = holdOf({ fitted: layout() });

const ids = ({ rungs }: StormLadder): RungId[] => rungs.map(({ id }) => id);
const gustOf = (ladder: StormLadder, id: RungId): number =>
  ladder.rungs.find((rung) => rung.id === id)?.gust ?? Number.NaN;
const told = (ladder: StormLadder): string => showWords(ladder.advice, "us");
const doors = ["front-open", "back-open", "both-open"];
const openIds = [...doors, "left-up", "right-up", "sides-up", "all-open"];
const endIds = ["front-missing", "back-missing", "ends-missing", "ends-missing-sides-up"];
const lowestOf = (evaluation: Evaluation, of: readonly string[]): number => {
  const there = evaluation.states.map(({ state }) => state.id);
  return Math.min(
    ...of.filter((id) => there.includes(id)).map((id) => gustIn(evaluation, id, "fitted")),
  );
};

describe("thresholds", () => {
  test.each([
    ["harrow-brook", harrow],
    ["lind-meadow", lind],
  ])("of %s are those of the printed states", (_, evaluation) => {
    const ladder = stormLadder(evaluation, open, null);
    const shut = gustIn(evaluation, "shut", "fitted");
    const film = gustIn(evaluation, "film-off", "fitted");
    const ends = lowestOf(evaluation, endIds);
    const expected: Partial<Record<RungId, number>> = {
      close: 0.75 * lowestOf(evaluation, openIds),
      tighten: 0.75 * gustIn(evaluation, "shut", "bare"),
      add: 0.75 * shut,
      people: 0.75 * shut,
      animals: 0.75 * shut,
      leave: Math.max(shut, film),
    };
    if (ends < shut) expected["end-walls"] = 0.75 * ends;
    if (film > shut) expected.strip = 0.75 * shut;
    expect(ids(ladder).toSorted()).toEqual(Object.keys(expected).toSorted());
    for (const { id, gust } of ladder.rungs) expect(gust).toBeCloseTo(expected[id] ?? -1, 9);
  });

  test("are gusts at which a check is just met", () => {
    const ladder = stormLadder(harrow, open, null);
    expect(ratioInGust(harrow, gustOf(ladder, "animals") / 0.75, "shut", "fitted")).toBeCloseTo(
      1,
      6,
    );
    expect(ratioInGust(harrow, gustOf(ladder, "add") / 0.75, "shut", "fitted")).toBeCloseTo(1, 6);
    expect(ratioInGust(harrow, gustOf(ladder, "tighten") / 0.75, "shut", "bare")).toBeCloseTo(1, 6);
    const loosest = Math.max(
      ...openIds.map((id) => ratioInGust(harrow, gustOf(ladder, "close") / 0.75, id, "fitted")),
    );
    expect(loosest).toBeCloseTo(1, 6);
  });

  test("rise, whatever the site", () => {
    for (const evaluation of [harrow, lind, evaluate(harrow.house, readSite("hill-top"))]) {
      const gusts = stormLadder(evaluation, open, null).rungs.map(({ gust }) => gust);
      expect(gusts.length).toBeGreaterThan(4);
      expect(gusts).toEqual(gusts.toSorted((a, b) => a - b));
    }
  });

  test("take an overloaded anchor, and not one that counts nothing", () => {
    const rows = [row("L1", "left", 5, { ratio: 9, pull: 36_000 }), row("R1", "right", -5)];
    const ladder = stormLadder(harrow, holdOf({ fitted: layout(rows, { gust: 60 }) }), null);
    // 105 mph on the map is a gust of 105 sqrt(0.51); nine times too much pull leaves a third.
    expect(gustOf(ladder, "animals") / 0.75).toBeCloseTo((105 * mph * Math.sqrt(0.51)) / 3, 9);
    const none = [row("L1", "left", 5, { ratio: Number.POSITIVE_INFINITY, allowable: 0 })];
    const kept = stormLadder(harrow, holdOf({ fitted: layout(none) }), null);
    expect(gustOf(kept, "animals") / 0.75).toBeCloseTo(gustIn(harrow, "shut", "fitted"), 9);
  });
});

describe("the forecast", () => {
  const ladder = stormLadder(harrow, open, null);
  const at = (forecast: number): StormLadder => stormLadder(harrow, open, forecast);
  const reached = (forecast: number): RungId[] =>
    at(forecast)
      .rungs.filter((rung) => rung.reached)
      .map(({ id }) => id);

  test("marks nothing where none is given, and says which gust to ask for", () => {
    expect(ladder.forecast).toBeNull();
    expect(ladder.rungs.some((rung) => rung.reached)).toBe(false);
    expect(told(ladder)).toMatch(/3-second/);
  });

  test("marks a rung at its gust and above, not below", () => {
    for (const { id, gust } of ladder.rungs) {
      expect(reached(gust)).toContain(id);
      expect(reached(gust * (1 + 1e-9))).toContain(id);
      expect(reached(gust * (1 - 1e-9))).not.toContain(id);
    }
  });

  test("of more wind never marks fewer rungs", () => {
    const speed = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(speed, speed, (a, b) => {
        const low = reached(Math.min(a, b));
        expect(reached(Math.max(a, b)).slice(0, low.length)).toEqual(low);
      }),
      { seed: 71_622, numRuns: 100 },
    );
  });

  test("below every rung asks for nothing", () => {
    expect(told(at(1 * mph))).toMatch(/^A gust of 1 mph reaches no rung/);
  });

  test("between rungs lists what to do, by when and how to leave it", () => {
    const words = told(at(gustOf(ladder, "add")));
    expect(words).toMatch(/close: front door, back door, left side, right side/);
    expect(words).toMatch(/Begin \d+(\.\d+)? h or more before/);
    expect(words).toMatch(/Leave it all shut/);
    expect(words).toMatch(/set more anchors/);
  });

  test("tells the state it stands in now where it is not shut", () => {
    const up = evaluate(harrow.house, { ...paddock, now: "sides-up" });
    expect(told(stormLadder(up, open, 30))).toMatch(/It stands now with: both sides up\./);
    expect(told(at(30))).not.toMatch(/stands now/);
  });

  test("above all rungs sends everyone away first", () => {
    const words = told(at(70));
    expect(words).toMatch(/does not hold that gust/);
    expect(words).toMatch(/Animals and people out first/);
    expect(words).not.toMatch(/Leave it all shut/);
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("of %s is refused", (forecast) => {
    expect(() => stormLadder(harrow, open, forecast)).toThrow(/out-of-range/);
  });
});

describe("stripping the cover", () => {
  test("is advised where the bare frame stands more, with both gusts", () => {
    const ladder = stormLadder(lind, open, null);
    expect(gustIn(lind, "film-off", "fitted")).toBeGreaterThan(gustIn(lind, "shut", "fitted"));
    expect(ids(ladder)).toContain("strip");
    expect(ladder.cautions.join()).not.toMatch(/Do not strip/);
    const words = told(stormLadder(lind, open, gustOf(ladder, "strip")));
    expect(words).toMatch(/Leave it with the film off/);
  });

  test("is not advised where the bare frame gives way earlier", () => {
    const ladder = stormLadder(harrow, open, null);
    expect(gustIn(harrow, "film-off", "fitted")).toBeLessThan(gustIn(harrow, "shut", "fitted"));
    expect(ids(ladder)).not.toContain("strip");
    expect(ladder.cautions.join()).toMatch(/Do not strip the cover.*It would make it worse/);
    expect(told(stormLadder(harrow, open, 70))).not.toMatch(/strip/);
  });

  test("is not spoken of where the film does not come off", () => {
    const fixed = evaluate({ ...lind.house, filmRemovable: false }, pasture);
    const ladder = stormLadder(fixed, open, null);
    expect(ids(ladder)).not.toContain("strip");
    expect(ladder.cautions.join()).not.toMatch(/strip/);
  });
});

describe("odd houses", () => {
  test("no anchors: set some; there is nothing to tighten", () => {
    const bare = evaluate({ ...harrow.house, anchors: [] }, paddock);
    const ladder = stormLadder(bare, holdOf(), null);
    expect(ids(ladder)).not.toContain("tighten");
    expect(ladder.rungs.find(({ id }) => id === "add")?.does).toMatch(/no anchor is fitted/);
    expect(gustOf(ladder, "add")).toBeCloseTo(0.75 * gustIn(bare, "shut", "bare"), 9);
  });

  test("nothing holds even in calm air", () => {
    const steep = { angle: 0.4, downhill: [0, 1] as const };
    const sliding = evaluate({ ...harrow.house, anchors: [] }, { ...paddock, slope: steep });
    const ladder = stormLadder(sliding, holdOf(), null);
    expect(gustIn(sliding, "shut", "bare")).toBe(0);
    expect(gustOf(ladder, "leave")).toBe(0);
    expect(told(ladder)).toMatch(/does not hold even in calm air/);
    expect(stormLadder(sliding, holdOf(), 0).rungs.every((rung) => rung.reached)).toBe(true);
  });

  test("only given states: the least open one is the one to leave it in", () => {
    const given = [
      { id: "summer", words: "as in summer", openings: { left: 8, right: 8, front: 0, back: 0 } },
      { id: "winter", words: "as in winter", openings: { left: 0.2, right: 0, front: 0, back: 0 } },
    ].map((one) => ({ ...one, openings: { ...one.openings, roof: 0 }, missing: [] }));
    const house = { ...harrow.house, givenStates: given, onlyGivenStates: true };
    const evaluation = evaluate(house, { ...paddock, now: "summer" });
    const ladder = stormLadder(evaluation, open, null);
    expect(gustOf(ladder, "add")).toBeCloseTo(0.75 * gustIn(evaluation, "winter", "fitted"), 9);
    expect(told(stormLadder(evaluation, open, gustOf(ladder, "add")))).toMatch(/as in winter/);
  });

  test("nothing opens: no rung for closing", () => {
    const sealed = { ...harrow.house, openings: [], removableEnds: [] };
    const ladder = stormLadder(evaluate(sealed, paddock), open, null);
    expect(ids(ladder)).not.toContain("close");
    expect(ids(ladder)).not.toContain("end-walls");
    expect(ids(ladder)).toContain("add");
  });

  test("anchors that nobody checked all at once are said to be so", () => {
    expect(stormLadder(harrow, holdOf(), null).cautions.join()).toMatch(/not checked all at once/);
    expect(stormLadder(harrow, open, null).cautions.join()).not.toMatch(/not checked all at once/);
  });

  test("hostile names go through untouched", () => {
    const name = '</script><b>"house"\u202e';
    const odd = evaluate({ ...harrow.house, name }, { ...paddock, name: `${name}2` });
    const ladder = stormLadder(odd, open, 20);
    expect([ladder.house, ladder.site]).toEqual([name, `${name}2`]);
  });
});

describe("what is shown", () => {
  test("US words stand at the gusts of the notes, with their source", () => {
    const { landmarks, hoursCitation } = stormLadder(harrow, open, null);
    const inMph = landmarks.map(({ from, to }) => [from / mph, to === null ? null : to / mph]);
    expect(inMph.flat().map((one) => (one === null ? null : Math.round(one)))).toEqual([
      46,
      57,
      58,
      null,
    ]);
    expect(landmarks[0]?.from).toBeCloseTo(46 * mph, 9);
    for (const { citation } of landmarks) expect(citation.source).toBe("us-wind-words");
    expect(hoursCitation.source).toBe("common-practice");
  });

  test.each(["us", "si"] as const)("a limit in a sentence is never rounded up (%s)", (system) => {
    const unit = system === "us" ? mph : 1;
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 80, noNaN: true }), (gust) => {
        const shown = Number.parseFloat(showWords([speedLimit(gust)], system));
        expect(shown * unit).toBeLessThanOrEqual(gust * (1 + 1e-9) + 1e-9);
        expect((shown + 1) * unit).toBeGreaterThan(gust);
      }),
      { seed: 71_622, numRuns: 200 },
    );
  });

  test("hours are ranges", () => {
    for (const { hours } of stormLadder(harrow, open, null).rungs) {
      expect(hours.low).toBeGreaterThanOrEqual(0);
      expect(hours.high).toBeGreaterThan(hours.low);
    }
  });
});
