import {
  type Anchor,
  type Capacity,
  type Deadman,
  type PresumedSoil,
  type ScrewAnchor,
  type Soil,
  theoryCapacity,
} from "@hoopstay/ground";
import { describe, expect, test } from "vitest";
import {
  degree,
  dry,
  firm,
  given,
  level,
  loose,
  rated,
  sixInch,
  slanted,
  stabiliser,
  stake,
  unrated,
  upward,
  wet,
} from "./anchor-examples.ts";

const foot = 0.3048;
const pickets: Anchor = { kind: "picket set", set: "3-2-1" };
const plate: Anchor = { kind: "driven plate", area: 0.01, depth: 1 };
const timber: Deadman = {
  kind: "deadman",
  body: "timber",
  face: 0.2,
  length: 1.5,
  depth: 4 * foot,
};
const slope = { fromShaft: 0, aboveGround: 45 * degree };
const unsure: PresumedSoil = {
  basis: "presumptive",
  soilClass: "4B",
  likeness: "unknown",
  measured: "wet",
  state: dry,
};

describe("what the manuals halve", () => {
  const firmDry = { ...firm, measured: "dry" } as const;
  const ultimate = (anchor: Anchor, soil: Soil) =>
    rated(theoryCapacity(anchor, soil, anchor.kind === "deadman" ? slope : level)).ultimate;

  test.each([
    ["picket set", pickets],
    ["deadman", timber],
  ])(
    "a %s holds in sand, dry or wet, and in wet clay half of what it holds in dry clay",
    (_, anchor) => {
      const loam = ultimate(anchor, given(firmDry, dry));
      expect(ultimate(anchor, given(loose, dry)) / loam).toBeCloseTo(0.5, 12);
      expect(ultimate(anchor, given(loose, wet)) / loam).toBeCloseTo(0.5, 12);
      expect(ultimate(anchor, given(firmDry, wet)) / loam).toBeCloseTo(0.5, 12);
    },
  );

  test("a picket set is rated on a table: factor 2", () => {
    const { ultimate, allowable, basis } = rated(theoryCapacity(pickets, given(firm, dry), level));
    expect(ultimate / allowable).toBeCloseTo(2, 12);
    expect(basis).toBe("table");
  });

  test("where sand and clay hold alike, it is told of sand", () => {
    const capacity = (likeness: PresumedSoil["likeness"]) =>
      rated(theoryCapacity(pickets, { ...unsure, likeness, state: wet }, level));
    expect(capacity("sand").allowable).toBe(capacity("clay").allowable);
    expect(capacity("unknown").governing).toBe(capacity("sand").governing);
    expect(capacity("sand").governing).not.toBe(capacity("clay").governing);
  });
});

describe("angles from which a pull is another pull", () => {
  const soil = given(firm, dry);
  const needs = "pull test in this direction";

  test("a picket set is pulled by a line of up to 15 degrees", () => {
    const at = (degrees: number) =>
      theoryCapacity(pickets, soil, { fromShaft: 0, aboveGround: degrees * degree });
    expect(rated(at(15)).ultimate).toBe(rated(at(0)).ultimate);
    expect(unrated(at(15.0001)).needs).toBe(needs);
  });

  test("a driven plate, and a screw anchor without its shaft, up to 1 degree from the line", () => {
    expect(rated(theoryCapacity(plate, soil, slanted(degree))).basis).toBe("theory");
    expect(unrated(theoryCapacity(plate, soil, slanted(1.0001 * degree))).needs).toBe(needs);
    const screw = (degrees: number) =>
      rated(theoryCapacity(sixInch, soil, slanted(degrees * degree))).governing;
    expect(screw(1)).not.toMatch(/sideways/);
    expect(screw(1.0001)).toMatch(/sideways/);
  });

  test("a stake to where friction of 0.15 carries what pulls along it", () => {
    const border = Math.atan(1 / 0.15);
    expect(rated(theoryCapacity(stake, soil, slanted(border))).basis).toBe("theory");
    expect(unrated(theoryCapacity(stake, soil, slanted(border - 1e-6))).needs).toBe(needs);
  });

  test("a slanted pull on a bare shaft asks for dry clay of 25 kPa or dry sand", () => {
    const in45 = (shearStrength: number) =>
      theoryCapacity(sixInch, given({ ...firm, shearStrength }, dry), slanted(45 * degree));
    expect(rated(in45(25_000)).allowable).toBeGreaterThan(0);
    expect(unrated(in45(24_999)).needs).toBe(needs);
    const inSand = theoryCapacity(sixInch, given(loose, dry), slanted(45 * degree));
    expect(rated(inSand).allowable).toBeGreaterThan(0);
  });
});

describe("the lower of sand and clay, where they cannot be told apart", () => {
  test("is sand near the surface and clay deep down, where sand goes on growing", () => {
    const at = (depth: number, likeness: PresumedSoil["likeness"]) => {
      const helices = [{ diameter: 0.1524, depth }];
      return rated(theoryCapacity({ ...sixInch, helices }, { ...unsure, likeness }, upward));
    };
    for (const [depth, lower, higher] of [
      [1, "sand", "clay"],
      [12, "clay", "sand"],
    ] as const) {
      const kept = at(depth, lower);
      expect(kept.allowable).toBeLessThan(at(depth, higher).allowable);
      expect(at(depth, "unknown").allowable).toBe(kept.allowable);
      expect(at(depth, "unknown").governing).toBe(kept.governing);
    }
  });

  test.each([
    [null, "pull test", /ground is unknown/],
    ["1", "engineer", /^Rock/],
    ["5", "pull test", /^Class 5/],
  ] as const)("class %s has no number, and is told why", (soilClass, needs, reason) => {
    const answer = unrated(theoryCapacity(sixInch, { ...unsure, soilClass }, upward));
    expect(answer.needs).toBe(needs);
    expect(answer.reason).toMatch(reason);
  });
});

describe("sizes that anchors have, 1 mm to 100 m", () => {
  const soil = given(firm, dry);
  const { shaft } = stake;
  const sizes: readonly [string, (size: number) => Capacity][] = [
    ["length of a timber", (length) => theoryCapacity({ ...timber, length }, soil, slope)],
    ["face of a timber", (face) => theoryCapacity({ ...timber, face }, soil, slope)],
    ["depth of a plate", (depth) => theoryCapacity({ ...plate, depth } as Anchor, soil, upward)],
    ["depth of a stake", (depth) => theoryCapacity({ ...stake, depth }, soil, level)],
    [
      "diameter of a stake",
      (diameter) => theoryCapacity({ ...stake, shaft: { ...shaft, diameter } }, soil, level),
    ],
    [
      "cube root of its modulus",
      (root) => {
        const bent = { ...shaft, plasticModulus: root ** 3 };
        return theoryCapacity({ ...stake, shaft: bent }, soil, level);
      },
    ],
    [
      "diameter of a helix",
      (diameter) => theoryCapacity({ ...sixInch, helices: [{ diameter, depth: 1 }] }, soil, upward),
    ],
    [
      "breadth of a stabiliser",
      (breadth) => {
        const plated = { ...sixInch, stabiliser: { ...stabiliser, breadth } };
        return theoryCapacity(plated, soil, slanted(45 * degree));
      },
    ],
    [
      "height of a stabiliser",
      (height) =>
        theoryCapacity(
          { ...sixInch, stabiliser: { ...stabiliser, height } },
          soil,
          slanted(45 * degree),
        ),
    ],
  ];

  test.each(sizes)("%s: nought, less and more are refused", (_, call) => {
    expect(() => call(0)).toThrow(/not-positive/);
    expect(() => call(-1)).toThrow(/not-positive/);
    expect(() => call(Number.NaN)).toThrow(/not-positive/);
    expect(() => call(0.000_99)).toThrow(/out-of-range/);
    expect(() => call(100.01)).toThrow(/out-of-range/);
  });

  test("the borders themselves are sizes, as near as text can be read", () => {
    const deep = (depth: number) => theoryCapacity({ ...stake, depth }, soil, level);
    expect(rated(deep(100)).allowable).toBeGreaterThan(0);
    expect(rated(deep(100 * (1 + 1e-10))).allowable).toBeGreaterThan(0);
    expect(() => deep(100 * (1 + 1e-8))).toThrow(/out-of-range/);
    const thin = (diameter: number) =>
      theoryCapacity({ ...stake, shaft: { ...shaft, diameter } }, soil, level);
    expect(rated(thin(0.001)).allowable).toBeGreaterThan(0);
    expect(rated(thin(0.001 * (1 - 1e-10))).allowable).toBeGreaterThan(0);
    expect(() => thin(0.001 * (1 - 1e-8))).toThrow(/out-of-range/);
  });
});

describe("a deadman at the borders of the manual", () => {
  const soil = given({ ...firm, measured: "dry" }, dry);
  const call = (change: Partial<Deadman>, pull = slope) =>
    theoryCapacity({ ...timber, ...change }, soil, pull);

  test("is longer than the trench of 1 ft", () => {
    expect(() => call({ length: foot })).toThrow(/out-of-range/);
    expect(rated(call({ length: foot + 0.001 })).ultimate).toBeGreaterThan(0);
  });

  test.each([
    ["timber", 9],
    ["log", 5],
  ] as const)("%s: up to %s times as long as its face is high", (body, times) => {
    const of = (slender: number) => call({ body, face: 0.3, length: 0.3 * slender });
    expect(rated(of(times)).ultimate).toBeGreaterThan(0);
    expect(rated(of(times * (1 + 1e-10))).ultimate).toBeGreaterThan(0);
    expect(unrated(of(times * (1 + 1e-8))).needs).toBe("another shape");
  });

  test("on a printed depth it looks at no other row below, and at the last there is none", () => {
    // table 9, loamy soil, slope 1:1: 950 lb/sq ft at 3 ft, 1750 at 4, 2800 at 5, 5100 at 7
    const rows = (depth: number) =>
      rated(call({ depth: depth * foot }))
        .trail.filter(({ formula }) => formula.id === "straight-line-interpolation")
        .at(-1)
        ?.inputs.slice(1, 3);
    expect(rows(3)).toEqual([3, 4]);
    expect(rows(4)).toEqual([3, 4]);
    expect(rows(4.001)).toEqual([4, 5]);
    expect(rows(7)).toEqual([6, 7]);
    expect(rows(7 * (1 + 1e-10))).toEqual([6, 7]);
    expect(() => call({ depth: 7.001 * foot })).toThrow(/ground-outside/);
  });
});

describe("helices and what is said of them", () => {
  const helices = [
    { diameter: 0.1524, depth: 1.07 },
    { diameter: 0.1524, depth: 0.6 },
  ];

  test("pulled square to its shaft an anchor reaches as deep as its deepest plate", () => {
    const anchor = (plates: ScrewAnchor["helices"]): ScrewAnchor => ({
      ...sixInch,
      helices: plates,
      shaft: { diameter: 0.05, plasticModulus: 1e-3, pullHeight: 0 },
    });
    const soil = given(firm, dry);
    const square = slanted(90 * degree);
    const of = (plates: ScrewAnchor["helices"]) =>
      rated(theoryCapacity(anchor(plates), soil, square)).allowable;
    expect(of(helices)).toBeCloseTo(of(helices.slice(0, 1)), 6);
    expect(of(helices)).toBeGreaterThan(1.5 * of(helices.slice(1)));
  });

  test("below the frost line nothing is said", () => {
    const placing = { testedHere: false, frostDepth: 0.5 };
    const anchor = { ...sixInch, helices };
    expect(rated(theoryCapacity(anchor, given(firm, dry), upward, placing)).findings).toEqual([]);
  });
});
