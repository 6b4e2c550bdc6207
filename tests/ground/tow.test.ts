import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import { reviewTow, type TowJob, towPull } from "@hoopstay/ground";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { degree } from "./anchor-examples.ts";
import { between, holds, seed } from "./pull-test-sample.ts";

const job: TowJob = {
  loads: [{ id: "empty bin", low: 3000, high: 4000, fromLeft: 2 }],
  railSpacing: 5,
  slope: 0,
  holdingFriction: 0.4,
  tractor: { weight: 10_000, onDrivenWheels: 10_000 },
};

const withTractor = (weight: number): TowJob => ({
  ...job,
  tractor: { weight, onDrivenWheels: weight },
});

const verdictOf = (one: TowJob) => reviewTow(one).loads[0]?.verdict;

describe("tow, by hand", () => {
  test("level ground: pulls, skids, break-out and what the tractor has", () => {
    const { loads, available } = reviewTow(job);
    const [load] = loads;
    expect(load?.running.low).toBeCloseTo(930, 9);
    expect(load?.running.high).toBeCloseTo(2040, 9);
    expect(load?.starting.low).toBeCloseTo(1740, 9);
    expect(load?.starting.high).toBeCloseTo(2320, 9);
    expect(load?.skids.left).toBeCloseTo(0.6 * 2320, 9);
    expect(load?.skids.right).toBeCloseTo(0.4 * 2320, 9);
    expect(load?.brokenOut.low).toBeCloseTo(3480, 9);
    expect(load?.brokenOut.high).toBeCloseTo(4640, 9);
    expect(available?.low).toBeCloseTo(3400, 9);
    expect(available?.high).toBeCloseTo(4500, 9);
  });

  test("go, doubtful and no, on either side of their edges", () => {
    expect(verdictOf(withTractor(2320.1 / 0.34))).toBe("go");
    expect(verdictOf(withTractor(2319.9 / 0.34))).toBe("doubtful");
    expect(verdictOf(withTractor(930.1 / 0.45))).toBe("doubtful");
    expect(verdictOf(withTractor(929.9 / 0.45))).toBe("no");
  });

  test("at the edge itself: go on the very pull that is left, no only where more is needed", () => {
    const house = (low: number, high: number, weight: number) =>
      verdictOf({ ...withTractor(weight), loads: [{ id: "house", low, high, fromLeft: 2 }] });
    // 0.58 of 5100 is 0.34 of 8700; 0.31 of 1800 is 0.45 of 1240.
    expect(house(5000, 5100, 8700)).toBe("go");
    expect(house(1800, 1900, 1240)).toBe("doubtful");
  });

  test("the working says which pull is which, of which load", () => {
    const full = { id: "full bin", low: 9000, high: 12_000, fromLeft: 4 };
    const { trail } = reviewTow({ ...job, loads: [...job.loads, full] });
    const told = trail.map(({ symbol, note }) => (note ? `${symbol}, ${note}` : symbol));
    const pulls = ["P_run low", "P_run high", "P_start low", "P_start high", "P_b", "P_b"];
    const ofLoad = (id: string) =>
      [...pulls, "r_left", "P_s left", "P_s right"].map((symbol) => `${symbol}, ${id}`);
    expect(told).toEqual([
      ...["mu_low", "mu_high", "mu_start", "c_low", "c_high", "P_a low", "P_a high"],
      ...ofLoad("empty bin"),
      ...ofLoad("full bin"),
    ]);
    for (const step of trail) {
      expect(step.inputs).toHaveLength(step.formula.arguments.length);
      expect(evaluateAgain(step).agrees, step.formula.id).toBe(true);
    }
    const alone = reviewTow({ ...job, tractor: null }).trail.map(({ symbol }) => symbol);
    expect(alone.slice(0, 4)).toEqual(["mu_low", "mu_high", "mu_start", "P_run low"]);
  });

  test("a full bin is reviewed for itself", () => {
    const full = { id: "full bin", low: 9000, high: 12_000, fromLeft: 4 };
    const { loads } = reviewTow({ ...job, loads: [...job.loads, full] });
    expect(loads.map(({ verdict }) => verdict)).toEqual(["go", "doubtful"]);
    expect(loads[1]?.skids.right).toBeCloseTo(0.8 * 0.58 * 12_000, 9);
  });

  test("without a tractor the pull needed is told, and no verdict", () => {
    const { available, loads } = reviewTow({ ...job, tractor: null });
    expect(available).toBeNull();
    expect(loads[0]?.verdict).toBeNull();
    expect(loads[0]?.starting.high).toBeCloseTo(2320, 9);
  });

  test("where the tractor cannot climb nothing is available", () => {
    const { available, loads } = reviewTow({
      ...job,
      slope: 30 * degree,
      tractor: { weight: 10_000, onDrivenWheels: 5000 },
    });
    expect(available?.high).toBeLessThan(0);
    expect(loads[0]?.verdict).toBe("no");
  });

  test("downhill it runs by itself where friction is below the slope, by the lower friction", () => {
    const runs = (slope: number, holdingFriction: number) =>
      reviewTow({ ...job, slope, holdingFriction }).runsByItself;
    expect(runs(Math.atan(0.32), 0.4)).toBe(true);
    expect(runs(Math.atan(0.3), 0.4)).toBe(false);
    expect(runs(Math.atan(0.16), 0.15)).toBe(true);
    expect(runs(0.01, 0)).toBe(true);
  });

  const [load] = job.loads;
  test.each([
    [{ railSpacing: 0 }, "not-positive"],
    [{ slope: -0.01 }, "out-of-range"],
    [{ slope: 0.8 }, "out-of-range"],
    [{ holdingFriction: -1 }, "out-of-range"],
    [{ tractor: { weight: 100, onDrivenWheels: 101 } }, "sizes-disagree"],
    [{ tractor: { weight: Number.NaN, onDrivenWheels: 101 } }, "not-positive"],
    [{ loads: [{ id: "a", low: 5, high: 4, fromLeft: 1 }] }, "sizes-disagree"],
    [{ loads: [{ id: "a", low: 0, high: 4, fromLeft: 1 }] }, "not-positive"],
    [{ loads: [{ ...load, id: "a", low: 3, high: 4, fromLeft: 5.1 }] }, "out-of-range"],
  ] as [Partial<TowJob>, string][])("refused: %o", (wrong, code) => {
    expect(() => reviewTow({ ...job, ...wrong })).toThrow(code);
  });
});

describe(`laws of towing (seed ${seed})`, () => {
  const weights = between(500, 50_000);
  const frictions = between(0, 0.9);
  const slopes = between(0, Math.PI / 4);

  test("the pull grows with weight, friction and slope", () => {
    holds(
      fc.property(weights, frictions, slopes, between(0, 1), (weight, friction, slope, share) => {
        const pull = towPull.evaluate(weight, friction, slope);
        const less = (value: number) => share * value;
        const slack = pull * (1 + 1e-9) + 1e-9;
        expect(towPull.evaluate(less(weight), friction, slope)).toBeLessThanOrEqual(slack);
        expect(towPull.evaluate(weight, less(friction), slope)).toBeLessThanOrEqual(slack);
        expect(towPull.evaluate(weight, friction, less(slope))).toBeLessThanOrEqual(slack);
      }),
    );
  });

  const rank = { go: 0, doubtful: 1, no: 2 } as const;
  const jobs = fc
    .record({
      low: between(500, 20_000),
      spread: between(1, 2),
      tractor: between(500, 60_000),
      driven: between(0.4, 1),
      slope: slopes,
      place: between(0, 5),
    })
    .map(
      ({ low, spread, tractor, driven, slope, place }): TowJob => ({
        ...job,
        loads: [{ id: "house", low, high: spread * low, fromLeft: place }],
        slope,
        tractor: { weight: tractor, onDrivenWheels: driven * tractor },
      }),
    );

  test("more weight or more slope never betters the verdict; the skids share the pull", () => {
    holds(
      fc.property(jobs, between(1, 3), between(0, 1), (one, more, share) => {
        const review = reviewTow(one);
        const found = review.loads[0];
        if (!found) throw new Error("no load");
        const { left, right } = found.skids;
        expect((left + right) / found.starting.high).toBeCloseTo(1, 9);
        expect(found.running.low).toBeLessThanOrEqual(found.starting.low);
        const heavy = one.loads.map((l) => ({ ...l, low: more * l.low, high: more * l.high }));
        const heavier = verdictOf({ ...one, loads: heavy }) ?? "no";
        expect(rank[heavier]).toBeGreaterThanOrEqual(rank[found.verdict ?? "no"]);
        const flatter = verdictOf({ ...one, slope: share * one.slope }) ?? "no";
        expect(rank[flatter]).toBeLessThanOrEqual(rank[found.verdict ?? "no"]);
      }),
    );
  });
});
