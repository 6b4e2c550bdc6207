import { firstFailure, type LinkRow } from "@hoopstay/house";
import { amplifiedMoment, momentAmplifier } from "@hoopstay/strength";
import { describe, expect, test } from "vitest";
import { worstBent } from "../../packages/house/src/chain/along/bent-hoops.ts";
import { worstAlong } from "../../packages/house/src/chain/links/hoop.ts";

const row = (ratio: LinkRow["ratio"]): LinkRow =>
  ({ ratio, lasts: () => Number.POSITIVE_INFINITY, touches: false }) as unknown as LinkRow;

describe("a thrust beyond the elastic buckling load (AISC 360-22 appendix 8: no amplifier there)", () => {
  const can = { tension: 900, compression: 800, moment: 50, shear: 300 };
  const capacities = [can, can, can];
  /** Thrust, shear, moment at three places; no moment at the pinned feet. */
  const answer = {
    dead: { along: Float64Array.of(-10, -10, -10, 1, 0, -1, 0, 5, 0) },
    wind: { along: new Float64Array(9) },
  } as unknown as Parameters<typeof worstAlong>[0];

  test("leaves nothing of a hoop, though its last place has no moment to grow", () => {
    expect(momentAmplifier("ASD", 10, 9)).toBe(Number.POSITIVE_INFINITY);
    expect(amplifiedMoment(momentAmplifier("ASD", 10, 9), 0)).toBe(Number.POSITIVE_INFINITY);
    expect(worstAlong(answer, capacities, 9, 1, 0, "ASD").ratio).toBe(Number.POSITIVE_INFINITY);
    expect(worstAlong(answer, capacities, 1e6, 1, 0, "ASD").ratio).toBeLessThan(1);
  });

  test.each([
    ["in its plane", 9, 1e6],
    ["out of its plane", 1e6, 9],
  ])("leaves nothing of a hoop bent both ways: %s, without any wind", (_, euler, eulerAcross) => {
    const strength = {
      capacities: { ASD: capacities, LRFD: capacities },
      least: { ASD: can, LRFD: can },
      torsion: { ASD: 40, LRFD: 40 },
      euler,
      eulerAcross,
    };
    const load = { demand: null, hoops: 1, local: 0, workLocal: null };
    const { ratio } = worstBent(answer, strength, [1, 0], "ASD", load);
    expect(ratio).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("the search for a limit", () => {
  test("takes a row that tells no number for one that fails", () => {
    expect(
      firstFailure(
        row(() => Number.NaN),
        "ASD",
        1000,
      ),
    ).toBe(0);
    const limit = firstFailure(
      row((q) => (q > 250 ? Number.NaN : 0.5)),
      "ASD",
      1000,
    );
    expect(limit).toBeCloseTo(250, 5);
  });

  test("ends where a row holds without wind and fails in any", () => {
    expect(
      firstFailure(
        row((q) => (q > 0 ? 2 : 1)),
        "ASD",
        1000,
      ),
    ).toBeLessThan(1e-8);
    expect(
      firstFailure(
        row((q) => (q > 0 ? Number.POSITIVE_INFINITY : 0)),
        "ASD",
        1000,
      ),
    ).toBeLessThan(1e-8);
  });
});
