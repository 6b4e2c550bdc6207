import {
  type Anchor,
  type Clay,
  displacementRows,
  type PresumedSoil,
  pullOfBlock,
  reviewTow,
  type Sand,
  type TiedBlock,
  type TowJob,
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
  upward,
  wet,
} from "./anchor-examples.ts";

const inch = 0.0254;
const deep = { diameter: 6 * inch, depth: 42 * inch };
const high = { diameter: 6 * inch, depth: 23 * inch };
const two: Anchor = { ...sixInch, helices: [deep, high] };
const plate: Anchor = { kind: "driven plate", area: 0.01, depth: 1 };
const pickets: Anchor = { kind: "picket set", set: "1-1-1" };

describe("how deep an anchor reaches", () => {
  const allowable = (
    anchor: Anchor,
    waterTable: number,
    values: Sand | Clay = loose,
    pull = upward,
  ) => rated(theoryCapacity(anchor, given(values, { wetness: "dry", waterTable }), pull)).allowable;
  const soaked = (anchor: Anchor, pull = upward) =>
    rated(theoryCapacity(anchor, given(loose, wet), pull)).allowable;
  const parched = (anchor: Anchor, pull = upward) =>
    rated(theoryCapacity(anchor, given(loose, dry), pull)).allowable;

  test("water at the deepest plate makes the ground wet, a little below it does not", () => {
    expect(soaked(two)).toBeLessThan(parched(two));
    expect(allowable(two, 30 * inch)).toBe(soaked(two));
    expect(allowable(two, 42 * inch)).toBe(soaked(two));
    expect(allowable(two, 42.1 * inch)).toBe(parched(two));
  });

  test("a picket set reaches 4 ft", () => {
    const firmDry = { ...firm, measured: "dry" } as const;
    const at = (waterTable: number) => allowable(pickets, waterTable, firmDry, level);
    const inWet = rated(theoryCapacity(pickets, given(firmDry, wet), level)).allowable;
    const inDry = rated(theoryCapacity(pickets, given(firmDry, dry), level)).allowable;
    expect(inWet).toBeLessThan(inDry);
    expect([at(1.21), at(1.23)]).toEqual([inWet, inDry]);
  });

  test("frost is a matter of the shallowest plate", () => {
    const frost = (anchor: Anchor, frostDepth: number, state = dry) =>
      rated(
        theoryCapacity(anchor, given(firm, state), upward, { testedHere: false, frostDepth }),
      ).findings.join(" ");
    expect(frost(two, 30 * inch)).toMatch(/above the frost line/);
    expect(frost(two, 22 * inch)).not.toMatch(/frost/);
    expect(frost(plate, 1.1)).toMatch(/above the frost line/);
    expect(frost(plate, 1)).not.toMatch(/frost/);
    expect(frost(plate, 0.9, { wetness: "frozen" })).toMatch(/no credit for frost/);
    expect(frost(plate, 0.9, wet)).not.toMatch(/frost/);
  });

  test("dry ground found dry keeps the strength that it has when found wet and rated wet", () => {
    const values = { ...firm, measured: "dry" } as const;
    const inDry = rated(theoryCapacity(sixInch, given(values, dry), upward)).allowable;
    const inWet = rated(theoryCapacity(sixInch, given(firm, wet), upward)).allowable;
    expect(inDry).toBeCloseTo(inWet, 9);
    expect(rated(theoryCapacity(sixInch, given(values, wet), upward)).allowable).toBeLessThan(
      inDry,
    );
  });
});

describe("a neighbour", () => {
  test("counts by the widest plate, and takes the same share of ultimate and allowable", () => {
    const wide = { ...sixInch, helices: [{ ...deep, diameter: 8 * inch }, high] };
    const at = (anchor: Anchor, spacing?: number) =>
      rated(
        theoryCapacity(anchor, given(firm, wet), upward, {
          testedHere: false,
          ...(spacing === undefined ? {} : { spacing }),
        }),
      );
    const alone = at(wide);
    const near = at(wide, 2.5 * 8 * inch);
    expect(near.allowable / alone.allowable).toBeCloseTo(0.75, 12);
    expect(near.ultimate / alone.ultimate).toBeCloseTo(0.75, 12);
    const square = at(plate, 2.5 * 0.1);
    expect(square.allowable / at(plate).allowable).toBeCloseTo(0.75, 12);
  });

  test("does not matter to a stake, which has no plate", () => {
    const at = (placing: { testedHere: boolean; spacing?: number }) =>
      rated(theoryCapacity(stake, given(firm, dry), level, placing)).allowable;
    expect(at({ testedHere: false, spacing: 0.01 })).toBe(at({ testedHere: false }));
  });
});

describe("several helices", () => {
  const findings = (anchor: Anchor, values: Sand | Clay = firm) =>
    rated(theoryCapacity(anchor, given(values, dry), upward)).findings;
  const at = (first: number, second: number, gap: number): Anchor => ({
    ...sixInch,
    helices: [
      { diameter: first, depth: 2 },
      { diameter: second, depth: 2 - gap },
    ],
  });

  test("both count from 3 diameters of the larger in clay, from 9 in sand, on", () => {
    expect(findings(at(0.2, 0.1, 0.6))).toEqual([]);
    expect(findings(at(0.2, 0.1, 0.59)).join()).toMatch(/1 of 2 helices/);
    expect(findings(at(0.1, 0.2, 0.59)).join()).toMatch(/1 of 2 helices/);
    expect(findings(at(0.1, 0.1, 0.9), loose)).toEqual([]);
    expect(findings(at(0.1, 0.1, 0.89), loose).join()).toMatch(/1 of 2 helices/);
  });

  test("one to six of them, each wider than the shaft", () => {
    const many = (count: number): Anchor => ({
      ...sixInch,
      helices: Array.from({ length: count }, (_, place) => ({ ...deep, depth: 1 + 0.5 * place })),
    });
    expect(rated(theoryCapacity(many(6), given(firm, dry), upward)).allowable).toBeGreaterThan(0);
    expect(() => theoryCapacity(many(7), given(firm, dry), upward)).toThrow(/out-of-range/);
    const narrow = { ...sixInch, helices: [{ ...deep, diameter: sixInch.shaft.diameter }] };
    expect(() => theoryCapacity(narrow, given(firm, dry), upward)).toThrow(/sizes-disagree/);
  });

  test("pulled nearly sideways a shallower helix more does not weaken the shaft", () => {
    const pull = slanted(85 * degree);
    const hold = (helices: readonly (typeof deep)[]) =>
      rated(theoryCapacity({ ...sixInch, stabiliser, helices }, given(firm, dry), pull)).allowable;
    expect(hold([deep, high])).toBeGreaterThanOrEqual(hold([deep]));
  });
});

describe("ways of pulling", () => {
  test("along the shaft the shaft's sideways strength has no part in it", () => {
    expect(rated(theoryCapacity(sixInch, given(firm, dry), upward)).governing).not.toMatch(/with/);
    const pull = slanted(45 * degree);
    expect(rated(theoryCapacity(sixInch, given(firm, dry), pull)).governing).toMatch(/with/);
  });

  test("a driven plate is said to count from where it lies when flat, a stake says nothing", () => {
    const said = (anchor: Anchor, pull = upward) =>
      rated(theoryCapacity(anchor, given(firm, dry), pull)).findings;
    expect(said(plate)).toHaveLength(1);
    expect(said(plate).join()).toMatch(/pulled flat/);
    expect(said(stake, level)).toEqual([]);
    expect(said(pickets, level)).toEqual([]);
    expect(said(sixInch)).toEqual([]);
  });

  test("where sand and clay cannot be told apart there is a number only if both have one", () => {
    let without = 0;
    for (const soilClass of ["2", "3", "4A", "4B"] as const) {
      for (const measured of ["wet", "dry"] as const) {
        for (const state of [wet, dry]) {
          const of = (likeness: PresumedSoil["likeness"]) =>
            theoryCapacity(
              sixInch,
              { basis: "presumptive", soilClass, likeness, measured, state },
              slanted(45 * degree),
            );
          const [sand, clay, unknown] = [of("sand"), of("clay"), of("unknown")];
          expect(unknown.rated, `class ${soilClass}`).toBe(sand.rated && clay.rated);
          if (!unknown.rated) without += 1;
          if (!unknown.rated || !sand.rated || !clay.rated) continue;
          expect(unknown.allowable).toBe(Math.min(sand.allowable, clay.allowable));
        }
      }
    }
    expect(without).toBeGreaterThan(0);
  });
});

test("every limit of movement names where it is from", () => {
  expect(displacementRows).toHaveLength(5);
  for (const { up, citation } of displacementRows) {
    expect(up).toBe(2);
    expect(citation.place).toMatch(/\w/);
  }
});

describe("a block on a tether turns about the nearer balance, closed forms", () => {
  const block: TiedBlock = {
    weight: 1000,
    width: 0.6,
    tieHeight: 1.2,
    tieSetback: 0.2,
    angle: 20 * degree,
    friction: 5,
  };

  test("about the near toe: height times the level part, setback times the rising part", () => {
    const { pull, governs } = pullOfBlock(block, 1);
    const lever = 1.2 * Math.cos(20 * degree) + 0.2 * Math.sin(20 * degree);
    expect(governs).toBe("near toe");
    expect(pull).toBeCloseTo((1000 * 0.3) / lever, 9);
  });

  test("about the far toe: what is left of the width times the rising part, less the level", () => {
    const steep = { ...block, tieHeight: 0.1, tieSetback: 0.05, angle: 70 * degree };
    const { pull, governs } = pullOfBlock(steep, 1);
    const lever = 0.55 * Math.sin(70 * degree) - 0.1 * Math.cos(70 * degree);
    expect(governs).toBe("far toe");
    expect(pull).toBeCloseTo((1000 * 0.3) / lever, 9);
  });

  test.each([
    [{ tieHeight: -0.1 }, /out-of-range/],
    [{ tieHeight: Number.POSITIVE_INFINITY }, /out-of-range/],
    [{ tieSetback: -0.1 }, /out-of-range/],
    [{ tieSetback: 0.601 }, /out-of-range/],
  ] as const)("a tie off the block is refused: %o", (change, code) => {
    expect(() => pullOfBlock({ ...block, ...change }, 1)).toThrow(code);
  });

  test("a tie at the far face is on the block", () => {
    expect(pullOfBlock({ ...block, tieSetback: 0.6 }, 1).pull).toBeGreaterThan(0);
  });

  test.each([
    ["friction", /ice or mud/],
    ["weight", /^Measure it\.$/],
    ["width", /^Measure it\.$/],
  ] as const)("without %s it is told how to mend it", (size, mend) => {
    let told = "";
    try {
      pullOfBlock({ ...block, [size]: 0 }, 1);
    } catch (error) {
      told = (error as { complaints: { mend: string }[] }).complaints[0]?.mend ?? "";
    }
    expect(told).toMatch(mend);
  });
});

describe("pulling a house, at the edges", () => {
  const load = { id: "empty", low: 3000, high: 4000, fromLeft: 2 };
  const job: TowJob = {
    loads: [load],
    railSpacing: 5,
    slope: 0,
    holdingFriction: 0.1,
    tractor: null,
  };

  test("it runs by itself from the slope on that friction just holds; never on the level", () => {
    expect(reviewTow({ ...job, slope: Math.atan(0.1) }).runsByItself).toBe(true);
    expect(reviewTow({ ...job, slope: Math.atan(0.1) - 1e-6 }).runsByItself).toBe(false);
    expect(reviewTow({ ...job, holdingFriction: 0 }).runsByItself).toBe(false);
    expect(reviewTow({ ...job, holdingFriction: 0, slope: 0.01 }).runsByItself).toBe(true);
  });

  test("the centre of gravity lies between the rails or on one", () => {
    const at = (fromLeft: number) => () => reviewTow({ ...job, loads: [{ ...load, fromLeft }] });
    expect(at(0)).not.toThrow();
    expect(at(5)).not.toThrow();
    expect(at(-0.01)).toThrow(/out-of-range/);
    expect(at(5.01)).toThrow(/out-of-range/);
  });

  test("one weight may be both the low and the high one", () => {
    const weighed = { ...load, low: 4000 };
    expect(reviewTow({ ...job, loads: [weighed] }).loads).toHaveLength(1);
    const crossed = { ...load, low: 4001 };
    expect(() => reviewTow({ ...job, loads: [crossed] })).toThrow(/sizes-disagree/);
  });
});
