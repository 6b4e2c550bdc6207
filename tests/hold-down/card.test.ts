import { type HoldReview, type MoveCard, showWords, type Words } from "@hoopstay/core";
import { type Evaluation, evaluate, moveCard } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import {
  gustIn,
  holdOf,
  kind,
  layout,
  meta,
  mph,
  ratioInGust,
  readHouse,
  readSite,
  row,
  sixRows,
} from "./card-sample.ts";

const paddock = readSite("sheltered-paddock");
const house = readHouse("harrow-brook");
const harrow = evaluate(house, paddock);
const lind = evaluate(readHouse("lind-meadow"), readSite("lind-meadow-pasture"));
const bare = evaluate({ ...house, anchors: [] }, paddock);
const strong = { ...paddock, mapSpeed: 40 * mph, speed: 40 * mph };
const held = {
  ...house,
  anchors: house.anchors.map((anchor) => ({ ...anchor, pull: 6 * anchor.pull })),
};
const easy = evaluate(held, strong);

const openIds = harrow.states
  .map(({ state }) => state)
  .filter(({ filmOn, id }) => filmOn && id !== "shut")
  .map(({ id }) => id);

const fitted = holdOf({ fitted: layout() });
const cardOf = (evaluation: Evaluation, hold: HoldReview = fitted): MoveCard =>
  moveCard(evaluation, hold, meta);
const say = (words: Words): string => showWords(words, "us");
const answer = (card: MoveCard, ask: RegExp): string =>
  say(card.questions.find((one) => ask.test(one.ask))?.answer ?? []);
const untils = (card: MoveCard): string => card.doNotUnhook.map(say).join("\n");

describe("six questions", () => {
  const nothingKnown = readSite("sheltered-paddock", {}, [
    "exposure",
    "elevation",
    "ground",
    "front_faces",
    "now",
    "services_located",
  ]);
  const sites = [paddock, nothingKnown, readSite("hill-top"), readSite("lind-meadow-pasture")];
  test("are always six and never blank", () => {
    for (const site of sites) {
      for (const words of [["Soil class 3."], []]) {
        const hold = holdOf({ ground: { words, clues: [], findOut: [] } });
        const { questions } = cardOf(evaluate(house, site), hold);
        expect(questions).toHaveLength(6);
        expect(new Set(questions.map(({ ask }) => ask)).size).toBe(6);
        for (const one of questions) {
          expect(one.ask).toMatch(/\?$/);
          expect(say(one.answer)).toMatch(/\w.*\.$/);
        }
      }
    }
  });

  test("tell what is not known, what is assumed, and which way that errs", () => {
    const hold = holdOf({ ground: { words: [], clues: [], findOut: [] } });
    const card = cardOf(evaluate(house, nothingKnown), hold);
    expect(answer(card, /hard/)).toMatch(/assumed wet, safe side.*assumed slippery, safe side/);
    expect(answer(card, /steep/)).toMatch(/assumed level, which is not the safe side/);
    expect(answer(card, /open/)).toMatch(/assumed open field.*assumed none, not the safe side/);
    expect(answer(card, /front face/)).toMatch(/Not known: assumed/);
    expect(answer(card, /buried/)).toMatch(/Not known: assumed under every anchor, safe side/);
    expect(answer(card, /wind/)).toMatch(/not known, ask.*design.*105 mph.*never compared/i);
  });

  test("tell what is known", () => {
    const card = cardOf(evaluate(house, readSite("hill-top")));
    // Downhill to the south, the front to the south-west: 45 degrees to the left of it.
    expect(answer(card, /steep/)).toMatch(/falling to the house's front left \(S\)\.$/);
    expect(answer(card, /open/)).toMatch(/open field.*ridge, 90 ft high, 60 ft from its crest/);
    expect(answer(card, /front face/)).toBe("The front faces SW.");
    expect(answer(card, /hard/)).toMatch(/^Soil class 4B/);
    expect(answer(cardOf(lind), /wind/)).toMatch(/^A gust of 49.2 mph/);
    expect(answer(cardOf(harrow), /buried/)).toMatch(/^Located/);
    const not = evaluate(house, { ...paddock, servicesLocated: false });
    expect(answer(cardOf(not), /buried/)).toMatch(/^Not located: set no anchor/);
  });

  test("a slope whose fall is unknown takes the worst", () => {
    const site = readSite("sheltered-paddock", { slope: { angle: "4 deg" } });
    expect(answer(cardOf(evaluate(house, site)), /steep/)).toMatch(/^4°, .*worst way.*safe side/);
  });
});

describe("gusts", () => {
  test("loose and done are those of the printed states", () => {
    const card = cardOf(harrow);
    const lowest = Math.min(...openIds.map((id) => gustIn(harrow, id, "bare")));
    expect(card.gustLoose).toBeCloseTo(lowest, 9);
    expect(card.gustShutLoose).toBeCloseTo(gustIn(harrow, "shut", "bare"), 9);
    expect(card.gustDone).toBeCloseTo(gustIn(harrow, "shut", "fitted"), 9);
    const state = harrow.states.find((one) => one.state.words === card.looseState)?.state.id ?? "";
    expect(ratioInGust(harrow, card.gustLoose, state, "bare")).toBeCloseTo(1, 6);
    expect(ratioInGust(harrow, card.gustDone, "shut", "fitted")).toBeCloseTo(1, 6);
  });

  test("loose is never above shut and loose", () => {
    const sealed = evaluate({ ...house, openings: [], removableEnds: [] }, paddock);
    expect(cardOf(sealed).gustLoose).toBe(cardOf(sealed).gustShutLoose);
    for (const one of [harrow, lind]) {
      expect(cardOf(one).gustLoose).toBeLessThanOrEqual(cardOf(one).gustShutLoose);
    }
  });

  test("a layout still to be set goes through the single checks as if it were fitted", () => {
    const rows = house.anchors.map(({ name, side, x, y, pull, toward }) =>
      row(name, side, y, {
        across: x,
        allowable: pull,
        angle: Math.asin(-toward[2]),
        // Only the direction counts, whatever its length.
        toward: [3 * toward[0], 3 * toward[1]],
      }),
    );
    const card = cardOf(bare, holdOf({ kinds: [kind(layout(rows))] }));
    expect(card.gustDone).toBeCloseTo(gustIn(harrow, "shut", "fitted"), 6);
    expect(card.plan).toBe("4 in screw anchor");
    const weaker = rows.map((one) => ({ ...one, allowable: one.allowable / 2 }));
    expect(cardOf(bare, holdOf({ kinds: [kind(layout(weaker))] })).gustDone).toBeLessThan(
      card.gustDone,
    );
  });

  test("without a layout no anchor counts", () => {
    const none = cardOf(harrow, holdOf());
    expect(none.gustDone).toBe(none.gustShutLoose);
    expect(none.plan).toBeNull();
  });
});

describe("anchors", () => {
  const order = (card: MoveCard): string[] => card.anchors.map(({ name }) => name);

  test("go from the hardest pulled corner to the one across, then the others, then inward", () => {
    const card = cardOf(harrow);
    expect(order(card)).toEqual(["R3", "L1", "L3", "R1", "L2", "R2"]);
    expect(card.order).toMatch(/greatest pull/);
  });

  test("start on a slope with the corner that holds most against running", () => {
    const rows = sixRows.map((one) =>
      one.name === "L3" ? { ...one, toward: [0, -1] as const } : one,
    );
    const site = readSite("sheltered-paddock", { slope: { angle: "3 deg", downhill: "SE" } });
    const card = cardOf(evaluate(house, site), holdOf({ fitted: layout(rows) }));
    expect(order(card).slice(0, 2)).toEqual(["L3", "R1"]);
    expect(card.order).toMatch(/running downhill/);
  });

  test("all come, each once, whatever rails they are on", () => {
    const lists = [
      [row("M", "middle", 6), row("L", "left", 1)],
      [row("M1", "middle", 6), row("M2", "middle", -6)],
      sixRows,
    ];
    for (const rows of lists) {
      const names = order(cardOf(harrow, holdOf({ fitted: layout(rows) })));
      expect(names.toSorted()).toEqual(rows.map(({ name }) => name).toSorted());
    }
  });

  test("are the first kind that holds where none is fitted", () => {
    const other = [row("K1", "left", 3), row("K2", "right", -3)];
    const kinds = [kind(null), kind(layout(other), { id: "plate", words: "driven plate" })];
    const card = cardOf(bare, holdOf({ kinds }));
    expect(order(card).toSorted()).toEqual(["K1", "K2"]);
    expect(card.plan).toBe("driven plate");
    expect(card.anchors[0]?.proof).toBe(2500);
  });

  test("are none where nothing rated holds, and the card says what to find out", () => {
    const card = cardOf(bare, holdOf({ kinds: [kind(null)] }));
    expect(card.anchors).toEqual([]);
    expect(card.go).toBe(false);
    expect(say(card.headline)).toMatch(
      /no rated anchor holds it here\. Find out first: Pull tests/,
    );
    expect(untils(card)).toMatch(/no anchor to set/);
  });
});

describe("go or no-go", () => {
  test("go where layout, single checks and least load hold", () => {
    const card = cardOf(easy);
    expect(gustIn(easy, "shut", "fitted")).toBeGreaterThan(40 * mph * Math.sqrt(0.51));
    expect(card.go).toBe(true);
    expect(say(card.headline)).toMatch(
      /^Go: .*40 mph design speed\)\. Shut it before you unhook\.$/,
    );
    expect(untils(card)).not.toMatch(/Buried/);
    const unknown = cardOf(evaluate(held, { ...strong, servicesLocated: null }));
    expect(unknown.go).toBe(false);
    expect(say(unknown.headline)).toMatch(/No go before buried pipes and cables are located/);
    expect(say(unknown.doNotUnhook[0] ?? [])).toMatch(/^Buried pipes and cables have been located/);
  });

  test.each([
    ["the layout fails", easy, holdOf({ fitted: layout(sixRows, { holds: false }) })],
    ["the single checks fail", harrow, fitted],
    ["services are not located", evaluate(held, { ...strong, servicesLocated: false }), fitted],
    ["the least load is not carried", evaluate(house, strong), fitted],
  ])("no-go where %s", (_, evaluation, hold) => {
    const card = cardOf(evaluation, hold);
    expect(card.go).toBe(false);
    expect(say(card.headline)).toMatch(/^No go/);
  });

  test("no-go where a gust is coming that it does not stand loose", () => {
    const loose = Math.min(...openIds.map((id) => gustIn(harrow, id, "bare")));
    const blown = (speed: number): MoveCard =>
      cardOf(
        evaluate(house, { ...paddock, basis: "gust", speed, mapSpeed: speed / Math.sqrt(0.51) }),
      );
    expect(blown(0.74 * loose).go).toBe(true);
    expect(say(blown(0.74 * loose).headline)).toMatch(/does not carry the standard's least wind/);
    expect(blown(0.76 * loose).go).toBe(false);
    expect(say(blown(0.76 * loose).headline)).toMatch(/Move it when the wind is over/);
    expect(untils(blown(0.76 * loose))).toMatch(/is over: loose, no gust may be above/);
  });
});

describe("do not unhook until", () => {
  test("every anchor is set, proved and tight, the house shut, the wind low", () => {
    const words = untils(cardOf(harrow));
    expect(words).toMatch(/All 6 anchors of this card are set.*proved.*held 10 minutes/);
    expect(words).toMatch(/2 in up or 3 in sideways/);
    expect(words).toMatch(/It is shut/);
    expect(words).toMatch(/The slope has been measured/);
    const limit = Number(words.match(/No gust above ([\d.]+) mph/)?.[1]);
    expect(limit * mph).toBeLessThanOrEqual(0.75 * cardOf(harrow).gustLoose);
    expect((limit + 1) * mph).toBeGreaterThan(0.75 * cardOf(harrow).gustLoose);
  });

  test("on a slope: chocks; where it can run by itself, a slack bridle too", () => {
    const on = (percent: string): string => {
      const slope = { angle: percent, downhill: "S" };
      return untils(cardOf(evaluate(house, readSite("sheltered-paddock", { slope }))));
    };
    // Wet grass counts 0.15: a slope of 14 % is below it, 16 % is above.
    expect(on("14 %")).toMatch(/skids are chocked/);
    expect(on("14 %")).not.toMatch(/bridle/);
    expect(on("16 %")).toMatch(/bridle is slack and the wheels are chocked/);
    expect(on("16 %")).toMatch(/does not hold even in calm air/);
  });

  test("nothing to shut is not asked for", () => {
    const sealed = evaluate({ ...house, openings: [], removableEnds: [] }, paddock);
    expect(cardOf(sealed).close).toEqual([]);
    expect(untils(cardOf(sealed))).not.toMatch(/It is shut/);
  });
});

describe("close, buy, beware", () => {
  test("closes what this house has", () => {
    const { close } = cardOf(lind);
    expect(close).toContain("front door: shut and latched");
    expect(close).toContain("left side: rolled down and fastened");
    expect(close.join()).not.toMatch(/back door|vents/);
  });

  test("buys anchors and marked links for a layout still to be set", () => {
    const { shopping } = cardOf(bare, holdOf({ kinds: [kind(layout())] }));
    expect(shopping[0]).toMatchObject({ what: "4 in screw anchor", count: 6, atLeast: null });
    const links = shopping.slice(1);
    expect(links).toHaveLength(3);
    for (const link of links) expect(link).toMatchObject({ count: 6, atLeast: 3250 });
    expect(links.filter(({ why }) => /not known/.test(why)).map(({ what }) => what)).toEqual([
      "eye or clevis at the anchor",
    ]);
  });

  test("asks for the links of anchors whose pull was entered", () => {
    const { shopping } = cardOf(harrow);
    expect(shopping.map(({ count }) => count)).toEqual([6, 6, 6]);
    expect(shopping.every(({ atLeast }) => atLeast !== null && atLeast >= 2600)).toBe(true);
  });

  test("ballast must be tied", () => {
    const ballast = [
      {
        beside: false,
        words: ["Barrels."],
        pieces: [{ what: "water barrel", perRail: 4 }],
        where: ["On the skids."],
        holds: true,
      },
    ];
    const [first] = cardOf(bare, holdOf({ ballast })).shopping;
    expect(first).toMatchObject({ what: "water barrel", count: 8 });
    expect(first?.why).toMatch(/must be tied/);
    const lying = [{ what: "blocks", weight: 500, fixed: false, x: 0, y: 0, z: 0 }];
    const tied = cardOf(evaluate({ ...house, ballast: lying }, paddock)).shopping.at(-1);
    expect(tied?.what).toMatch(/blocks/);
    expect(tied?.why).toMatch(/loose ballast counts nothing/);
  });

  test("utilities come first among the cautions, once, and findings of the kind are told", () => {
    const { cautions } = cardOf(bare, holdOf({ kinds: [kind(layout())] }));
    expect(cautions[0]).toMatch(/^Locate buried services/);
    expect(cautions.filter((one) => /buried services/.test(one))).toHaveLength(1);
    expect(cautions).toContain("The plate lies above the frost line.");
    expect(cautions.join()).toMatch(/licensed engineer/);
  });

  test("carries date, digest, version and names untouched", () => {
    const name = '</script><b>"house"\u202e';
    const odd = evaluate({ ...house, name }, { ...paddock, name: `${name}2` });
    expect(cardOf(odd)).toMatchObject({
      house: name,
      site: `${name}2`,
      date: "2026-11-12",
      digest: "d1g3st",
      version: "9.8.7",
    });
  });
});
