import { sleeveStrength } from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { type Change, changed, codeOf, coveredSleeve, inch, sleeve } from "./bolt-examples.ts";

const assumed = (change: Change) => coveredSleeve(change).assumed.map(({ id }) => id);
const hole = (3 / 8) * inch;

describe("what is not known of a sleeve's holes is assumed, and only that is said", () => {
  test("nothing where all is known", () => {
    expect(assumed({ holeDiameter: hole })).toEqual([]);
    expect(assumed({})).toEqual(["hole-diameter"]);
    expect(assumed({ holeDiameter: hole, hoop: { endDistance: null } })).toEqual(["end-distance"]);
  });

  test("an unknown spacing is the least of J3.4, 2 2/3 diameters", () => {
    const unknown = coveredSleeve({ holeDiameter: hole, spacing: null });
    expect(unknown.assumed.map(({ id, value }) => [id, value])).toEqual([
      ["bolt-spacing", unknown.spacing],
    ]);
    expect(unknown.spacing).toBeCloseTo((8 / 3) * (5 / 16) * inch, 12);
    const known = coveredSleeve({ spacing: (8 / 3) * (5 / 16) * inch });
    expect(unknown.ASD).toBeCloseTo(known.ASD, 6);
    expect(unknown.ASD).toBeLessThanOrEqual(coveredSleeve().ASD);
  });

  test("one bolt has no spacing: none is assumed, and none can be too small", () => {
    expect(assumed({ holeDiameter: hole, count: 1, spacing: null })).toEqual([]);
    const single = coveredSleeve({ count: 1, spacing: 0.1 * inch });
    expect(single.spacing).toBeNull();
    expect(single.ASD).toBe(coveredSleeve({ count: 1, spacing: null }).ASD);
  });
});

describe("holes that leave nothing", () => {
  test("a hole that just reaches the end of its tube is refused", () => {
    const at = (end: number) =>
      codeOf(() => coveredSleeve({ holeDiameter: hole, stub: { endDistance: end } }));
    expect([at(hole / 2), at((hole / 2) * 1.001)]).toEqual(["out-of-range", ""]);
  });

  test("holes that just touch are refused", () => {
    const bolt = { grade: "ISO 8.8", diameter: 0.1 * inch } as const;
    const at = (spacing: number) =>
      codeOf(() =>
        coveredSleeve({ bolt, holeDiameter: 0.28 * inch, spacing, hoop: { endDistance: inch } }),
      );
    expect([at(0.28 * inch), at(0.281 * inch)]).toEqual(["out-of-range", ""]);
  });

  test("a hole as wide as the bore is refused, one just narrower is computed", () => {
    const tubes = {
      hoop: { outside: 0.7 * inch, wall: 0.065 * inch },
      stub: { outside: 0.55 * inch, wall: 0.065 * inch },
    };
    const bore = tubes.stub.outside - 2 * tubes.stub.wall;
    const bolt = { diameter: 0.4 * inch };
    const at = (holeDiameter: number) =>
      codeOf(() => coveredSleeve({ ...tubes, bolt, holeDiameter }));
    expect([at(bore), at(bore * 0.999)]).toEqual(["out-of-range", ""]);
  });

  test("the smallest bolt through the narrowest bore of the thinnest wall leaves a strength", () => {
    const [diameter, wall] = [0.0016, 0.024 * inch];
    const outside = 1.0001 * diameter + 2 * wall;
    const { ASD } = coveredSleeve({
      hoop: { outside, wall },
      stub: { outside, wall },
      bolt: { grade: "ISO 4.6", diameter },
      holeDiameter: diameter,
    });
    expect(ASD).toBeGreaterThan(0);
  });
});

describe("tubes, one in the other", () => {
  test("a diameter of 2.5 walls is one, less is refused as such", () => {
    const thick = (outside: number) => () =>
      sleeveStrength(
        changed({ hoop: { outside: 0.3 }, stub: { outside, wall: 0.05 }, spacing: 0.1 }),
      );
    expect(thick(0.125)).not.toThrow();
    expect(thick(0.1249)).toThrow("a diameter of the stub of at least 2.5 walls");
  });

  test("entries that no sleeve has are refused", () => {
    const code = (change: Change) => codeOf(() => sleeveStrength(changed(change)));
    expect(code({ spacing: -1 })).toBe("not-positive");
    expect(code({ spacing: 25 })).toBe("out-of-range");
    expect(code({ stub: { endDistance: -0.01 } })).toBe("not-positive");
    expect(code({ hoop: { endDistance: 25 } })).toBe("out-of-range");
    expect(code({ spacing: null, stub: { endDistance: null } })).toBe("");
  });

  test("strengths of metal from 10 MPa to 2000 MPa, a tensile one no lower than the yield", () => {
    const code = (yieldStrength: number, tensileStrength: number) =>
      codeOf(() => sleeveStrength(changed({ hoop: { yieldStrength, tensileStrength } })));
    expect([code(1e7, 4e8), code(0.999e7, 4e8)]).toEqual(["", "out-of-range"]);
    expect([code(4e8, 2e9), code(4e8, 2.001e9)]).toEqual(["", "out-of-range"]);
    expect([code(4e8, 4e8), code(4e8, 3.999e8)]).toEqual(["", "sizes-disagree"]);
  });

  test("with the stub outside, the hoop has to go into the stub's bore", () => {
    const stub = { outside: 2.2 * inch, wall: 0.1 * inch };
    const findings = (outside: number) =>
      coveredSleeve({ stub, hoop: { outside: outside * inch } }).findings;
    expect(findings(2)).toEqual([]);
    const [finding] = findings(2.001);
    expect(finding?.id).toBe("tube-fit");
    expect((finding?.value ?? 0) / inch).toBeCloseTo(2, 12);
  });

  test("of two as wide the hoop counts as outside, and they do not fit", () => {
    const { findings } = coveredSleeve({ stub: { outside: sleeve.hoop.outside } });
    expect(findings.map(({ id }) => id)).toEqual(["tube-fit"]);
    expect((findings[0]?.value ?? 0) / inch).toBeCloseTo(1.9 - 2 * 0.065, 12);
  });
});
