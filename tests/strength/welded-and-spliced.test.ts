import { derived } from "@hoopstay/core";
import {
  boltStrength,
  type ConnectionStrength,
  circleWeldForce,
  filletWeldStrength,
  governing,
  leastLeg,
  plateNetArea,
  rectangleWeldForce,
  type SpliceBolts,
  type SplicePlates,
  spliceStrength,
  weldFindings,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";

const inch = 0.0254;
const ksi = 6_894_757.293168361;
const [Fy, Fu] = [250e6, 400e6];
const steel = { yieldStrength: Fy, tensileStrength: Fu };
const thin = { ...steel, id: "stub", name: "the stub", wall: 0.003 };
const thick = { ...steel, id: "rail", name: "the rail", wall: 0.01 };
const nominal = (strength: ConnectionStrength, id: string) =>
  strength.limitStates.find((state) => state.id === id)?.nominal ?? Number.NaN;

describe("a fillet weld (AISC 360-22, J2.4 and J4.2)", () => {
  const weld = { leg: 0.004, electrode: null, length: 0.2 };

  test("the throat at 0.6 of the electrode, the walls at 0.6 of yield and of tensile strength", () => {
    const strength = filletWeldStrength(weld, [thin, thick]);
    expect(strength.limitStates).toHaveLength(5);
    expect(nominal(strength, "weld-metal")).toBeCloseTo(0.6 * 70 * ksi * 0.004 * Math.SQRT1_2, -3);
    expect(nominal(strength, "weld-yield-stub")).toBeCloseTo(0.6 * Fy * 0.003, 3);
    expect(nominal(strength, "weld-rupture-stub")).toBeCloseTo(0.6 * Fu * 0.003, 3);
    expect(nominal(strength, "weld-yield-rail")).toBeCloseTo(0.6 * Fy * 0.01, 3);
    expect(strength.ASD).toBeCloseTo((0.6 * Fy * 0.003) / 1.5, 3);
    expect(strength.LRFD).toBeCloseTo(Math.min(0.6 * Fy * 0.003, 0.75 * 0.6 * Fu * 0.003), 3);
    expect(governing(strength, "ASD").id).toBe("weld-yield-stub");
    for (const { name } of strength.limitStates) expect(name).toMatch(/weld/);
  });

  test("an unknown electrode is E70 and said so; quality is never checked", () => {
    const unknown = filletWeldStrength(weld, [thin]);
    expect(unknown.assumed.map(({ id }) => id)).toEqual(["electrode"]);
    expect(unknown.assumed[0]?.value).toBeCloseTo(70 * ksi, 0);
    const known = filletWeldStrength({ ...weld, electrode: 60 * ksi }, [thin]);
    expect(known.assumed).toEqual([]);
    expect(nominal(known, "weld-metal") / nominal(unknown, "weld-metal")).toBeCloseTo(6 / 7, 9);
    expect(known.notChecked.map(({ id }) => id)).toEqual(["weld-quality"]);
  });

  test.each([{ leg: 0 }, { length: 0 }, { electrode: 0 }])("refused: %o", (wrong) => {
    expect(() => filletWeldStrength({ ...weld, ...wrong }, [thin])).toThrow();
  });

  test("a wall that cannot be is refused", () => {
    expect(() => filletWeldStrength(weld, [{ ...thin, wall: 0 }])).toThrow();
  });
});

describe("rules of J2.2b at their edges", () => {
  const told = (leg: number, length: number, ...walls: number[]) =>
    weldFindings(
      { leg, length },
      walls.map((wall) => ({ ...steel, wall })),
    ).map(({ id, value }) => [id, Number(value?.toPrecision(12))] as const);

  test("legs of table J2.4: 1/8 to 1/4 in, 3/16 to 1/2, 1/4 to 3/4, 5/16 above", () => {
    const rows = [0.1, 0.25, 0.26, 0.5, 0.51, 0.75, 0.76, 3];
    expect(
      rows.map((thinner) => Math.round((leastLeg(thinner * inch) / inch) * 1600) / 100),
    ).toEqual([2, 2, 3, 3, 4, 4, 5, 5]);
  });

  test("too small for the thinner part, whichever it is", () => {
    expect(told(0.125 * inch, 1, 0.2 * inch, 0.6 * inch)).toEqual([]);
    expect(told(0.125 * inch, 1, 0.6 * inch, 0.2 * inch)).toEqual([]);
    expect(told(0.124 * inch, 1, 0.2 * inch)).toEqual([["weld-leg-small", 0.003175]]);
  });

  test("larger than a thin wall, under 1/4 in only", () => {
    expect(told(0.2 * inch, 1, 0.2 * inch)).toEqual([]);
    expect(told(0.201 * inch, 1, 0.2 * inch, inch)).toEqual([["weld-leg-large", 0.00508]]);
    expect(told(0.3 * inch, 1, 0.25 * inch)).toEqual([]);
    expect(told(0.3 * inch, 1, 0.249 * inch)).toEqual([["weld-leg-large", 0.0063246]]);
  });

  test("shorter than four legs", () => {
    expect(told(0.2 * inch, 0.8 * inch, 0.2 * inch)).toEqual([]);
    expect(told(0.2 * inch, 0.79 * inch, 0.2 * inch)).toEqual([["weld-short", 0.02032]]);
  });
});

describe("force on a weld as a line (Blodgett's line properties)", () => {
  test("round: P / pi D, 4 M / pi D2, V / pi D, 2 T / pi D2", () => {
    const D = 0.06;
    const round = (...forces: [number, number, number, number]) => circleWeldForce(D, ...forces);
    expect(round(1000, 0, 0, 0)).toBeCloseTo(1000 / (Math.PI * D), 9);
    expect(round(0, 0, 50, 0)).toBeCloseTo((4 * 50) / (Math.PI * D * D), 9);
    expect(round(0, 800, 0, 0)).toBeCloseTo(800 / (Math.PI * D), 9);
    expect(round(0, 0, 0, 30)).toBeCloseTo((2 * 30) / (Math.PI * D * D), 9);
    const normal = round(1000, 0, 50, 0);
    const across = round(0, 800, 0, 30);
    expect(round(1000, 800, 50, 30)).toBeCloseTo(Math.hypot(normal, across), 9);
  });

  test("rectangular: over the perimeter, b d + d2 / 3, and (b + d)3 / 6 at the corner", () => {
    const [b, d] = [0.08, 0.05];
    const none = { axial: 0, shearX: 0, shearY: 0, momentX: 0, momentY: 0, torque: 0 };
    const force = (some: Partial<typeof none>, radius = 0) =>
      rectangleWeldForce(b, d, radius, { ...none, ...some });
    expect(force({ axial: 1000 })).toBeCloseTo(1000 / (2 * (b + d)), 9);
    expect(force({ shearX: 1000 })).toBeCloseTo(1000 / (2 * (b + d)), 9);
    expect(force({ shearY: 1000 })).toBeCloseTo(1000 / (2 * (b + d)), 9);
    expect(force({ momentX: 50 })).toBeCloseTo(50 / (b * d + (d * d) / 3), 9);
    expect(force({ momentY: 50 })).toBeCloseTo(50 / (b * d + (b * b) / 3), 9);
    const polar = (b + d) ** 3 / 6;
    expect(force({ torque: 30 })).toBeCloseTo((30 * Math.hypot(b / 2, d / 2)) / polar, 6);
    const corner = force({ torque: 30, shearX: 1000 });
    const along = 1000 / (2 * (b + d)) + (30 * (d / 2)) / polar;
    expect(corner).toBeCloseTo(Math.hypot(along, (30 * (b / 2)) / polar), 6);
    // Rounded corners: the rectangle that fits in loses (2 - sqrt 2) R of each side.
    const cut = (2 - Math.SQRT2) * 0.01;
    expect(force({ axial: 1000 }, 0.01)).toBeCloseTo(1000 / (2 * (b + d - 2 * cut)), 9);
  });
});

describe("a splice of flat plates, closed forms", () => {
  const plates: SplicePlates = {
    width: 0.08,
    thickness: 0.006,
    steel: {
      ...steel,
      modulus: 200e9,
      shearModulus: 77e9,
      citation: derived("example"),
      words: "example",
      listed: true,
    },
    count: 2,
    faces: "sides",
    rail: { ...steel, wall: 0.004, width: 0.1, depth: 0.12 },
    freeLength: 0.02,
    weld: null,
    bolts: null,
  };
  const covered = (change: Partial<SplicePlates> = {}) => {
    const splice = spliceStrength({ ...plates, ...change });
    if (!splice.covered) throw new Error(splice.reason);
    return splice;
  };
  const onEdge = (Fy * 0.006 * 0.08 ** 2) / 4;
  const across = (Fy * 0.08 * 0.006 ** 2) / 4;
  const pull = Fy * 0.08 * 0.006;

  test("on edge the plates bend with F_y Z each; as a couple they yield, or buckle a little sooner", () => {
    const { vertical, plan } = covered();
    expect(vertical.ASD).toBeCloseTo((2 * onEdge) / 1.67, 6);
    expect(vertical.limitStates.map(({ measure }) => measure)).toEqual(["moment"]);
    const [tension, compression] = plan.limitStates;
    expect(tension?.nominal).toBeCloseTo(pull * 0.106, 6);
    expect(tension?.ASD).toBeCloseTo((pull * 0.106) / 1.67, 6);
    expect((compression?.nominal ?? 0) / (pull * 0.106)).toBeLessThan(1);
    expect((compression?.nominal ?? 0) / (pull * 0.106)).toBeGreaterThan(0.98);
    expect(plan.limitStates.every(({ measure }) => measure === "moment")).toBe(true);
    for (const one of [vertical, plan]) {
      expect(one.notChecked.map(({ id }) => id)).toEqual(["splice-attachment"]);
    }
  });

  test("on top and bottom the two planes are exchanged, and the arm is that of the depth", () => {
    const { vertical, plan } = covered({ faces: "top and bottom" });
    expect(plan.ASD).toBeCloseTo((2 * onEdge) / 1.67, 6);
    expect(vertical.limitStates[0]?.nominal).toBeCloseTo(pull * 0.126, 6);
  });

  test("one plate bends across its thickness, and its attachment to that is not checked", () => {
    const { vertical, plan } = covered({ count: 1 });
    expect(vertical.ASD).toBeCloseTo(onEdge / 1.67, 6);
    expect(plan.ASD).toBeCloseTo(across / 1.67, 6);
    expect(plan.notChecked.map(({ id }) => id)).toContain("splice-lone-plate");
    expect(vertical.notChecked.map(({ id }) => id)).not.toContain("splice-lone-plate");
    expect(covered().plan.notChecked.map(({ id }) => id)).not.toContain("splice-lone-plate");
  });

  test("four hold twice what two do; three do not pair", () => {
    expect(covered({ count: 4 }).plan.ASD).toBeCloseTo(2 * covered().plan.ASD, 6);
    expect(covered({ count: 4 }).vertical.ASD).toBeCloseTo(2 * covered().vertical.ASD, 6);
    expect(spliceStrength({ ...plates, count: 3 })).toMatchObject({
      covered: false,
      id: "splice-odd",
    });
  });

  test("welded: two lines along the edges, a couple over the width or over the arm", () => {
    const weld = { leg: 0.003, electrode: null, lineLength: 0.02 };
    const { vertical, plan } = covered({ weld });
    const line = filletWeldStrength({ leg: 0.003, electrode: null, length: 0.02 }, [
      { ...steel, id: "plate", name: "the splice plate", wall: 0.006 },
      { ...steel, id: "rail", name: "the rail", wall: 0.004 },
    ]);
    for (const { id, ASD, LRFD } of line.limitStates) {
      const edge = vertical.limitStates.find((state) => state.id === id);
      expect(edge?.ASD, id).toBeCloseTo(2 * ASD * 0.02 * 0.08, 6);
      expect(edge?.LRFD, id).toBeCloseTo(2 * LRFD * 0.02 * 0.08, 6);
      const couple = plan.limitStates.find((state) => state.id === id);
      expect(couple?.ASD, id).toBeCloseTo(2 * ASD * 0.02 * 0.106, 6);
    }
    expect(vertical.ASD).toBeCloseTo(2 * line.ASD * 0.02 * 0.08, 6);
    expect(vertical.assumed.map(({ id }) => id)).toEqual(["electrode"]);
    expect(vertical.notChecked.map(({ id }) => id)).toEqual(["weld-quality"]);
    expect(vertical.findings.map(({ id }) => id)).toContain("weld-leg-small");
  });

  describe("bolted", () => {
    const bolt = { grade: "SAE 5", diameter: inch / 2, threads: "in the shear plane" } as const;
    const bolts = {
      bolt,
      perEnd: 2,
      spacing: 0.04,
      holeDiameter: null,
      endDistance: 0.03,
      washers: true,
    };
    const hole = (9 / 16) * inch;

    test("a row of m bolts takes F s m (m + 1) / 6 on edge and m F times the arm as a couple", () => {
      const { vertical, plan } = covered({ bolts });
      const single = boltStrength({ ...bolt, grip: 0.1 + 2 * 0.006, planes: 1 });
      if (!single.covered) throw new Error(single.reason);
      const find = (strength: ConnectionStrength, id: string) =>
        strength.limitStates.find((state) => state.id === id)?.nominal;
      const edge = (force: number) => 2 * ((force * 0.04 * 2 * 3) / 6);
      const couple = (force: number) => 2 * force * 0.106;
      expect(find(vertical, single.shear.id)).toBeCloseTo(edge(single.shear.nominal), 6);
      expect(find(plan, single.shear.id)).toBeCloseTo(couple(single.shear.nominal), 6);
      const bearing = 2.4 * (inch / 2) * 0.006 * Fu;
      expect(find(vertical, "bearing-plate")).toBeCloseTo(edge(bearing), 6);
      expect(find(plan, "bearing-plate")).toBeCloseTo(couple(bearing), 6);
      const out = 1.2 * (0.03 - hole / 2) * 0.006 * Fu;
      expect(find(plan, "tear-out-plate")).toBeCloseTo(couple(out), 6);
      expect(find(plan, "tension-yield")).toBeCloseTo(pull * 0.106, 6);
      const net = (Fu * 0.006 * (0.08 ** 3 - (hole + inch / 16) ** 3)) / (6 * 0.08);
      expect(find(vertical, "plate-rupture")).toBeCloseTo(2 * net, 6);
      expect(vertical.notChecked).toEqual([]);
    });

    test("through the depth where the plates lie on top, with one plate's grip where there is one", () => {
      const shear = (grip: number) => {
        const single = boltStrength({ ...bolt, grade: "A307", grip, planes: 1 });
        if (!single.covered) throw new Error(single.reason);
        return single.shear;
      };
      const a307 = { ...bolts, bolt: { ...bolt, grade: "A307" as const } };
      const found = (change: Partial<SplicePlates>, plane: "vertical" | "plan") =>
        covered({ bolts: a307, ...change })[plane].limitStates.find(
          ({ id }) => id === shear(0.1).id,
        )?.nominal;
      const top = found({ faces: "top and bottom" }, "vertical");
      expect(top).toBeCloseTo(2 * shear(0.12 + 0.012).nominal * 0.126, 6);
      const lone = found({ count: 1 }, "vertical");
      expect(lone).toBeCloseTo((shear(0.1 + 0.006).nominal * 0.04 * 2 * 3) / 6, 6);
      const four = found({ count: 4 }, "plan");
      expect(four).toBeCloseTo(4 * shear(0.1 + 0.012).nominal * 0.106, 6);
    });

    test("a single bolt turns nothing on edge", () => {
      const { vertical, plan } = covered({ bolts: { ...bolts, perEnd: 1, spacing: null } });
      expect(vertical.ASD).toBe(0);
      expect(plan.ASD).toBeGreaterThan(0);
    });

    test("what is unknown of bolts is assumed and said", () => {
      const { vertical } = covered({
        bolts: { ...bolts, bolt: { ...bolt, grade: null }, spacing: null, endDistance: null },
      });
      const ids = vertical.assumed.map(({ id }) => id);
      expect(ids).toContain("bolt-grade");
      expect(ids).toContain("hole-diameter");
      expect(ids.length).toBeGreaterThan(3);
    });

    test("a narrow plate of a couple tears across its hole before it yields: F_u (b - d_h - 1/16 in) t", () => {
      const { plan } = covered({ width: 0.05, bolts });
      const [tension] = plan.limitStates;
      expect(tension?.id).toBe("tension-rupture");
      const left = 0.05 - hole - inch / 16;
      expect(tension?.nominal).toBeCloseTo(Fu * left * 0.006 * 0.106, 6);
      expect(tension?.ASD).toBeLessThan((Fy * 0.05 * 0.006 * 0.106) / 1.67);
    });

    test.each<[string, Partial<SpliceBolts>, string]>([
      [
        "a bolt its grade is not made in",
        { bolt: { ...bolt, diameter: 1.1 * inch }, spacing: 0.1 },
        "bolt-size",
      ],
      ["bolts too close", { spacing: 2.6 * bolt.diameter }, "bolt-spacing"],
      ["holes too wide", { holeDiameter: bolt.diameter + 0.19 * inch }, "hole-oversized"],
    ])("%s: the splice is not covered", (_, change, id) => {
      const large = { width: 0.1, bolts: { ...bolts, ...change } };
      expect(spliceStrength({ ...plates, ...large })).toMatchObject({ covered: false, id });
    });

    test("a hole that leaves nothing of the plate is refused, on two plates and on a lone one", () => {
      // Hole and the 1/16 in beside it are just as wide as the plate, to the last bit.
      const [width, thickness] = [0.0035, 0.002];
      const holeDiameter = width - 0.0015875;
      expect(plateNetArea.evaluate(width, thickness, holeDiameter)).toBe(0);
      const small = { ...bolt, grade: "ISO 8.8", diameter: 0.0018 } as const;
      const wide = { ...bolts, bolt: small, holeDiameter };
      for (const count of [1, 2]) {
        const at = (more: number) => () =>
          spliceStrength({ ...plates, count, width: width + more, thickness, bolts: wide });
        expect(at(0)).toThrow("a hole that leaves a part of the plate");
        expect(at(-1e-4)).toThrow("a hole that leaves a part of the plate");
        expect(at(1e-4)).not.toThrow();
      }
    });

    test.each<[string, Partial<SpliceBolts>, RegExp]>([
      ["no bolt", { perEnd: 0 }, /a whole number from 1 to 100/],
      ["half a bolt", { perEnd: 1.5 }, /a whole number from 1 to 100/],
      ["a spacing below zero", { spacing: -0.04 }, /not-positive: a bolt spacing/],
      ["a hole smaller than its bolt", { holeDiameter: 0.0126 }, /sizes-disagree: a hole/],
    ])("%s is refused", (_, change, told) => {
      const wrong = { ...bolts, ...change };
      expect(() => spliceStrength({ ...plates, bolts: wrong })).toThrow(told);
    });

    test("washers do not lie on the rail's wall under a plate: m_f 0.75 whatever is entered", () => {
      const thinRail = { ...plates.rail, wall: 0.0025 };
      for (const washers of [true, false]) {
        const { plan } = covered({ rail: thinRail, bolts: { ...bolts, washers } });
        const state = plan.limitStates.find(({ id }) => id === "sheet-bearing-rail");
        // d/t 5.08: C 3. Two bolts of one plate, times the arm.
        const bearing = 3 * 0.75 * bolt.diameter * 0.0025 * Fu;
        expect(state?.nominal).toBeCloseTo(2 * bearing * 0.106, 6);
      }
    });
  });

  test.each<[string, Partial<SplicePlates>, RegExp]>([
    ["thicker than wide", { thickness: 0.081 }, /out-of-range: plates not thicker than wide/],
    ["wider than the side they lie on", { width: 0.1201 }, /sizes-disagree/],
    ["wider than the top", { faces: "top and bottom", width: 0.1001 }, /sizes-disagree/],
    ["none", { count: 0 }, /./],
    ["no width", { width: 0 }, /not-positive/],
    ["no free length", { freeLength: 0 }, /not-positive/],
  ])("plates that are %s are refused", (_, change, code) => {
    expect(() => spliceStrength({ ...plates, ...change })).toThrow(code);
  });

  test("plates as wide as their face, or as thick as wide, go on", () => {
    expect(covered({ width: 0.12 }).covered).toBe(true);
    expect(covered({ faces: "top and bottom", width: 0.1 }).covered).toBe(true);
    expect(covered({ thickness: 0.08 }).covered).toBe(true);
  });
});
