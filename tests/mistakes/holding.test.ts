import { describe, expect, test } from "vitest";
import { casesOf, checkOf, foot, heldBy, lowWeight, pound, refusedOf, told } from "./told.ts";

const sound = told();
const slides = casesOf(sound, "shut").flatMap(({ components: { fx, fy, fz }, held }) =>
  held
    .filter(({ hold, combination }) => hold === "bare" && combination === "ASD")
    .flatMap(({ checks }) => checks.filter(({ check }) => check === "slide"))
    .map(({ resistance, demand, without_arch: without }) => ({
      fx,
      fy,
      fz,
      resistance,
      demand,
      without,
    })),
);

describe("friction counted where uplift has taken the contact", () => {
  test("every case: 0.15 of what 0.6 of the weight leaves after 0.6 of the uplift, nought at least", () => {
    const { weight } = lowWeight(sound);
    expect(slides.length).toBeGreaterThan(60);
    for (const { fz, resistance } of slides)
      expect(resistance).toBeCloseTo(0.15 * Math.max(0, 0.6 * weight - 0.6 * fz), 6);
    const gone = slides.filter(({ fz }) => fz > weight);
    expect(gone.length).toBeGreaterThan(20);
    for (const { resistance } of gone) expect(resistance).toBe(0);
  });
});

describe("dragging friction used as holding friction", () => {
  test("wet grass holds 0.15, though a sled on turf asks 0.31 to keep moving and 0.58 to start", () => {
    expect(sound.evaluation.site.friction).toBe(0.15);
    const { loads = [], slope = 0 } = heldBy(sound).tow ?? {};
    const [empty] = loads;
    const { weight } = lowWeight(sound);
    const level = (empty?.running.low ?? 0) - weight * Math.sin(slope);
    expect(level / (weight * Math.cos(slope))).toBeCloseTo(0.31, 2);
    expect((empty?.starting.high ?? 0) / weight).toBeGreaterThan(0.55);
  });

  test("friction entered above that of the ground is doubted beside the answer", () => {
    const entered = (low: string) =>
      told({ site: [["wet: yes }", `wet: yes, friction: { low: ${low}, reason: dragged } }`]] });
    expect(entered("31 %").sentences.join("\n")).toContain("friction of 31 % was entered; 0.15");
    expect(entered("12 %").sentences.join("\n")).not.toContain("was entered");
    expect(refusedOf({ site: [["wet: yes }", "wet: yes, friction: { low: 31 % } }"]] })).toEqual([
      ["key-missing", "ground.friction.reason"],
    ]);
  });
});

const anchorDown = 900 * pound * Math.sin(Math.PI / 3);
const gain = (check: string): number =>
  checkOf(sound, "shut", check, "fitted").resistance - checkOf(sound, "shut", check).resistance;

test("anchor counted about the edge it stands on: only the far rail's four tethers turn it back", () => {
  const span = 18 * foot;
  expect(gain("tip-right")).toBeCloseTo(4 * anchorDown * span, 3);
  expect(gain("tip-left")).toBeCloseTo(4 * anchorDown * span, 3);
  // All eight about the middle would be as much, all eight about the edge twice as much.
  expect(gain("tip-right")).not.toBeCloseTo(8 * anchorDown * span, 0);
  const shifted = told({
    house: [["name: R1, side: right, along: 18 ft", "name: R1, side: left, along: 12 ft"]],
  });
  const resists = checkOf(shifted, "shut", "tip-left", "fitted").resistance;
  expect(resists - checkOf(sound, "shut", "tip-left").resistance).toBeCloseTo(
    3 * anchorDown * span,
    3,
  );
});

describe("tether angle ignored", () => {
  test("a tether at 60 deg holds down by its sine: 0.866 of its pull, not all of it", () => {
    expect(gain("lift")).toBeCloseTo(8 * anchorDown, 6);
    expect(gain("lift") / (8 * 900 * pound)).toBeCloseTo(Math.sqrt(3) / 2, 9);
  });

  test("an angle not told is an assumption that says what it leaves out", () => {
    const silent = told({
      house: [["pull: 900 lb, angle: 60 deg, toward: front", "pull: 900 lb"]],
    });
    expect(silent.assumed).toContain("anchors.0.angle: 90 deg, straight down");
  });

  test("a slanted tether that does not say where it leads is refused", () => {
    expect(refusedOf({ house: [["angle: 60 deg, toward: front }", "angle: 60 deg }"]] })).toEqual([
      ["key-missing", "anchors.0.toward"],
    ]);
  });
});

describe("equal share to all anchors", () => {
  const shares = heldBy(sound).fitted?.anchors ?? [];

  test("the bending rail gives the middle ones half as much again as the end ones", () => {
    const pulls = shares.map(({ pull }) => pull);
    const equal = pulls.reduce((sum, pull) => sum + pull, 0) / pulls.length;
    expect(pulls).toHaveLength(8);
    expect(Math.max(...pulls) / equal).toBeGreaterThan(1.15);
    expect(Math.max(...pulls) / Math.min(...pulls)).toBeGreaterThan(1.4);
  });

  test("an anchor beyond its own pull fails the house though all of them together would do", () => {
    const enough = (along: readonly number[]) =>
      told({
        house: [18, 6, -6, -18].flatMap((place, index) =>
          (["left", "right"] as const).map((side): [string, string] => [
            `side: ${side}, along: ${place} ft, pull: 900 lb, angle: 60 deg`,
            `side: ${side}, along: ${along[index]} ft, pull: 2600 lb, angle: 60 deg`,
          ]),
        ),
      });
    const most = (one: typeof sound): number =>
      Math.max(...(heldBy(one).fitted?.anchors ?? []).map(({ ratio }) => ratio ?? 0));
    const spread = enough([18, 6, -6, -18]);
    const crowded = enough([18, -16, -17, -18]);
    const lift = (one: typeof sound) => checkOf(one, "shut", "lift", "fitted");
    expect(lift(crowded).resistance).toBeCloseTo(lift(spread).resistance, 6);
    expect(lift(crowded).ratio).toBeLessThan(1);
    expect(most(crowded)).toBeGreaterThan(1.5 * most(spread));
    expect(most(crowded)).toBeGreaterThan(1);
    expect(heldBy(crowded).holds).toBe(false);
  });
});

const kindFitted = (kind: string, part: string): [string, string] => [
  "name: L2, side: left, along: 6 ft, pull: 900 lb",
  `name: L2, side: left, along: 6 ft, kind: ${kind}${part}`,
];
const allowed = (one: typeof sound): number =>
  one.result.anchors.find(({ name }) => name === "L2")?.allowable ?? Number.NaN;

describe("label rating in wet or loose ground", () => {
  test.each(["label: 4000 lb", "rating: 4000 lb"])("%s is not known", (key) => {
    const found = refusedOf({ house: [["stands: in line", `${key}\n    stands: in line`]] });
    expect(found.map(([code]) => code)).toEqual(["key-unknown"]);
  });

  test("an anchor that this ground does not rate counts nothing, and why is told", () => {
    const buried = told({ house: [kindFitted("deadman", "")] });
    expect(allowed(buried)).toBe(0);
    expect(buried.result.anchors.find(({ name }) => name === "L2")?.reason).toContain("unknown");
  });

  test("pulled dry where it may get wet: a screw counts 0.7 of it", () => {
    const dry = told({
      house: [kindFitted("screw", "")],
      site: ["3900", "4400", "4150"].map((pull): [string, string] => [
        `pull: ${pull} lb, ended: failed, angle: 60 deg, ground: wet`,
        `pull: ${pull} lb, ended: failed, angle: 60 deg, ground: dry`,
      ]),
    });
    const wet = told({ house: [kindFitted("screw", "")] });
    expect(allowed(dry) / allowed(wet)).toBeCloseTo(0.7, 6);
  });

  test("every result says that a label is no capacity", () => {
    expect(sound.sentences.join("\n")).toContain("A label rating is no capacity in this ground.");
  });
});

describe("total capacity good, one link weak", () => {
  test("the weakest link of an anchor is what it counts", () => {
    const strong = told({ house: [kindFitted("screw", "")] });
    const weak = told({
      house: [["working_load: 3150 lb", "working_load: 610 lb"], kindFitted("screw", "")],
    });
    expect(allowed(strong)).toBeGreaterThan(1900 * pound);
    expect(allowed(weak)).toBeCloseTo(610 * pound, 6);
    expect(weak.result.anchors.find(({ name }) => name === "L2")?.governs).toBe("tether");
  });

  test("a breaking load is no capacity: it is refused as one", () => {
    const found = refusedOf({ house: [["working_load: 3150 lb", "breaking_load: 9000 lb"]] });
    expect(found).not.toEqual([]);
  });
});
