import {
  coupleShear,
  governing,
  ratedRatio,
  sleeveBoltForce,
  sleeveBoltRatio,
  sleeveContactForce,
  sleeveContactRatio,
  sleeveStrength,
  standardHole,
  stubFit,
} from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { changed, codeOf, coveredSleeve, inch, kip, sleeve } from "./bolt-examples.ts";

const ids = (strength: { limitStates: readonly { id: string }[] }) =>
  strength.limitStates.map(({ id }) => id);

const nominalOf = (
  strength: { limitStates: readonly { id: string; nominal: number }[] },
  id: string,
) => strength.limitStates.find((one) => one.id === id)?.nominal ?? Number.NaN;

describe("parts of a sleeve", () => {
  const strength = coveredSleeve();

  test("by hand, in kip and inch", () => {
    const perBolt = (id: string) => nominalOf(strength.perBolt, id) / kip;
    expect(perBolt("bolt-shear")).toBeCloseTo(2 * 54 * (Math.PI / 4) * 0.3125 ** 2, 9);
    expect(perBolt("bearing-hoop")).toBeCloseTo(2 * 1.8 * 50 * 0.3125 * 0.065, 9);
    expect(perBolt("tear-out-hoop")).toBeCloseTo(2 * 1.2 * (1.5 - 0.1875) * 0.065 * 55, 9);
    expect(perBolt("sheet-bearing-hoop")).toBeCloseTo(2 * 3 * 0.75 * 0.3125 * 0.065 * 55, 9);
    expect(perBolt("sheet-deformation-hoop")).toBeCloseTo(
      2 * (4.64 * 0.065 + 1.53) * 0.3125 * 0.065 * 55,
      9,
    );
    expect(perBolt("bearing-stub")).toBeCloseTo(2 * 1.8 * 46 * 0.3125 * 0.13, 9);
    expect(perBolt("tear-out-stub")).toBeCloseTo(2 * 1.2 * (1 - 0.1875) * 0.13 * 62, 9);
    const tube = (id: string) => nominalOf(strength.tubes, id) / kip;
    // b_e is 2t + 16 mm.
    const beside = 0.13 + 16 / 25.4;
    expect(tube("net-section-hoop")).toBeCloseTo(55 * 4 * 0.065 * beside, 9);
    expect(tube("yielding-hoop")).toBeCloseTo(50 * Math.PI * (1.9 - 0.065) * 0.065, 9);
  });

  test("the lowest part governs and has its name in words", () => {
    const lowest = governing(strength, "ASD");
    expect(lowest.name).toBe("bearing of the bolt on the walls of the hoop");
    expect(strength.ASD).toBe(lowest.ASD);
    expect(strength.ASD).toBe(2 * strength.perBolt.ASD);
    expect(strength.perBolt).toMatchObject({ assumed: [], findings: [], notChecked: [] });
    expect(strength.notChecked.map(({ id }) => id)).toEqual([
      "bolt-bending",
      "ovalling",
      "reversing-load",
    ]);
  });

  test("of parts as strong as each other the first listed governs; without parts nothing does", () => {
    const [first, ...rest] = strength.limitStates;
    if (!first) throw new Error("a sleeve without parts");
    const twin = { ...first, id: "twin", ASD: strength.ASD, LRFD: strength.LRFD };
    const other = { ...twin, id: "other" };
    const alike = { ...strength, limitStates: [twin, other, ...rest] };
    expect(governing(alike, "ASD").id).toBe("twin");
    expect(governing(alike, "LRFD").id).toBe("twin");
    expect(() => governing({ ...strength, limitStates: [] }, "ASD")).toThrow(
      "without a limit state",
    );
  });

  test("the net area counts where the holes leave less than the pin rule", () => {
    const small = coveredSleeve({
      hoop: { outside: 1.2 * inch, wall: 0.12 * inch },
      stub: { outside: 0.9 * inch, wall: 0.12 * inch },
    });
    const net = Math.PI * (0.9 - 0.12) * 0.12 - 2 * (0.375 + 0.0625) * 0.12;
    expect(nominalOf(small.tubes, "net-section-stub") / kip).toBeCloseTo(62 * net, 9);
  });
});

describe("edges", () => {
  test("walls under 1/8 in are sheet too, from 1/8 in on they are not", () => {
    const has = (wall: number) =>
      ids(coveredSleeve({ hoop: { wall }, stub: { outside: 1.5 * inch } })).includes(
        "sheet-bearing-hoop",
      );
    expect(has((inch / 8) * (1 - 1e-5))).toBe(true);
    expect(has(inch / 8)).toBe(false);
  });

  test("the bearing factor bends at d/t 10 and 22", () => {
    const share = (ratio: number) => {
      const wall = 0.04 * inch;
      const diameter = ratio * wall;
      const strength = coveredSleeve({ hoop: { wall }, bolt: { diameter } });
      const plain = 2 * 0.75 * diameter * wall * sleeve.hoop.tensileStrength;
      return nominalOf(strength.perBolt, "sheet-bearing-hoop") / plain;
    };
    expect(share(9.9)).toBeCloseTo(3, 9);
    expect(share(10.1)).toBeCloseTo(4 - 1.01, 9);
    expect(share(21.9)).toBeCloseTo(4 - 2.19, 9);
    expect(share(22.1)).toBeCloseTo(1.8, 9);
  });

  test("walls thinner than 0.024 in are not covered", () => {
    const at = (wall: number) => sleeveStrength(changed({ hoop: { wall: wall * inch } })).covered;
    expect([at(0.0239), at(0.024)]).toEqual([false, true]);
  });

  test("bolts closer than 2 2/3 diameters are not covered", () => {
    const at = (share: number) =>
      sleeveStrength(changed({ spacing: share * sleeve.bolt.diameter })).covered;
    expect([at(2.66), at(8 / 3), at(3)]).toEqual([false, true, true]);
  });

  test("an unknown end distance is 1.5 diameters, and said", () => {
    const unknown = coveredSleeve({ hoop: { endDistance: null } });
    const known = coveredSleeve({ hoop: { endDistance: 1.5 * sleeve.bolt.diameter } });
    expect(unknown.ASD).toBe(known.ASD);
    expect(unknown.assumed.map(({ id }) => id)).toContain("end-distance");
  });

  test("a hole that breaks the end is refused, one that just does not is computed", () => {
    const at = (end: number) => codeOf(() => coveredSleeve({ hoop: { endDistance: end * inch } }));
    expect([at(0.1875), at(0.188)]).toEqual(["out-of-range", ""]);
  });

  test("tear-out governs with a short end, and between close bolts", () => {
    expect(governing(coveredSleeve({ hoop: { endDistance: 0.3 * inch } }), "ASD").id).toBe(
      "tear-out-hoop",
    );
    const close = coveredSleeve({ spacing: 0.9 * inch });
    expect(nominalOf(close.perBolt, "tear-out-hoop") / kip).toBeCloseTo(
      2 * 1.2 * (0.9 - 0.375) * 0.065 * 55,
      9,
    );
  });

  test("washers help the outer tube only", () => {
    const share = (outer: "hoop" | "stub", name: "hoop" | "stub") => {
      const bare = outer === "hoop" ? {} : { stub: { outside: 2.2 * inch, wall: 0.1 * inch } };
      const walls = { ...bare, ...(outer === "hoop" ? { stub: { wall: 0.1 * inch } } : {}) };
      const [with_, without] = [true, false].map((washers) =>
        nominalOf(coveredSleeve({ ...walls, washers }), `sheet-bearing-${name}`),
      );
      return (with_ ?? Number.NaN) / (without ?? Number.NaN);
    };
    expect(share("hoop", "hoop")).toBeCloseTo(4 / 3, 12);
    expect(share("hoop", "stub")).toBe(1);
    expect(share("stub", "stub")).toBeCloseTo(4 / 3, 12);
    expect(share("stub", "hoop")).toBe(1);
  });

  test("standard holes: 1/16 in more, from 1 in up 1/8 in; a wider one is a finding", () => {
    expect(standardHole(0.99 * inch) / inch).toBeCloseTo(0.99 + 1 / 16, 12);
    expect(standardHole(inch) / inch).toBeCloseTo(1.125, 12);
    const findings = (hole: number) =>
      coveredSleeve({ holeDiameter: hole * inch }).findings.map(({ id }) => id);
    expect(findings(0.375)).toEqual([]);
    expect(findings(0.376)).toEqual(["hole-wide"]);
    const at = (hole: number) => sleeveStrength(changed({ holeDiameter: hole * inch })).covered;
    expect([at(0.5), at(0.501)]).toEqual([true, false]);
    const wide = { holeDiameter: 0.5 * inch, bolt: { diameter: 0.3125 * inch } };
    expect(codeOf(() => sleeveStrength(changed({ ...wide, spacing: 0.84 * inch })))).toBe("");
    const small = { count: 3, bolt: { grade: "ISO 8.8", diameter: 0.1 * inch } } as const;
    const close = changed({ ...small, holeDiameter: 0.28 * inch, spacing: 0.27 * inch });
    expect(codeOf(() => sleeveStrength(close))).toBe("out-of-range");
  });

  test("tubes that do not go into each other are a finding", () => {
    const findings = (outside: number) =>
      coveredSleeve({ stub: { outside: outside * inch } }).findings.map(({ id }) => id);
    expect(findings(1.77)).toEqual([]);
    expect(findings(1.771)).toEqual(["tube-fit"]);
  });

  test("what cannot be is refused", () => {
    const code = (change: Parameters<typeof changed>[0]) =>
      codeOf(() => sleeveStrength(changed(change)));
    expect(code({ count: 0 })).toBe("out-of-range");
    expect(code({ count: 1.5 })).toBe("out-of-range");
    expect(code({ overlap: -1 })).toBe("not-positive");
    expect(code({ holeDiameter: 0.3 * inch })).toBe("sizes-disagree");
    expect(code({ hoop: { tensileStrength: 300e6 } })).toBe("sizes-disagree");
    expect(code({ hoop: { yieldStrength: 50 } })).toBe("out-of-range");
    expect(code({ stub: { outside: 0.3 * inch } })).toBe("out-of-range");
    expect(code({ stub: { outside: 0.5 * inch }, hoop: { endDistance: 3 * inch } })).toBe(
      "out-of-range",
    );
  });
});

describe("forces in a sleeve", () => {
  test("the couple over the bolts balances the moment", () => {
    for (const count of [2, 3, 4, 7]) {
      const [moment, spacing] = [120, 0.05];
      const outer = coupleShear.evaluate(moment, count, spacing);
      const middle = (count - 1) / 2;
      const arms = Array.from({ length: count }, (_, index) => (index - middle) * spacing);
      const sum = arms.reduce((total, arm) => total + (outer * arm * arm) / (middle * spacing), 0);
      expect(sum).toBeCloseTo(moment, 9);
    }
  });

  test("uplift, thrust and couple meet on the worst bolt", () => {
    const row = { count: 2, spacing: 0.1 };
    expect(sleeveBoltForce(600, 200, 0, row)).toBeCloseTo(Math.hypot(300, 100), 9);
    expect(sleeveBoltForce(600, -200, 30, row)).toBeCloseTo(Math.hypot(300, 100 + 300), 9);
    expect(sleeveBoltForce(600, 200, 30, { count: 1, spacing: null })).toBeCloseTo(
      Math.hypot(600, 200),
      9,
    );
  });

  test("the contact force is that of a straight-line pressure, by numeric integration", () => {
    const overlap = 0.3;
    for (const [shear, moment] of [
      [0, 100],
      [800, 100],
      [2000, 99],
      [2000, 101],
      [2000, 0],
      [-500, -40],
    ] as const) {
      const [V, M] = [Math.abs(shear), Math.abs(moment)];
      const pressure = (x: number) => V / overlap + (12 * M * x) / overlap ** 3;
      const [pressed, steps] = [[0, 0], 200_000];
      for (let step = 0; step < steps; step += 1) {
        const x = overlap * ((step + 0.5) / steps - 0.5);
        const side = pressure(x) > 0 ? 0 : 1;
        pressed[side] = (pressed[side] ?? 0) + (Math.abs(pressure(x)) * overlap) / steps;
      }
      expect(sleeveContactForce(shear, moment, overlap)).toBeCloseTo(Math.max(...pressed), 4);
    }
    expect(sleeveContactForce(0, 0, overlap)).toBe(0);
  });

  test("ratios: bolts carry all, or contact does", () => {
    const strength = coveredSleeve();
    const bolts = sleeveBoltRatio(strength, "ASD", 1000, 300, 50);
    const force = Math.hypot(500, 150 + 50 / (6 * inch));
    expect(bolts).toBeCloseTo(force / strength.perBolt.ASD, 12);
    expect(sleeveBoltRatio(strength, "LRFD", 1000, 300, 50)).toBeLessThan(bolts);
    const contact = sleeveContactRatio(strength, "ASD", 0, 0, 50, 10_000);
    expect(contact).toBeCloseTo((1.5 * 50) / (12 * inch) / 10_000, 12);
    expect(sleeveContactRatio(strength, "ASD", strength.ASD, 0, 50, 10_000)).toBe(1);
  });
});

describe("a straight stub in a bent hoop", () => {
  test("12 in of stub in a 9 ft radius is 17 mm off", () => {
    const fit = stubFit(12 * inch, 0, 108 * inch, 0, 0.005);
    expect(fit.offset * 1000).toBeCloseTo(17, 0);
    expect(fit.fits).toBe(false);
  });

  test("by hand: 6 in above the leg of an 18 ft hoop 8.5 ft high, kink and curve are 0.51 in off", () => {
    // R = (108^2 + 102^2) / (2 x 102) = 108.18 in; slope 6.18 / 108; 6^2 / (2 R) + 6 x 0.0572.
    const fit = stubFit(12 * inch, 6 * inch, 108.176 * inch, 6.176 / 108, 0.309 * inch);
    expect(fit.offset / inch).toBeCloseTo(0.51, 2);
    expect(fit.fits).toBe(false);
  });

  test.each([0, 0.06])("it fits with the leg asked for, and not with less, slope %d", (slope) => {
    const at = (leg: number) => stubFit(0.3, leg, 2.7, slope, 0.004);
    const { legNeeded } = at(0);
    expect(at(legNeeded + 1e-9).fits).toBe(true);
    expect(at(legNeeded - 1e-4).fits).toBe(false);
    expect(stubFit(0.3, 0, 2.7, 0, -0.001).legNeeded).toBeCloseTo(0.3, 12);
    expect(stubFit(0.3, 0.3, 2.7, 0, 0)).toMatchObject({ fits: true, offset: 0 });
  });

  test("a sleeve as long as the radius ends where the quarter circle does, a radius off", () => {
    expect(stubFit(0.3, 0, 0.3, 0, 0.01).offset).toBeCloseTo(0.3, 12);
    expect(stubFit(0.3, 0, 0.3, 0.5, 0.01).offset).toBeCloseTo(0.45, 12);
  });

  test.each<[string, Parameters<typeof stubFit>, RegExp]>([
    ["a radius below the sleeve", [0.3, 0, 0.2999, 0, 0.01], /a hoop radius/],
    ["no radius", [0.3, 0, Number.POSITIVE_INFINITY, 0, 0.01], /a hoop radius/],
    ["a leg below zero", [0.3, -0.1, 2.7, 0, 0.01], /a leg/],
    ["a leg without end", [0.3, Number.POSITIVE_INFINITY, 2.7, 0, 0.01], /a leg/],
    ["a slope below zero", [0.3, 0, 2.7, -0.001, 0.01], /a slope/],
    ["a slope that is no number", [0.3, 0, 2.7, Number.NaN, 0.01], /a slope/],
    ["a slope without end", [0.3, 0, 2.7, Number.POSITIVE_INFINITY, 0.01], /a slope/],
    ["a play that is no number", [0.3, 0, 2.7, 0, Number.NaN], /a play/],
    ["a play without end", [0.3, 0, 2.7, 0, Number.POSITIVE_INFINITY], /a play/],
  ])("%s is refused", (_, sizes, told) => {
    expect(() => stubFit(...sizes)).toThrow(told);
    expect(codeOf(() => stubFit(...sizes))).toBe("out-of-range");
  });
});

test("a part without a rating has no ratio", () => {
  expect(ratedRatio(500, null)).toBeNull();
  expect(ratedRatio(-500, 1000)).toBe(0.5);
  expect(codeOf(() => ratedRatio(500, 0))).toBe("not-positive");
  expect(codeOf(() => ratedRatio(500, Number.NaN))).toBe("not-positive");
});
