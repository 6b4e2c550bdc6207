import {
  extremeAt,
  fixedFeet,
  type HoopBar,
  hoopExtremes,
  hoopForcesAt,
  pinnedFeet,
  pointOnLine,
  rightRoller,
} from "@hoopstay/frame";
import { describe, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import {
  bareHoop,
  downAt,
  horizontalLoad,
  normalOn,
  portal,
  type SolvedHoop,
  sectionOf,
  segment,
  sidewaysAt,
  solvedHoop,
} from "./hoop-simple.ts";

// Formulas of the statics reference, sections 1.3 to 1.6 (derived there, two independent codes).
const radii = [1, 3.4];
const gives = [1e-6, 1e-4, 3e-3];
const both = radii.flatMap((radius) => gives.map((k) => [radius, k] as const));

const at = ({ response }: SolvedHoop, i: number): number => response[i] as number;
const momentAt = ({ frame, response }: SolvedHoop, s: number): number =>
  hoopForcesAt(frame, response, s).M;
const crownMoment = (one: SolvedHoop): number => momentAt(one, one.frame.hoop.line.length / 2);

describe.each(both)("two-hinged semicircle of radius %d with axial give k = %d", (radius, k) => {
  const line = segment(radius, Math.PI / 2);
  const hoop = bareHoop(line, sectionOf(k, radius));
  const crown = line.length / 2;
  const soft = (1 - k) / (1 + k);

  test("crown load: H = (P/pi)(1 - k)/(1 + k), least moment where tan = 2 H/P", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[downAt(crown), 700]]);
    const H = (700 / Math.PI) * soft;
    expectNear([at(one, 0), at(one, 3), at(one, 1), at(one, 4)], [H, -H, 350, 350], 1e-10);
    const found = new Float64Array(12);
    hoopExtremes(one.frame, one.response, found);
    expectNear(
      [found[extremeAt.momentMost] as number, found[extremeAt.momentLeast] as number],
      [350 * radius - H * radius, radius * (350 - Math.hypot(350, H))],
      1e-9,
    );
    const place = found[extremeAt.momentLeast + 1] as number;
    const turn = Math.min(place, line.length - place) / radius;
    expectNear([turn], [Math.atan(H / 350)], 1e-9);
  });

  test("load per horizontal length: H = (4 w R/(3 pi))(1 - k)/(1 + k)", () => {
    const one = solvedHoop(hoop, pinnedFeet, horizontalLoad(line, [crown]));
    const H = ((4 * radius) / (3 * Math.PI)) * soft;
    expectNear([at(one, 0), at(one, 1)], [H, radius], 1e-10);
    expectNear([crownMoment(one)], [radius ** 2 / 2 - H * radius], 1e-9, radius ** 2);
  });

  test("self weight: H = (g R/2)(1 - k)/(1 + k), V = pi g R/2", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[{ kind: "weight" }, 40]]);
    const [H, V] = [20 * radius * soft, 20 * Math.PI * radius];
    expectNear([at(one, 0), at(one, 1)], [H, V], 1e-10);
    const moment = V * radius - H * radius - 40 * radius ** 2;
    expectNear([crownMoment(one)], [moment], 1e-9, 40 * radius ** 2);
  });

  test("radial pressure: H = -(4/pi) p R k/(1 + k), V = p R", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[normalOn(0, line.length), 500]]);
    const H = (-4 / Math.PI) * 500 * radius * (k / (1 + k));
    expectNear([at(one, 0), at(one, 1)], [H, 500 * radius], 1e-10);
    expectNear([crownMoment(one)], [-H * radius], 1e-10, 500 * radius ** 2);
  });

  test("push along its length: H = pi p R/2 and V = p R at both feet, M = p R^2 (pi/2 - t) sin t", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[{ kind: "push" }, 30]]);
    const [H, V] = [15 * Math.PI * radius, 30 * radius];
    expectNear(Array.from(one.response.slice(0, 6)), [-H, -V, 0, -H, V, 0], 1e-10);
    const turns = [0.2, 0.7, 1.3, 1.9, 3];
    expectNear(
      turns.map((turn) => momentAt(one, turn * radius)),
      turns.map((turn) => V * radius * (Math.PI / 2 - turn) * Math.sin(turn)),
      1e-10,
    );
    const found = new Float64Array(12);
    hoopExtremes(one.frame, one.response, found);
    // Greatest where tan t = pi/2 - t.
    const most = (found[extremeAt.momentMost + 1] as number) / radius;
    expectNear([Math.tan(most)], [Math.PI / 2 - most], 1e-7);
  });

  test("pressure on the windward half: V = p R/2 at both feet", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[normalOn(0, crown), 500]]);
    expectNear([at(one, 1), at(one, 4)], [250 * radius, 250 * radius], 1e-10);
  });
});

describe.each(both)("tied semicircle of radius %d with k = %d, one foot sliding", (radius, k) => {
  const line = segment(radius, Math.PI / 2);
  const section = sectionOf(k, radius);
  const crown = line.length / 2;
  // Arch opened by a unit pull: (pi R^3/(2 EI))(1 + k); the tie gives 2 R/(E A) of its own.
  const arch = ((Math.PI * radius ** 3) / (2 * section.E * section.I)) * (1 + k);
  test.each([1e-6, 2e-5, 1e-3])("tie of area %d m2: T = H arch/(arch + tie)", (area) => {
    const tie: HoopBar = {
      from: { s: 0 },
      to: { s: line.length },
      fromEnd: "pinned",
      toEnd: "pinned",
      section: { A: area, I: 0, E: section.E },
      weight: 0,
    };
    const hoop = { ...bareHoop(line, section), bars: [tie] };
    const part = arch / (arch + (2 * radius) / (section.E * area));
    for (const [load, held] of [
      [downAt(crown), (1 - k) / (Math.PI * (1 + k))],
      [{ kind: "weight" }, (radius * (1 - k)) / (2 * (1 + k))],
      [normalOn(0, line.length), (-4 * radius * k) / (Math.PI * (1 + k))],
    ] as const) {
      // Pulled where the load spreads the feet; under suction and uplift it pushes instead.
      for (const factor of [500, -500]) {
        const one = solvedHoop(hoop, rightRoller, [[load, factor]]);
        const axial = at(one, one.frame.barAt(0));
        expectNear([axial, at(one, 0), at(one, 3)], [factor * held * part, 0, 0], 1e-9, 5 * radius);
      }
    }
  });
});

const segments = [0.3, 0.9, 1.4, Math.PI / 2, 2].flatMap((half) =>
  gives.map((k) => [half, k] as const),
);

describe.each(segments)("two-hinged segment of half angle %d with k = %d", (a, k) => {
  const radius = 3.1;
  const line = segment(radius, a);
  const hoop = bareHoop(line, sectionOf(k, radius));
  const [s, c] = [Math.sin(a), Math.cos(a)];
  const below = a * (1 + 2 * c * c) - 3 * s * c + k * (a + s * c);

  test("crown load", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[downAt(line.length / 2), 900]]);
    const H = (900 * (s * s - a * s * c + c - c * c - (s * s) / 2 - (k * s * s) / 2)) / below;
    expectNear([at(one, 0), at(one, 1)], [H, 450], 1e-9);
  });

  test("load per horizontal length, turned upward below a horseshoe's widest place", () => {
    const one = solvedHoop(hoop, pinnedFeet, horizontalLoad(line, [line.length / 2]));
    const above = (2 / 3) * s ** 3 - a * s * s * c + (a * c) / 2 - (s * c * c) / 2;
    const H = (radius * (above - (k * 2 * s ** 3) / 3)) / below;
    expectNear([at(one, 0), at(one, 1)], [H, radius * s], 1e-9);
  });

  test("radial pressure", () => {
    const one = solvedHoop(hoop, pinnedFeet, [[normalOn(0, line.length), 60]]);
    const H = 60 * radius * c - (2 * k * 60 * radius * s) / below;
    expectNear([at(one, 0), at(one, 1)], [H, 60 * radius * s], 1e-9, 60 * radius);
  });
});

describe.each(both)("fixed semicircle of radius %d with k = %d", (radius, k) => {
  const line = segment(radius, Math.PI / 2);
  const hoop = bareHoop(line, sectionOf(k, radius));

  test("radial pressure: H = -2 k p R/(pi/2 - 4/pi + k pi/2), foot moment 2 H R/pi", () => {
    const one = solvedHoop(hoop, fixedFeet, [[normalOn(0, line.length), 500]]);
    const H = (-2 * k * 500 * radius) / (Math.PI / 2 - 4 / Math.PI + (k * Math.PI) / 2);
    expectNear([at(one, 0), at(one, 1)], [H, 500 * radius], 1e-10);
    expectNear([momentAt(one, 0)], [(2 * H * radius) / Math.PI], 1e-10, 500 * radius ** 2);
  });

  test("push: V = p R (1 - k)/(2 (1 + k)), foot moment -(p R^2/2)(1 + 3 k)/(1 + k)", () => {
    // The crown carries shear only, found from its deflection of zero: integrals of
    // (v - 1) cos^2 t + (pi/2 - t) sin t cos t and of k (v cos^2 t + (pi/2 - t) sin t cos t).
    const one = solvedHoop(hoop, fixedFeet, [[{ kind: "push" }, 30]]);
    const [H, V] = [15 * Math.PI * radius, (15 * radius * (1 - k)) / (1 + k)];
    const foot = (15 * radius ** 2 * (1 + 3 * k)) / (1 + k);
    expectNear(Array.from(one.response.slice(0, 6)), [-H, -V, foot, -H, V, foot], 1e-10);
    expectNear([momentAt(one, 0), momentAt(one, line.length)], [-foot, foot], 1e-10);
  });

  test("crown load: foot moment 2 H R/pi - integral of M_0/(pi R), M_0 of the simple beam", () => {
    const one = solvedHoop(hoop, fixedFeet, [[downAt(line.length / 2), 700]]);
    const simple = (700 / 2) * radius * (Math.PI / 2 - 1) * 2 * radius;
    const expected = (2 * at(one, 0) * radius) / Math.PI - simple / (Math.PI * radius);
    expectNear([momentAt(one, 0)], [expected], 1e-9);
  });
});

describe("three-hinged arch: statics only, whatever gives", () => {
  test.each([
    [Math.PI / 2, 1e-3],
    [1.1, 1e-6],
    [0.4, 1e-4],
  ])("half angle %d, k = %d: H = M_0(crown)/rise", (a, k) => {
    const radius = 2.6;
    const line = segment(radius, a);
    const crown = line.length / 2;
    const hoop = { ...bareHoop(line, sectionOf(k, radius)), hinges: [crown] };
    const [half, rise] = [radius * Math.sin(a), pointOnLine(line, crown).z];
    const point = solvedHoop(hoop, pinnedFeet, [[downAt(crown), 300]]);
    expectNear([at(point, 0), at(point, 1)], [(150 * half) / rise, 150], 1e-9);
    const even = solvedHoop(hoop, pinnedFeet, horizontalLoad(line, [crown]));
    expectNear([at(even, 0), at(even, 1)], [(2 * half) ** 2 / (8 * rise), half], 1e-9);
    const weight = solvedHoop(hoop, pinnedFeet, [[{ kind: "weight" }, 1]]);
    // Half the arc weighs R a at R (1 - cos a)/a from the middle.
    const lever = half - (radius * (1 - Math.cos(a))) / a;
    expectNear([at(weight, 0), at(weight, 1)], [(radius * a * lever) / rise, radius * a], 1e-9);
    expectNear([crownMoment(weight)], [0], 1e-9, radius ** 2);
  });
});

describe.each([
  [3, 6],
  [4, 2.5],
])(
  "portal frame of height %d and span %d, one section (Kleinlogel, without axial give)",
  (h, L) => {
    const line = portal(h, L);
    const hoop = bareHoop(line, sectionOf(1e-9, h));
    const k = h / L;
    // What the axial give of 1e-9 leaves.
    const near = 1e-7;

    test("pinned: load on the beam", () => {
      const one = solvedHoop(hoop, pinnedFeet, [[normalOn(h, h + L), 80]]);
      const H = (80 * L * L) / (4 * h * (2 * k + 3));
      expectNear(Array.from(one.response.slice(0, 6)), [H, 40 * L, 0, -H, 40 * L, 0], near);
    });

    test("pinned: side load at a knee", () => {
      const one = solvedHoop(hoop, pinnedFeet, [[sidewaysAt(h), 300]]);
      const V = (300 * h) / L;
      expectNear(Array.from(one.response.slice(0, 6)), [-150, -V, 0, -150, V, 0], near);
    });

    test("pinned: load on the windward column", () => {
      const one = solvedHoop(hoop, pinnedFeet, [[normalOn(0, h), 90]]);
      const right = (90 * h * (5 * k + 6)) / (8 * (2 * k + 3));
      const V = (90 * h * h) / (2 * L);
      const expected = [right - 90 * h, -V, 0, -right, V, 0];
      expectNear(Array.from(one.response.slice(0, 6)), expected, near);
    });

    test("pinned: push along columns and beam: M_knee = p h (h + L)/2 by statics and symmetry", () => {
      const one = solvedHoop(hoop, pinnedFeet, [[{ kind: "push" }, 70]]);
      const [H, V] = [35 * (2 * h + L), (70 * h * (h + L)) / L];
      expectNear(Array.from(one.response.slice(0, 6)), [-H, -V, 0, -H, V, 0], near);
      const knee = 35 * h * (h + L);
      expectNear([momentAt(one, h), crownMoment(one)], [knee, 0], near);
    });

    test("fixed: load on the beam", () => {
      const one = solvedHoop(hoop, fixedFeet, [[normalOn(h, h + L), 80]]);
      const foot = (80 * L * L) / (12 * (k + 2));
      expectNear([at(one, 0), at(one, 1)], [(3 * foot) / h, 40 * L], near);
      expectNear([momentAt(one, 0), momentAt(one, h)], [foot, -2 * foot], near);
    });

    test("fixed: side load at a knee", () => {
      const one = solvedHoop(hoop, fixedFeet, [[sidewaysAt(h), 300]]);
      const [foot, knee] = [3 * k + 1, 3 * k].map((part) => (150 * h * part) / (6 * k + 1));
      expectNear([at(one, 4)], [(900 * h * k) / (L * (6 * k + 1))], near);
      const moments = [0, h, h + L, line.length].map((s) => momentAt(one, s));
      expectNear(moments.map(Math.abs), [foot, knee, knee, foot] as number[], near);
    });
  },
);
