import { evaluate, type House, holdReview, rateKind, type Site } from "@hoopstay/house";
import { describe, expect, test } from "vitest";
import { readHouse, readSite } from "./card-sample.ts";
import { level, sloping } from "./example-house.ts";

const pound = 4.4482216152605;

const kindOf = (house: House, id: string) => {
  const kind = house.anchorKinds.find((one) => one.id === id);
  if (!kind) throw new Error(`no kind ${id}`);
  return kind;
};
const screw = kindOf(level.house, "screw");
const allowable = (site: Site, kind = screw, angle = kind.angle): number | null => {
  const found = rateKind(kind, site, angle).allowable;
  return found === null ? null : found / pound;
};

/** A place of which nothing is told but its wind. */
const untold: Site = {
  ...level.site,
  pulls: [],
  soilClass: null,
  clues: [],
  soil: {
    basis: "presumptive",
    soilClass: null,
    likeness: "unknown",
    measured: "dry",
    state: { wetness: "wet" },
  },
};

describe("what an anchor counts here", () => {
  test("by hand, EN 1990 D7: three pulls of 3900, 4400 and 4150 lb, wet, repeated", () => {
    // Logarithms: mean 8.32965; deviation 0.0603, not below that of V = 0.10: 0.09975.
    // k_n = 2.920 sqrt(4/3) = 3.372; X_k = exp(8.32965 - 3.372 x 0.09975) = 2961 lb; over 1.5.
    expect(allowable(level.site)).toBeCloseTo(2961.3 / 1.5, 0);
    expect(rateKind(screw, level.site, screw.angle).basis).toBe("pull tests");
  });

  test("where not every anchor is proved the factor is 2, and mean and lowest may count more", () => {
    // Mean 4150 / 1.2 = 3458 lb, half of it 1729; 2961 / 2 = 1481.
    const site = { ...level.site, everyAnchorProved: false };
    expect(allowable(site)).toBeCloseTo(4150 / 1.2 / 2, 6);
  });

  test("a strap weaker than the ground governs, and links not given are named", () => {
    const kind = { ...screw, links: { tether: { workingLoadLimit: 1000 * pound } } };
    const rating = rateKind(kind, level.site, kind.angle);
    expect((rating.allowable ?? 0) / pound).toBeCloseTo(1000, 9);
    expect(rating.governs).toBe("tether");
    expect(rating.notChecked).toEqual(["eye", "attachment"]);
  });

  test.each([
    ["pulled at another angle", { angle: Math.PI / 2 }],
    ["pulled in frozen ground", { ground: "frozen" }],
    ["pulled at another place", { place: "elsewhere" }],
    ["of another kind", { anchorKind: "deadman" }],
  ] as const)("a test %s does not count: unknown ground then asks for one", (_, change) => {
    const pulls = level.site.pulls.map((one) => ({ ...one, ...change }));
    const rating = rateKind(screw, { ...level.site, pulls }, screw.angle);
    expect(rating.allowable).toBeNull();
    expect(rating.reason).toMatch(/unknown.*pull_tests/);
  });

  test("a better class never counts less", () => {
    const found = (["4B", "4A", "3", "2"] as const).map((soilClass) => {
      const soil = { ...sloping.site.soil, soilClass } as Site["soil"];
      return allowable({ ...sloping.site, soilClass, soil }) ?? Number.NaN;
    });
    expect(found).toEqual([...found].sort((a, b) => a - b));
  });

  test("a slanted upright shaft in wet ground without a stabiliser is not rated", () => {
    const soil = { ...sloping.site.soil, state: { wetness: "wet" } } as Site["soil"];
    const rating = rateKind({ ...screw, upright: true }, { ...sloping.site, soil }, screw.angle);
    expect(rating.allowable).toBeNull();
    expect(rating.reason).toMatch(/slanted pull/);
  });

  test("on ice a block on a tether holds nothing", () => {
    const block = kindOf(level.house, "block");
    expect(allowable({ ...level.site, friction: 0 }, block)).toBeNull();
  });
});

describe("anchors that name their kind", () => {
  const named: House = {
    ...level.house,
    anchors: level.house.anchors.map((anchor) => ({ ...anchor, kind: "screw", pull: 0 })),
  };

  test("carry what the ground lets them", () => {
    const { house } = evaluate(named, level.site);
    for (const { pull } of house.anchors) expect(pull / pound).toBeCloseTo(2961.3 / 1.5, 0);
  });

  test("count nothing where nothing rates them, and the review says so", () => {
    const evaluation = evaluate(named, untold);
    expect(evaluation.house.anchors.every(({ pull }) => pull === 0)).toBe(true);
    const bare = evaluate({ ...named, anchors: [] }, untold);
    const lift = (one: typeof bare, hold: "bare" | "fitted") =>
      one.states[0]?.set.governing.find((held) => held.hold === hold)?.checks[0]?.byRatio.ratio;
    expect(lift(evaluation, "fitted")).toBe(lift(bare, "bare"));
    const { fitted } = holdReview(evaluation, { search: false });
    expect(fitted?.holds).toBe(false);
    expect(fitted?.remarks.flat().join(" ")).toContain("Not counted: L1");
  });
});

test("a site with no ground information says what to find out and how, and stays cautious", () => {
  const { kinds, ground, holds } = holdReview(evaluate(level.house, untold), { search: true });
  expect(holds).toBe(false);
  const screwed = kinds.find(({ id }) => id === "screw");
  expect(screwed?.allowable).toBeNull();
  expect(screwed?.every).toBeNull();
  const open = ground.findOut.flat().join(" ");
  expect(open).toContain("pull_tests");
  expect(open).toContain("ground.feel");
});

test("frozen ground counts no friction, and is rated as wet", () => {
  const change = { ground: { kind: "sand", wet: "no", frozen: "yes", soil_class: "4A" } };
  const site = readSite("hill-top", change);
  expect(site.friction).toBe(0);
  expect(site.wet).toBe(true);
});

test("a water container counts by its fill, or nothing if it could be gone", () => {
  const water = { volume: "275 gal", fill: "80 %", closed: "yes", level_seen: "yes" };
  const tank = (may_flood_or_drain: string) => {
    const at = { along: "0 ft" };
    const ballast = [{ what: "tank", at, fixed: "yes", water: { ...water, may_flood_or_drain } }];
    return readHouse("harrow-brook", { ballast }).ballast[0]?.weight ?? Number.NaN;
  };
  // 62.4 pcf: 275 gal are 36.76 ft3 and 2294 lb; 80 % of it is 1835 lb.
  expect(tank("no") / pound).toBeCloseTo(0.8 * 62.4 * ((275 * 231) / 1728), 6);
  expect(tank("yes")).toBe(0);
});
