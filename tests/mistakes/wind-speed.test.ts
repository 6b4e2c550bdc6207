import { describe, expect, test } from "vitest";
import { checkOf, foot, mph, refusedOf, told } from "./told.ts";

const sound = told();
const height = () => sound.evaluation.shell.h;
const withWind = (by: string) => told({ site: [["speed: 105 mph", by]] });
const basis = (speed: string, kind: string) =>
  told({
    site: [
      ["speed: 105 mph", `speed: ${speed}`],
      ["basis: design  ", `basis: ${kind}  `],
    ],
  });

/** K_z of ASCE 7-16 table 26.10-1 note 1, from 15 ft down its value at 15 ft. */
const kz = (alpha: number, gradient: number): number =>
  2.01 * Math.exp((2 / alpha) * Math.log(15 / gradient));
/** Eq. 26.10-1 in SI, K_d of table 26.6-1, K_e = exp(-0.000119 z) by table 26.9-1 note 2. */
const pressureBy = (k: number, speed: number): number =>
  0.613 * k * 0.85 * Math.exp(-0.000119 * 310 * foot) * speed * speed;

test("the example is low enough that K_z is the one at 15 ft", () => {
  expect(height()).toBeLessThan(15 * foot);
});

describe("exposure B for open pasture", () => {
  const site = (fetch: string) => [["exposure: C", `exposure: B\n${fetch}#`]] as [string, string][];

  test("is refused without the fetch that was measured", () => {
    expect(refusedOf({ site: site("") })).toEqual([["key-missing", "upwind_fetch"]]);
  });

  test("is doubted beside the answer, whatever is said of the fetch", () => {
    const wrong = told({ site: site("upwind_fetch: open pasture, a hedge\n") });
    expect(wrong.sentences.join("\n")).toContain("exposure B needs woods");
    expect(sound.sentences.join("\n")).not.toContain("exposure B needs woods");
    // Table 26.10-1: B 0.57, C 0.85. The mistake would load a third less.
    expect(wrong.result.pressure / sound.result.pressure).toBeCloseTo(
      kz(7, 1200) / kz(9.5, 900),
      6,
    );
    expect(wrong.result.pressure / sound.result.pressure).toBeCloseTo(0.57 / 0.85, 1);
  });

  test("is never assumed: nothing said is C", () => {
    const silent = told({ site: [["exposure: C", "#"]] });
    expect(silent.result.pressure).toBe(sound.result.pressure);
    expect(silent.assumed).toContain("exposure: C, open country");
  });
});

describe("ultimate speed taken as service speed, or the reverse", () => {
  test("a speed that does not say which is refused", () => {
    expect(refusedOf({ site: [["basis: design  ", "#"]] })).toEqual([
      ["speed-without-basis", "wind.speed"],
    ]);
  });

  test("the same figure loads by 1/0.6 more as a service speed: IBC 1609.3.1", () => {
    const service = basis("105 mph", "service");
    expect(service.result.pressure / sound.result.pressure).toBeCloseTo(1 / 0.6, 9);
    expect(service.sentences[0]).toContain("105 mph service speed");
    expect(sound.sentences[0]).toContain("105 mph design speed");
  });
});

describe("0.6 applied twice", () => {
  const lift = (one: typeof sound) => checkOf(one, "shut", "lift").demand;
  const uplift = (one: typeof sound) =>
    Math.max(
      ...one.result.load_sets
        .filter(({ id }) => id === "A")
        .flatMap(({ cases }) => cases.map(({ components }) => components.fz)),
    );

  test("ASD counts the strength-level uplift times 0.6, LRFD in full", () => {
    expect(lift(sound) / uplift(sound)).toBeCloseTo(0.6, 9);
    expect(lift(sound) / uplift(sound)).not.toBeCloseTo(0.36, 2);
    expect(checkOf(sound, "shut", "lift", "bare", "LRFD").demand / uplift(sound)).toBeCloseTo(1, 9);
  });

  test("a service speed loads ASD with its own pressure: 0.6 of V^2 / 0.6, not 0.36", () => {
    const own = basis("80 mph", "service");
    const full = basis("80 mph", "design");
    expect(lift(own) / uplift(full)).toBeCloseTo(1, 9);
  });

  test("a real gust loads ASD with its own pressure, without 0.6 and without K_d", () => {
    const gust = basis("60 mph", "gust");
    const full = basis("60 mph", "design");
    expect(lift(gust) / uplift(full)).toBeCloseTo(1 / 0.85, 9);
  });
});

test("importance factor 0.87 with a risk-category map: there is no such key, and no such factor", () => {
  for (const key of ["importance_factor: 0.87", "importance: 0.87"]) {
    const found = refusedOf({ site: [["risk_category: I", `risk_category: I\n  ${key}`]] });
    expect(found.map(([code]) => code)).toEqual(["key-unknown"]);
  }
  const byHand = pressureBy(kz(9.5, 900), 105 * mph);
  expect(sound.result.pressure / byHand).toBeCloseTo(1, 4);
  const other = told({ site: [["risk_category: I", "risk_category: II"]] });
  expect(other.result.pressure).toBe(sound.result.pressure);
});

test("K_d missing or twice: a map speed gets 0.85 once, printed", () => {
  const withoutIt = pressureBy(kz(9.5, 900), 105 * mph) / 0.85;
  expect(sound.result.pressure / withoutIt).toBeCloseTo(0.85, 4);
  expect(sound.result.factors.kd).toBe(0.85);
  const { kz: k, kzt, kd, ke } = sound.result.factors;
  expect(sound.result.pressure / (0.613 * k * kzt * kd * ke * (105 * mph) ** 2)).toBeCloseTo(1, 9);
});

describe("gust read as mean, km/h as mph", () => {
  test("a mean is no basis, and a bare figure no speed", () => {
    const mean = refusedOf({ site: [["basis: design  ", "basis: mean  "]] });
    expect(mean).toEqual([["wrong-kind", "wind.basis"]]);
    expect(refusedOf({ site: [["105 mph", "105"]] })).toEqual([["unit-missing", "wind.speed"]]);
  });

  test("a gust is told as a gust, never as a mean that a factor would raise", () => {
    const gust = basis("45 mph", "gust");
    expect(gust.sentences[0]).toContain("a gust of 45 mph");
    expect(gust.result.map_speed).toBeCloseTo((45 * mph) / Math.sqrt(0.6 * 0.85), 9);
  });

  test("km/h are km/h: the same figure loads by 1.609^2 less", () => {
    const metric = withWind("speed: 105 km/h");
    expect(sound.result.pressure / metric.result.pressure).toBeCloseTo(1.609344 ** 2, 6);
    expect(refusedOf({ site: [["105 mph", "105 kph/h"]] })[0]?.[0]).toBe("unit-unknown");
  });
});

describe("hill ignored after a move", () => {
  const hill = "hill: { shape: ridge, height: 90 ft, half_length: 400 ft, from_crest: 0 ft }\n";

  test("no hill is an assumption that the report and the move card name", () => {
    expect(sound.assumed).toContain("hill: no hill");
    expect(told({ site: [["exposure: C", `${hill}exposure: C`]] }).assumed.join()).not.toMatch(
      /\bhill: no hill/,
    );
  });

  test("a hill entered loads by (1 + K_1 K_2 K_3)^2: table 26.8-1, ridge in C", () => {
    const there = told({ site: [["exposure: C", `${hill}exposure: C`]] });
    const k1 = (1.45 * 90) / 400;
    const k3 = Math.exp((-3 * height()) / (400 * foot));
    expect(there.result.pressure / sound.result.pressure).toBeCloseTo((1 + k1 * k3) ** 2, 6);
    expect(there.result.pressure / sound.result.pressure).toBeGreaterThan(1.5);
  });
});
