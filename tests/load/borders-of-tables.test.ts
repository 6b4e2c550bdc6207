import {
  archedAcross,
  archedRows,
  archPartsAt,
  asce722,
  type EnvelopeAreas,
  enclosureCitations,
  enclosureOf,
  fourSquareFeet,
  groundRowRuns,
  type Hill,
  hillFactorOf,
  leastComponentPressure,
  leastHillRise,
  leastLoads,
  mapSpeed,
  pressureFactors,
  roofSetsOf,
  type Shell,
  shellOf,
  windwardRows,
} from "@hoopstay/load";
import { describe, expect, test } from "vitest";

const psf = (0.45359237 * 9.80665) / 0.3048 ** 2;

describe("rows of the arched-roof table at their borders (ASCE 7-16, figure 27.3-3)", () => {
  const rows = (r: number, springing: number) => windwardRows(r, springing).map(({ id }) => id);
  const [ground, flat, middle, alternate, high] = archedRows.map(({ id }) => id);

  test("springing from the ground up to a tenth of the rise, both readings up to half", () => {
    expect(rows(0.4, 0)).toEqual([ground]);
    expect(rows(0.4, 0.1)).toEqual([ground]);
    expect(rows(0.4, 0.101)).toEqual([ground, high]);
    expect(rows(0.4, 0.5)).toEqual([ground, high]);
    expect(rows(0.4, 0.501)).toEqual([high]);
    expect([groundRowRuns(0.5), groundRowRuns(0.501)]).toEqual([true, false]);
  });

  test.each([
    [0.1, [flat]],
    [0.199, [flat]],
    [0.2, [middle, alternate]],
    [0.25, [middle, alternate]],
    [0.3, [middle, alternate, high]],
    [0.301, [high]],
    [0.6, [high]],
  ])("on walls, rise over span %s", (r, expected) => {
    expect(rows(r, 1)).toEqual(expected);
  });

  test.each([0, -0.1, 0.601, Number.NaN])("%s is no rise of the table", (r) => {
    expect(() => windwardRows(r, 0)).toThrow(RangeError);
  });
});

const shell: Shell = shellOf({
  shape: "round",
  span: 5.95,
  rise: 1.975,
  length: 9.95,
  springing: 0.5,
  hoopDiameter: 0.05,
  hoopCount: 6,
});

describe("readings of the quarter", () => {
  test("one where a reviewer has fixed it, else both", () => {
    const readings = (only?: "arc" | "span") =>
      new Set(archedAcross(shell, only).map(({ reading }) => reading));
    expect(readings()).toEqual(new Set(["arc", "span"]));
    expect(readings("arc")).toEqual(new Set(["arc"]));
    expect(readings("span")).toEqual(new Set(["span"]));
  });

  test("a place lies in the quarter, the centre half, or on the border in both", () => {
    const semicircle = shellOf({
      shape: "round",
      span: 5.95,
      rise: 2.975,
      length: 10,
      springing: 0,
      hoopDiameter: 0.05,
      hoopCount: 6,
    });
    // A quarter of the span of a semicircle is a third of the way up the arc's half.
    expect(archPartsAt(semicircle, 0.3, "arc")).toEqual({ quarter: false, centre: true });
    expect(archPartsAt(semicircle, 0.3, "span")).toEqual({ quarter: true, centre: false });
    expect(archPartsAt(semicircle, 0.3)).toEqual({ quarter: true, centre: true });
    expect(archPartsAt(semicircle, 0.25, "arc")).toEqual({ quarter: true, centre: true });
    expect(archPartsAt(semicircle, 0.75, "arc")).toEqual({ quarter: true, centre: true });
    expect(archPartsAt(semicircle, 0.2)).toEqual({ quarter: true, centre: false });
    expect(archPartsAt(semicircle, 0.4)).toEqual({ quarter: false, centre: true });
  });

  test("an open house has the sets of a free roof and those of a covered one, a bare one none", () => {
    const body = { shell, obstacles: [], frame: { dragArea: 1, x: 0, y: 0, z: 1 } };
    const covered = roofSetsOf(body, "covered");
    const open = roofSetsOf(body, "open");
    expect(covered.across).toHaveLength(archedAcross(shell).length);
    expect(open.across.length).toBeGreaterThan(covered.across.length);
    expect(open.along.length).toBeGreaterThan(covered.along.length);
    const ids = (sets: typeof open) => sets.across.map(({ id }) => id);
    expect(ids(open).slice(-covered.across.length)).toEqual(ids(covered));
    expect(roofSetsOf(body, "bare")).toEqual({ across: [], along: [] });
  });
});

describe("enclosure at the borders of its definitions (ASCE 7-16, 26.2)", () => {
  const gross: EnvelopeAreas = { left: 20, right: 20, front: 10, back: 10, roof: 40 };
  const shut: EnvelopeAreas = { left: 0, right: 0, front: 0, back: 0, roof: 0 };
  const kind = (openings: Partial<EnvelopeAreas>, of = gross) =>
    enclosureOf({ ...shut, ...openings }, of);

  test("an opening of one hundredth of its wall, or of 4 ft2, is still enclosed", () => {
    expect(kind({ front: 0.1 }).kind).toBe("enclosed");
    expect(kind({ front: 0.1001 }).kind).toBe("partially enclosed");
    const large = { ...gross, left: 100 };
    expect(fourSquareFeet).toBeCloseTo(4 * 0.3048 ** 2, 12);
    expect(kind({ left: fourSquareFeet }, large).kind).toBe("enclosed");
    expect(kind({ left: fourSquareFeet * 1.001 }, large).kind).toBe("partially enclosed");
  });

  test("dominant above 1.10 times all other openings; between 1 and 1.10 both pressures run", () => {
    const both = [0.18, -0.18, 0.55, -0.55];
    expect(kind({ front: 1.11, left: 1 })).toMatchObject({
      kind: "partially enclosed",
      insideCoefficients: [0.55, -0.55],
    });
    const near = kind({ front: 1.05, left: 1 });
    expect(near).toMatchObject({ kind: "partially open", insideCoefficients: both });
    const front = near.walls.find(({ wall }) => wall === "front");
    expect(front).toMatchObject({ dominant: false, nearlyDominant: true });
    expect(kind({ front: 0.99, left: 1, back: 0.01 }).insideCoefficients).toEqual([0.18, -0.18]);
    const large = kind({ front: 3, left: 1 }).walls.find(({ wall }) => wall === "front");
    expect(large).toMatchObject({ dominant: true, nearlyDominant: false });
    const even = kind({ front: 1, left: 1 }).walls.find(({ wall }) => wall === "front");
    expect(even).toMatchObject({ dominant: false, nearlyDominant: false });
  });

  test("dominant only while the rest is open by a fifth at most", () => {
    const rest = { left: 4.5, right: 4.5, back: 2.25, roof: 6.75 };
    const wide = { ...gross, front: 60 };
    expect(kind({ ...rest, front: 40 }, wide).kind).toBe("partially enclosed");
    expect(kind({ ...rest, roof: 6.77, front: 40 }, wide).kind).toBe("partially open");
  });

  test("open where every wall is open by eight tenths", () => {
    const open = { left: 16, right: 16, front: 8, back: 8 };
    expect(kind(open)).toMatchObject({ kind: "open", insideCoefficients: [0] });
    expect(kind({ ...open, front: 7.99 }).kind).not.toBe("open");
  });

  test("both of its sources are named", () => {
    expect(Object.values(enclosureCitations).map(({ source }) => source)).toEqual([
      "asce-7-16",
      "bnbc-2020",
    ]);
  });
});

describe("hills (ASCE 7-16, figure 26.8-1)", () => {
  test("count from 15 ft on in exposure C and D, from 60 ft on in B (26.8.1, condition 5; from memory)", () => {
    expect(leastHillRise("B")).toBeCloseTo(18.288, 12);
    expect(leastHillRise("C")).toBeCloseTo(4.572, 12);
    expect(leastHillRise("D")).toBeCloseTo(4.572, 12);
  });

  const hill: Hill = { shape: "ridge", height: 10, halfLength: 40, distance: 5 };
  const at = (change: Partial<Hill>) => hillFactorOf({ ...hill, ...change }, "C", 4);

  test("steeper than a half: one half, and a length of twice the height", () => {
    expect(at({})).toMatchObject({ steepness: 0.25, length: 40 });
    expect(at({ height: 20 })).toMatchObject({ steepness: 0.5, length: 40 });
    expect(at({ height: 30 })).toMatchObject({ steepness: 0.5, length: 60 });
    expect(at({ halfLength: 8 })).toMatchObject({ steepness: 0.5, length: 20 });
  });

  test("by the place on it: upwind up to the crest; unknown, nothing is taken off", () => {
    expect(at({ shape: "escarpment", distance: 5 }).mu).toBe(4);
    expect(at({ shape: "escarpment", distance: -5 }).mu).toBe(1.5);
    expect(at({ shape: "escarpment", distance: 0 })).toMatchObject({ mu: 1.5, k2: 1 });
    const { distance: _, ...somewhere } = hill;
    expect(hillFactorOf(somewhere, "C", 4)).toMatchObject({ k2: 1, k3: 1, placeKnown: false });
    expect(at({}).k2).toBeCloseTo(1 - 5 / (1.5 * 40), 12);
    expect(at({}).placeKnown).toBe(true);
  });
});

describe("speeds and pressures", () => {
  test("a design speed is a map speed as it stands; others are raised", () => {
    expect(mapSpeed(40, "design")).toBe(40);
    expect(mapSpeed(40, "service")).toBeGreaterThan(40);
    expect(mapSpeed(40, "gust")).toBeGreaterThan(40);
  });

  test("the ground's elevation counts where it is given: 1 at sea level, e^-0.119 at 1000 m", () => {
    const place = { edition: asce722, exposure: "C" } as const;
    expect(pressureFactors(place, 4).ke).toBe(1);
    expect(pressureFactors({ ...place, elevation: 0 }, 4).ke).toBe(1);
    expect(pressureFactors({ ...place, elevation: 1000 }, 4).ke).toBeCloseTo(Math.exp(-0.119), 3);
  });

  test("at least 16 psf on a component, 766 Pa", () => {
    expect(leastComponentPressure.value).toBeCloseTo(16 * psf, 9);
    expect(leastComponentPressure.value).toBeCloseTo(766.1, 1);
  });
});

describe("least loads (ASCE 7-16, 27.1.5): 16 psf on walls, 8 psf on the roof", () => {
  const tall = { ...shell, L: 10, f: 2, springing: 1, crown: 3, endArea: 12, endCentroid: 1.4 };
  const box = { x: 1, y: 2, z: 0.5, areaAcross: 3, areaAlong: 4, outside: true };
  const find = (of: Shell, covering: "covered" | "open", id: string, boxes = [box]) => {
    const found = leastLoads(of, covering, boxes).filter((load) => load.id === id);
    expect(found.map(({ sense }) => sense)).toEqual([1, -1]);
    const [one] = found;
    if (!one) throw new Error(id);
    return { force: one.force / psf, moment: (one.force * one.height) / psf };
  };
  const near = (one: { force: number; moment: number }, force: number, moment: number) => {
    expect(one.force).toBeCloseTo(force, 9);
    expect(one.moment).toBeCloseTo(moment, 9);
  };

  test("strip and arch, with the boxes outside, each at its middle", () => {
    near(find(tall, "covered", "least", []), 16 * 10 + 8 * 20, 16 * 10 * 0.5 + 8 * 20 * 2);
    near(find(tall, "covered", "least"), 320 + 48, 80 + 320 + 24);
    near(find(tall, "covered", "least", [{ ...box, outside: false }]), 320, 400);
  });

  test("where the arch may spring from the ground: 16 psf on its lower half too", () => {
    near(
      find(tall, "covered", "least-lower", []),
      16 * 10 + 16 * 10 + 8 * 10,
      16 * 10 * 0.5 + 16 * 10 * 1.5 + 8 * 10 * 2.5,
    );
    const onWalls = { ...tall, springing: 1.1, crown: 3.1 };
    expect(leastLoads(onWalls, "covered", []).map(({ id }) => id)).not.toContain("least-lower");
  });

  test("along, and an open house whole", () => {
    near(find(tall, "covered", "least-end"), 16 * (12 + 4), 16 * (12 * 1.4 + 4 * 0.5));
    near(find(tall, "open", "least-open", []), 16 * 30, 16 * 30 * 1.5);
    expect(leastLoads(tall, "bare", [box])).toEqual([]);
  });
});
