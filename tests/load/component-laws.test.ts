import type { Formula } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import {
  archComponent,
  archPartsAt,
  asce716,
  asce722,
  bareTubeLoad,
  type ComponentCoefficients,
  componentArchFactor,
  componentCoefficient,
  componentHeightRatio,
  componentNet,
  componentPressure,
  componentRatioOf,
  componentTable,
  cornerOutward,
  cornerWidth,
  effectiveArea,
  gablePerimeter,
  hoopLineLoad,
  insideEnclosed,
  shellOf,
  wallComponent,
  wallInward,
  wallOutward,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  between,
  centreLines,
  covering,
  holds,
  insideCoefficients,
  seed,
} from "./arbitrary-house.ts";

const area = between(0.01, 120);
const share = between(0, 1);

/** Whether one component is pressed at least as hard as another, both ways. */
const atLeast = (one: ComponentCoefficients, other: ComponentCoefficients): boolean =>
  one.inward >= other.inward && one.outward <= other.outward;

const semicircle = (springing: number) =>
  shellOf({
    shape: "round",
    span: 5.95,
    rise: 2.975,
    length: 29.95,
    springing,
    hoopDiameter: 0.05,
    hoopCount: 26,
  });

describe(`laws of component pressures (seed ${seed})`, () => {
  test("a larger effective area is never pressed harder", () => {
    holds(
      fc.property(centreLines, covering, share, area, area, (lines, over, at, one, other) => {
        const table = componentTable(shellOf(lines), over);
        const [small, large] = [Math.min(one, other), Math.max(one, other)];
        for (const edge of [false, true]) {
          const [near, far] = [small, large].map((size) => wallComponent(table, edge, size));
          expect(near && far && atLeast(near, far)).toBe(true);
          const [less, more] = [small, large].map((size) => archComponent(table, at, edge, size));
          if (over === "bare") expect([less, more]).toEqual([null, null]);
          else expect(less && more && atLeast(less, more)).toBe(true);
        }
      }),
    );
  });

  test("an edge or a corner is pressed at least as hard as the field, an open arch as a shut one", () => {
    holds(
      fc.property(centreLines, covering, share, area, (lines, over, at, size) => {
        const shell = shellOf(lines);
        const table = componentTable(shell, over);
        const wall = (corner: boolean) => wallComponent(table, corner, size);
        expect(atLeast(wall(true), wall(false))).toBe(true);
        const [field, edge] = [false, true].map((near) => archComponent(table, at, near, size));
        if (!field || !edge) return;
        expect(atLeast(edge, field)).toBe(true);
        expect(edge.outward).toBeLessThanOrEqual(1.5 * field.outward);
        const [open, shut] = (["open", "covered"] as const).map((one) =>
          archComponent(componentTable(shell, one), at, true, size),
        );
        expect(open && shut && atLeast(open, shut)).toBe(true);
      }),
    );
  });

  test("both readings feel at least what each one feels, left as right", () => {
    holds(
      fc.property(centreLines, share, area, (lines, at, size) => {
        const shell = shellOf(lines);
        const of = (reading?: "arc" | "span", place = at) =>
          archComponent(componentTable(shell, "covered", reading), place, false, size);
        const [both, arc, span, mirrored] = [of(), of("arc"), of("span"), of(undefined, 1 - at)];
        if (!both || !arc || !span || !mirrored) throw new Error("a covered arch has components");
        expect(atLeast(both, arc) && atLeast(both, span)).toBe(true);
        if (at < 0.24) expect(mirrored).toEqual(both);
        const { quarter, centre } = archPartsAt(shell, at);
        expect(quarter || centre).toBe(true);
      }),
    );
  });

  test("semicircle on the ground: 0.87 of table and of the suction along the ridge", () => {
    const table = componentTable(semicircle(0.2), "covered");
    expect(archComponent(table, 0.5, false, 1)?.outward).toBeCloseTo(0.87 * -1.2, 12);
    expect(archComponent(table, 0.5, false, 1)?.inward).toBeCloseTo(0.87 * -0.18, 12);
    expect(archComponent(table, 0.1, false, 1)?.inward).toBeCloseTo(0.87 * 0.7, 12);
    expect(archComponent(table, 0.1, false, 1)?.outward).toBeCloseTo(0.87 * -0.9, 12);
    expect(archComponent(table, 0.5, true, 1)?.outward).toBeCloseTo(1.5 * 0.87 * -1.2, 12);
    const steep = archComponent(table, 0.1, true, 0.5);
    expect(steep).toEqual({ inward: 1, outward: -1.4 });
    expect(table.springSlope).toBeCloseTo(Math.PI / 2, 12);
    const between = archPartsAt(semicircle(0.2), 0.3);
    expect(between).toEqual({ quarter: true, centre: true });
    expect(archPartsAt(semicircle(0.2), 0.2)).toEqual({ quarter: true, centre: false });
    expect(archPartsAt(semicircle(0.2), 0.4)).toEqual({ quarter: false, centre: true });
    expect(archPartsAt(semicircle(0.2), 1 / 3 + 1e-9).quarter).toBe(false);
  });

  test("open: free-roof sets beside the covered ones; film off: a free wall, no arch", () => {
    const shell = semicircle(0.2);
    const open = archComponent(componentTable(shell, "open"), 0.5, false, 1);
    expect(open?.inward).toBeCloseTo(0.85 * 1.3, 12);
    expect(open?.outward).toBeCloseTo(Math.min(0.87 * -1.2, 0.85 * -1.2), 12);
    const bare = componentTable(shell, "bare");
    expect(bare.arch).toBeNull();
    expect(wallComponent(bare, false, 1)).toEqual({ inward: 1.3, outward: -1.3 });
    expect(wallComponent(bare, true, 1)).toEqual({ inward: 1.5 * 1.3, outward: -1.5 * 1.3 });
  });

  test("inside pressure adds with either sign, and the exposure ratio scales all of it", () => {
    const coefficient = between(-3, 3);
    holds(
      fc.property(
        coefficient,
        coefficient,
        insideCoefficients,
        between(1, 1.3),
        (inward, outward, inside, ratio) => {
          const net = componentNet({ inward, outward }, inside, ratio);
          const most = Math.max(...inside);
          expect(net.inward).toBeCloseTo(ratio * (inward + most), 12);
          expect(net.outward).toBeCloseTo(ratio * (outward - most), 12);
        },
      ),
    );
    const { inward, outward } = wallComponent(componentTable(semicircle(0), "covered"), false, 0.5);
    const inside = [insideEnclosed.value, -insideEnclosed.value];
    const net = componentNet({ inward, outward }, inside, 1);
    expect(net).toEqual({ inward: 1.18, outward: -1.28 });
  });

  test("components in exposure B see K_z at 30 ft at least, elsewhere none of it", () => {
    holds(
      fc.property(between(0, 20), fc.constantFrom(asce716, asce722), (h, edition) => {
        const ratio = (exposure: "B" | "C" | "D") => componentRatioOf({ edition, exposure }, h);
        expect([ratio("C"), ratio("D")]).toEqual([1, 1]);
        const { alpha, gradientFeet } = edition.exposures.B;
        const kz = (z: number) =>
          edition.exposureCoefficient.evaluate(z, gradientFeet * 0.3048, alpha);
        const z = Math.max(h, 15 * 0.3048);
        expect(ratio("B") * kz(z)).toBeCloseTo(Math.max(kz(z), kz(30 * 0.3048)), 12);
      }),
    );
  });

  test("corner width: a tenth of the span or 0.4 h, not under 3 ft nor a 25th of the span", () => {
    expect(cornerWidth.evaluate(6, 3)).toBeCloseTo(3 * 0.3048, 12);
    expect(cornerWidth.evaluate(12, 5)).toBeCloseTo(1.2, 12);
    expect(cornerWidth.evaluate(12, 2.5)).toBeCloseTo(1, 12);
    expect(cornerWidth.evaluate(40, 2.5)).toBeCloseTo(1.6, 12);
  });

  test("effective area: a width of a third of the span at least", () => {
    holds(
      fc.property(between(0.1, 8), between(0.1, 8), (span, width) => {
        const found = effectiveArea.evaluate(span, width);
        expect(found).toBeGreaterThanOrEqual(span * width * (1 - 1e-12));
        expect(found).toBeGreaterThanOrEqual((span * span * (1 - 1e-12)) / 3);
      }),
    );
  });

  const rows = [7, 27, 45, 90].map((degrees) => gablePerimeter((degrees * Math.PI) / 180.001));
  const printed = [
    effectiveArea,
    wallInward,
    wallOutward,
    cornerOutward,
    cornerWidth,
    componentHeightRatio,
    componentCoefficient,
    componentPressure,
    componentArchFactor,
    hoopLineLoad,
    bareTubeLoad,
    ...rows.flatMap(({ inward, outward }) => [inward, outward]),
  ] as readonly Formula[];

  test.each([...new Set(printed)].map((one) => [one.id, one] as const))(
    "%s: the printed expression gives what the program computes",
    (_, one) => {
      const values = fc.array(between(0.3, 60), { minLength: 4, maxLength: 4 });
      holds(
        fc.property(values, (some) => {
          const inputs = some.slice(0, one.arguments.length);
          const step = { formula: one, inputs, value: one.evaluate(...inputs), symbol: one.symbol };
          const { agrees } = evaluateAgain(step);
          expect(agrees, `${one.expression} at ${inputs}`).toBe(true);
        }),
        60,
      );
    },
  );
});
