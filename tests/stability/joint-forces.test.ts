import {
  asd,
  type BaseLine,
  balanceOf,
  balanceSums,
  type Certificate,
  cornerSets,
  forceAt,
  jointProblems,
  jointSystem,
  polygonCorners,
  polygonSides,
  slopesOf,
  windOf,
} from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { expectPrinted } from "../core/printed-formulas.ts";
import { dead, fourAnchors, problem, weight } from "./fitted-problem.ts";

/** Force and arm times force, component by component as the vector product is defined. */
test("six sums of a force: itself, and its arm from the origin times it", () => {
  expect([...forceAt(6, 7, 11, 13, { x: 2, y: 3, z: 5 })]).toEqual([7, 11, 13, -16, 9, 1]);
  expect([...forceAt(6, 7, 11, 13, { x: 2, y: 3 })]).toEqual([7, 11, 13, 39, -26, 1]);
  expect([...forceAt(8, 0, 0, 2, { x: 1, y: 1 })].slice(6)).toEqual([0, 0]);
});

describe("a certificate added up by hand", () => {
  const certificate: Certificate = {
    factor: 1,
    wind: [100, 200, 300, 400, 500, 600],
    weight: { down: 1000, slopeX: 10, slopeY: 20, x: 1, y: 2, z: 3 },
    tethers: [
      { x: -3, y: 4, toward: [0.6, 0, -0.8], tension: 100, most: 200, sideX: 7, sideY: 9 },
      { x: 1, y: 1, toward: [0, 0, -1], tension: 0, most: 200, sideX: 0, sideY: 0 },
    ],
    pushes: [{ x: 5, y: -6, push: 50, frictionX: 3, frictionY: 4 }],
    frictionLimit: 0,
  };

  test("its six sums", () => {
    const sums = [180, 233, -730, -2280, 1040, 343];
    for (const [place, sum] of balanceOf(certificate).entries()) {
      expect(sum).toBeCloseTo(sums[place] ?? NaN, 9);
    }
  });

  test("what is printed of them: every force that adds to a sum, by its own symbol", () => {
    const printed = balanceSums(certificate);
    const all = (axis: string) => `W_${axis} + D_${axis} + T_1_${axis} + N_1_${axis}`;
    expect(printed.map(({ formula }) => formula.expression)).toEqual([
      all("Fx"),
      all("Fy"),
      all("Fz"),
      all("Mx"),
      all("My"),
      "W_Mz + T_1_Mz + N_1_Mz",
    ]);
    expect(printed[0]?.inputs).toEqual([100, 10, 67, 3]);
    expect(printed[5]?.inputs).toEqual([600, -295, 38]);
    const measures = printed.map(({ formula }) => formula.measure);
    expect(measures).toEqual(["force", "force", "force", "moment", "moment", "moment"]);
    for (const { formula } of printed) {
      expectPrinted(formula);
      for (const { measure } of formula.arguments) expect(measure).toBe(formula.measure);
    }
    const words = printed.map(({ formula }) => formula.name);
    expect(new Set(words).size).toBe(6);
    expect(words[1]).toContain("forces along");
    expect(words[5]).toContain("moments about the z axis");
    expect(printed[0]?.formula.arguments.map(({ name }) => name)).toEqual([
      "wind",
      "weight",
      "anchor 1",
      "ground at corner 1",
    ]);
  });
});

describe("what acts in one case", () => {
  test("the wind of a row, factored and at the design pressure", () => {
    const components = Float64Array.from({ length: 21 }, (_, place) => place);
    const twice = { ...problem({}), pressure: 2 / 0.6 };
    const wind = [...windOf(twice, { count: 3, components }, 2)];
    for (const [place, one] of wind.entries()) expect(one).toBeCloseTo(2 * (14 + place), 9);
    expect(wind).toHaveLength(6);
  });

  const angle = 0.1;
  const along = weight.W * Math.sin(angle);
  const downhill = [0.6, 0.8] as const;
  const heavy = { x: 0.5, y: -1.5, z: 2 };
  const slopes = (of: Parameters<typeof problem>[0], fx: number, fy: number) =>
    slopesOf(problem({ ...of, heavy }), fx, fy).map((one) => [...one]);
  const expectSums = (found: readonly number[] | undefined, x: number, y: number) => {
    const sums = [x, y, 0, -heavy.z * y, heavy.z * x, heavy.x * y - heavy.y * x];
    for (const [place, sum] of sums.entries()) expect(found?.[place]).toBeCloseTo(sum, 8);
  };

  test("level ground: one slope, and it pulls nowhere", () => {
    expect(slopes({}, 5, 0)).toEqual([[0, 0, 0, 0, 0, 0]]);
    expect(slopes({}, 0, 0)).toEqual([[0, 0, 0, 0, 0, 0]]);
  });

  test("a known slope pulls downhill at the weight's centre, less its part against the wind", () => {
    const slope = { angle, downhill };
    for (const [fx, fy] of [
      [0, 0],
      [3, 0],
      [0, 2],
    ] as const) {
      const found = slopes({ slope }, fx, fy);
      expect(found).toHaveLength(1);
      expectSums(found[0], 0.6 * along, 0.8 * along);
    }
    expectSums(slopes({ slope }, -3, 0)[0], 0, 0.8 * along);
    expectSums(slopes({ slope }, 0, -2)[0], 0.6 * along, 0);
  });

  test("unknown, in a calm: the whole of it to every sixteenth of the way round", () => {
    const found = slopes({ slope: { angle, downhill: null } }, 0, 0);
    expect(found).toHaveLength(16);
    for (const [place, one] of found.entries()) {
      const turn = (place * Math.PI) / 8;
      expectSums(one, along * Math.cos(turn), along * Math.sin(turn));
    }
  });

  test("unknown, in a wind: as it blows first, then to either side until straight across", () => {
    const found = slopes({ slope: { angle, downhill: null } }, 0, 7);
    expect(found).toHaveLength(9);
    const turns = [0, 1, -1, 2, -2, 3, -3, 4, -4].map((one) => (one * Math.PI) / 8);
    for (const [place, turn] of turns.entries()) {
      expectSums(found[place], -along * Math.sin(turn), along * Math.cos(turn));
    }
    expect(slopes({ slope: { angle, downhill: null } }, 7, 0)).toHaveLength(9);
  });
});

describe("corners that the ground pushes on", () => {
  const lines = (inset: number, unmoved: boolean): BaseLine[] => {
    const end = (check: "tip-front" | "tip-back", ny: 1 | -1, distance: number): BaseLine[] => [
      { check, nx: 0, ny, distance: distance - inset, moved: true },
      ...(unmoved ? [{ check, nx: 0 as const, ny, distance, moved: false }] : []),
    ];
    return [
      { check: "tip-right", nx: 1, ny: 0, distance: 2, moved: false },
      { check: "tip-left", nx: -1, ny: 0, distance: 3, moved: false },
      ...end("tip-front", 1, 5),
      ...end("tip-back", -1, 7),
    ];
  };
  const rectangle = (front: number, back: number) => [
    { x: 2, y: front },
    { x: 2, y: -back },
    { x: -3, y: front },
    { x: -3, y: -back },
  ];

  test("those of the ends moved in, with unmoved ends or without", () => {
    expect(cornerSets(lines(0.5, false))).toEqual([rectangle(4.5, 6.5)]);
    expect(cornerSets(lines(0.5, true))).toEqual([rectangle(4.5, 6.5)]);
    expect(cornerSets(lines(0, true))).toEqual([rectangle(5, 7)]);
    expect(cornerSets(lines(12, true))).toEqual([rectangle(-7, -5)]);
  });

  test("an inset longer than the bearing: the unmoved ones as well", () => {
    expect(cornerSets(lines(12.5, true))).toEqual([rectangle(-7.5, -5.5), rectangle(5, 7)]);
  });

  test("one end alone moved beyond the other; unmoved lines of one end alone", () => {
    const moved = (check: string, distance: number) =>
      lines(0.5, true).map((line) =>
        line.check === check && line.moved ? { ...line, distance } : line,
      );
    expect(cornerSets(moved("tip-front", -8))).toEqual([rectangle(-8, 6.5), rectangle(5, 7)]);
    expect(cornerSets(moved("tip-back", -6))).toEqual([rectangle(4.5, -6), rectangle(5, 7)]);
    for (const check of ["tip-front", "tip-back"]) {
      const one = lines(12.5, true).filter((line) => line.check !== check || line.moved);
      expect(cornerSets(one)).toEqual([rectangle(-7.5, -5.5)]);
    }
  });

  test("no weight, no problem", () => {
    expect(jointProblems({ combination: asd, pressure: 1, holdings: [] })).toEqual([]);
  });
});

describe("a system in its own units", () => {
  const corners = [
    { x: 2, y: 5 },
    { x: 2, y: -5 },
    { x: -3, y: 5 },
    { x: -3, y: -5 },
  ];
  const lateral = { Q: 2000, H: 500, cosDelta: 1, sinDelta: 0 };

  test("forces in weights, or in what acts where that is more; lengths in the farther rail's", () => {
    expect(jointSystem(problem({}), corners).force).toBe(dead);
    expect(jointSystem(problem({}), corners, dead - 1).force).toBe(dead);
    expect(jointSystem(problem({}), corners, dead + 1).force).toBe(dead + 1);
    expect(jointSystem(problem({}), corners).length).toBe(3);
  });

  test("without weight in what the anchors hold together; without either as they are", () => {
    const light = { heavy: { W: 0 } };
    expect(jointSystem(problem({ ...light, anchors: fourAnchors(700) }), corners).force).toBe(2800);
    expect(jointSystem(problem(light), corners).force).toBe(1);
  });

  test("a shaft that takes no side pull is none", () => {
    const anchors = fourAnchors(700);
    const shafts = (...of: (typeof lateral | null)[]) =>
      jointSystem(problem({ anchors, laterals: of }), corners).shafts.map(({ anchor }) => anchor);
    expect(shafts(null, lateral, { ...lateral, H: 0 }, lateral)).toEqual([1, 3]);
    expect(shafts()).toEqual([]);
  });

  test("the polygon of friction is exactly its own mirror image, and turned a quarter", () => {
    const at = (side: number) => {
      const place = (side + polygonSides) % polygonSides;
      return [polygonCorners[2 * place], polygonCorners[2 * place + 1]] as [number, number];
    };
    for (let side = 0; side < polygonSides; side += 1) {
      const [x, y] = at(side);
      const [angle, quarter] = [(2 * Math.PI * side) / polygonSides, polygonSides / 4];
      expect([x, y]).toEqual([
        expect.closeTo(Math.cos(angle), 12),
        expect.closeTo(Math.sin(angle), 12),
      ]);
      const [turnedX, turnedY] = at(side + quarter);
      expect([turnedX === -y, turnedY === x]).toEqual([true, true]);
      expect(at(side + 2 * quarter).map(Math.abs)).toEqual([Math.abs(x), Math.abs(y)]);
    }
    expect(at(0)).toEqual([1, 0]);
    expect(polygonCorners).toHaveLength(2 * polygonSides);
  });
});
