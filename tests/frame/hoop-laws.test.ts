import {
  type FeetSupport,
  fixedFeet,
  type Hoop,
  type HoopBar,
  HoopFrame,
  type HoopLoad,
  HoopStations,
  hoopExtremes,
  hoopForcesAt,
  hoopImbalance,
  hoopShapeAt,
  type PlanePoint,
  pointOnLine,
  tangentOnLine,
} from "@hoopstay/frame";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { expectNear } from "./held-rail.ts";
import {
  arbitraryHoop,
  arbitraryLoads,
  type LoadedHoop,
  loadedHoop,
  seed,
  slidingHoop,
} from "./hoop-arbitrary.ts";
import { mirrorOf, onScale, quarterTurned } from "./hoop-changed.ts";
import { alongHoop, barOf, strainEnergy, workOf } from "./hoop-energy.ts";
import { type SolvedHoop, solvedHoop } from "./hoop-simple.ts";

const numRuns = 200;
const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns });

const solve = ({ hoop, feet, loads }: LoadedHoop): SolvedHoop => solvedHoop(hoop, feet, loads);
const numbers = (solved: SolvedHoop, from: number, to: number): number[] =>
  Array.from(solved.response.slice(from, to));
const feetOf = (solved: SolvedHoop): number[] => numbers(solved, 0, 6);
const greatest = (values: Iterable<number>): number => Math.max(0, ...[...values].map(Math.abs));
const withoutBarWeight = ({ loads, ...one }: LoadedHoop): LoadedHoop => ({
  ...one,
  loads: loads.filter(([{ kind }]) => kind !== "bar-weight"),
});

/** Size of all loads, N: what forces are compared on where they cancel. */
const sizeOf = ({ hoop, loads }: LoadedHoop): number =>
  loads.reduce((sum, [load, factor]) => {
    const one = Math.abs(factor);
    if (load.kind === "normal") return sum + one * (load.to - load.from);
    if (load.kind === "weight" || load.kind === "push") return sum + one * hoop.line.length;
    if (load.kind === "point") {
      const couple = Math.abs(load.couple) / hoop.line.length;
      return sum + one * (Math.abs(load.x) + Math.abs(load.z) + couple);
    }
    return sum + one * hoop.bars.reduce((all, { weight }) => all + weight * hoop.line.length, 0);
  }, 1);

/** Loads summed along the true curve: x, z and couple about the origin. */
function resultantOf(solved: SolvedHoop, loads: LoadedHoop["loads"]): [number, number, number] {
  const { line, bars } = solved.frame.hoop;
  let [x, z, couple] = [0, 0, 0];
  const add = (fx: number, fz: number, at: { x: number; z: number }): void => {
    x += fx;
    z += fz;
    couple += at.x * fz - at.z * fx;
  };
  for (const [load, factor] of loads) {
    if (load.kind === "point") {
      add(factor * load.x, factor * load.z, pointOnLine(line, load.s));
      couple += factor * load.couple;
    } else if (load.kind === "bar-weight") {
      for (const [i, bar] of bars.entries()) {
        const { length, middle } = barOf(solved, i);
        add(0, -factor * bar.weight * length, middle);
      }
    } else {
      const per = (s: number): [number, number] => {
        if (load.kind === "weight") return [0, -1];
        if (load.kind === "push") return [1, 0];
        if (s < load.from || s > load.to) return [0, 0];
        const way = tangentOnLine(line, s);
        return [way.z, -way.x];
      };
      x += factor * alongHoop(solved, (s) => per(s)[0]);
      z += factor * alongHoop(solved, (s) => per(s)[1]);
      couple +=
        factor *
        alongHoop(solved, (s) => {
          const [at, [fx, fz]] = [pointOnLine(line, s), per(s)];
          return at.x * fz - at.z * fx;
        });
    }
  }
  return [x, z, couple];
}

describe(`laws of hoops (seed ${seed})`, () => {
  test.each([
    ["pinned, fixed or on springs", loadedHoop],
    ["one foot sliding", slidingHoop],
  ])("forces balance: %s", (_, arbitrary) => {
    holds(
      fc.property(arbitrary, (one) => {
        const solved = solve(one);
        const size = sizeOf(one);
        const [fx, fz, couple, gx, gz, other] = feetOf(solved) as [
          number,
          number,
          number,
          number,
          number,
          number,
        ];
        const [x, z, turning] = resultantOf(solved, one.loads);
        const { line } = one.hoop;
        const [a, b] = [pointOnLine(line, 0), pointOnLine(line, line.length)];
        const turned = couple + other + a.x * fz - a.z * fx + b.x * gz - b.z * gx;
        expectNear(
          [fx + gx, fz + gz, turned / line.length],
          [-x, -z, -turning / line.length],
          1e-9,
          size,
        );
        expect(hoopImbalance(solved.frame, solved.response)).toBeLessThan(1e-9);
      }),
    );
  });

  test("a foot's force is that of its spring; where nothing holds there is none", () => {
    holds(
      fc.property(fc.oneof(loadedHoop, slidingHoop), (one) => {
        const solved = solve(one);
        for (const [way, spring] of one.feet.entries()) {
          const moved = solved.response[6 + way] as number;
          if (spring === Number.POSITIVE_INFINITY) expect(moved).toBe(0);
          else expectNear([feetOf(solved)[way] as number], [-spring * moved], 1e-8, sizeOf(one));
        }
      }),
    );
  });

  test("effects of two load cases add up, zones split and moved with them", () => {
    const two = loadedHoop.chain((one) =>
      fc.record({ one: fc.constant(one), more: arbitraryLoads(one.hoop.line) }),
    );
    holds(
      fc.property(two, ({ one, more }) => {
        const both = solve({ ...one, loads: [...one.loads, ...more] });
        const parts = [one.loads, more].map((loads) => solve({ ...one, loads }));
        const bars = one.hoop.bars.length * 7;
        const last = 15 + bars + 3 * one.hoop.joints.length;
        for (const [from, to] of [
          [0, 6],
          [6, 12],
          [15, 15 + bars],
          [15 + bars, last],
        ] as const) {
          const rows = parts.map((part) => numbers(part, from, to));
          const sum = (rows[0] ?? []).map((value, i) => value + ((rows[1] ?? [])[i] as number));
          expectNear(numbers(both, from, to), sum, 1e-8, greatest(rows.flat()));
        }
      }),
    );
  });

  test("a zone is the sum of its parts", () => {
    holds(
      fc.property(loadedHoop, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (one, share) => {
        const split = one.loads.flatMap(([load, factor]): [HoopLoad, number][] => {
          if (load.kind !== "normal") return [[load, factor]];
          const middle = load.from + share * (load.to - load.from);
          return [
            [{ ...load, to: middle }, factor],
            [{ ...load, from: middle }, factor],
          ];
        });
        const [whole, parts] = [solve(one), solve({ ...one, loads: split })];
        expectNear(feetOf(parts), feetOf(whole), 1e-8, sizeOf(one));
        const places = Array.from({ length: 9 }, (_, i) => ((i + 0.37) / 9) * one.hoop.line.length);
        const shapes = [whole, parts].map(({ frame, response }) =>
          places.flatMap((s) => Object.values(hoopShapeAt(frame, response, s))),
        );
        expectNear(shapes[1] ?? [], shapes[0] ?? [], 1e-8);
      }),
    );
  });

  test("many places at once read as each alone, and no force is beyond the extremes", () => {
    holds(
      fc.property(loadedHoop, (one) => {
        const { frame, response } = solve(one);
        const { length } = one.hoop.line;
        const places = Array.from({ length: 23 }, (_, i) => (i / 22) * length);
        const extremes = new Float64Array(12);
        hoopExtremes(frame, response, extremes);
        for (const side of ["left", "right"] as const) {
          const stations = new HoopStations(frame, places, side);
          const [forces, shape] = [new Float64Array(69), new Float64Array(69)];
          stations.forces(response, forces);
          stations.shape(response, shape);
          for (const [i, s] of places.entries()) {
            const { N, V, M } = hoopForcesAt(frame, response, s, side);
            expect(Array.from(forces.subarray(3 * i, 3 * i + 3))).toEqual([N, V, M]);
            const { x, z, turn } = hoopShapeAt(frame, response, s, side);
            expect(Array.from(shape.subarray(3 * i, 3 * i + 3))).toEqual([x, z, turn]);
            for (const [way, value] of [N, V, M].entries()) {
              const slack = 1e-9 * sizeOf(one) * Math.max(1, length);
              expect(value).toBeLessThanOrEqual((extremes[4 * way] as number) + slack);
              expect(value).toBeGreaterThanOrEqual((extremes[4 * way + 2] as number) - slack);
            }
          }
        }
      }),
    );
  });

  test("seen from behind it is its mirror image", () => {
    holds(
      fc.property(loadedHoop, (one) => {
        const [front, back] = [feetOf(solve(one)), feetOf(solve(mirrorOf(one)))];
        const turned = [3, 4, 5, 0, 1, 2].map((i) => (i % 3 === 1 ? 1 : -1) * (back[i] as number));
        expectNear(turned, front, 1e-8, sizeOf(one));
      }),
    );
  });

  test("turned a quarter, a weight is a push: forces and bars as they were, turned with it", () => {
    holds(
      fc.property(loadedHoop, (given) => {
        const one = withoutBarWeight(given);
        const [upright, turned] = [solve(one), solve(quarterTurned(one))];
        const expected = feetOf(upright).map((_, i, feet) =>
          i % 3 === 0 ? -(feet[i + 1] as number) : (feet[i % 3 === 1 ? i - 1 : i] as number),
        );
        expectNear(feetOf(turned), expected, 1e-8, sizeOf(one));
        const [low, high] = [15, 15 + 7 * one.hoop.bars.length];
        expectNear(numbers(turned, low, high), numbers(upright, low, high), 1e-8, sizeOf(one));
        const found = [upright, turned].map(({ frame, response }) => {
          const extremes = new Float64Array(12);
          hoopExtremes(frame, response, extremes);
          return Array.from(extremes).filter((_, i) => i % 2 === 0);
        });
        expectNear(found[1] ?? [], found[0] ?? [], 1e-8, sizeOf(one));
      }),
    );
  });

  test("lengths times k at equal q: forces k, moments k^2, deflections and N/A alike, turns 1/k", () => {
    holds(
      fc.property(loadedHoop, fc.double({ min: 0.3, max: 4, noNaN: true }), (one, k) => {
        const [small, large] = [solve(one), solve(onScale(one, k))];
        const powers = [1, 1, 2, 1, 1, 2, 0, 0, -1, 0, 0, -1];
        const expected = numbers(small, 0, 12).map(
          (value, i) => value * k ** (powers[i] as number),
        );
        const found = numbers(large, 0, 12);
        expectNear(found.slice(0, 6), expected.slice(0, 6), 1e-8, k * sizeOf(one));
        expectNear(found.slice(6), expected.slice(6), 1e-8);
      }),
    );
  });

  test("Maxwell and Betti: loads do the same work on each other's displacements", () => {
    const two = loadedHoop.chain((one) =>
      fc.record({ one: fc.constant(withoutBarWeight(one)), more: arbitraryLoads(one.hoop.line) }),
    );
    holds(
      fc.property(two, ({ one, more: all }) => {
        const more = all.filter(([{ kind }]) => kind !== "bar-weight");
        const none = (loads: LoadedHoop["loads"]) =>
          loads.map(([load]): [HoopLoad, number] => [load, 0]);
        const first = solve({ ...one, loads: [...one.loads, ...none(more)] });
        const second = solve({ ...one, loads: [...none(one.loads), ...more] });
        const own = [workOf(one.loads, first), workOf(more, second)];
        expectNear([workOf(more, first)], [workOf(one.loads, second)], 1e-8, greatest(own));
      }),
    );
  });

  test("Clapeyron: loads do twice the work that hoop, bars and springs store", () => {
    holds(
      fc.property(fc.oneof(loadedHoop, slidingHoop), (given) => {
        const one = withoutBarWeight(given);
        const solved = solve(one);
        expectNear([2 * strainEnergy(solved, one)], [workOf(one.loads, solved)], 1e-7);
      }),
    );
  });

  test("a bar more, or stiffer members, and the loads never do more work", () => {
    const changed = loadedHoop.chain((one) =>
      fc.record({
        one: fc.constant(withoutBarWeight(one)),
        with: arbitraryHoop.map(({ bars }) => bars.filter(({ to }) => "s" in to)),
        area: fc.double({ min: 1, max: 3, noNaN: true }),
        bending: fc.double({ min: 1, max: 3, noNaN: true }),
      }),
    );
    holds(
      fc.property(changed, ({ one, with: more, area, bending }) => {
        const { hoop } = one;
        const before = strainEnergy(solve(one), one);
        const reach = (s: number, of: Hoop) => (s / of.line.length) * hoop.line.length;
        const added = more.slice(0, 1).map((bar): HoopBar => {
          const place = (share: number) => ({ s: reach(share, hoop) });
          return {
            ...bar,
            from: place(0.15 * hoop.line.length),
            to: place(0.7 * hoop.line.length),
          };
        });
        const braced = { ...one, hoop: { ...hoop, bars: [...hoop.bars, ...added] } };
        expect(strainEnergy(solve(braced), braced)).toBeLessThanOrEqual(before * (1 + 1e-8));
        const section = {
          ...hoop.section,
          A: area * hoop.section.A,
          I: bending * hoop.section.I,
        };
        const stiff = { ...one, hoop: { ...hoop, section } };
        expect(strainEnergy(solve(stiff), stiff)).toBeLessThanOrEqual(before * (1 + 1e-8));
      }),
    );
  });

  test("feet that move as one stiff body leave no forces", () => {
    const move = fc.double({ min: -0.1, max: 0.1, noNaN: true });
    holds(
      fc.property(arbitraryHoop, move, move, move, (hoop, dx, dz, turn) => {
        const frame = new HoopFrame(hoop, []);
        const { line } = hoop;
        const moved = (s: number): [number, number, number] => {
          const { x, z } = pointOnLine(line, s);
          return [dx - turn * z, dz + turn * x, turn];
        };
        const response = new Float64Array(frame.size);
        frame.respond([], [...moved(0), ...moved(line.length)], response);
        const stiffest = greatest(frame.footStiffness) * 0.1;
        expect(greatest(response.slice(0, 6))).toBeLessThanOrEqual(1e-10 * stiffest);
        for (const share of [0.13, 0.5, 0.81]) {
          const shape = hoopShapeAt(frame, response, share * line.length);
          expectNear([shape.x, shape.z, shape.turn], moved(share * line.length), 1e-9, 0.01);
        }
      }),
    );
  });

  test("a bar pulls by E A times its strain where its joints part, and pushes where they meet", () => {
    holds(
      fc.property(fc.oneof(loadedHoop, slidingHoop), (one) => {
        const solved = solve(one);
        const { frame, response } = solved;
        const { line, joints, bars } = one.hoop;
        const placed = (at: HoopBar["from"]): readonly [PlanePoint, PlanePoint] => {
          if ("s" in at) return [pointOnLine(line, at.s), hoopShapeAt(frame, response, at.s)];
          const first = frame.jointAt(at.joint);
          const moved = { x: response[first] as number, z: response[first + 1] as number };
          return [joints[at.joint] as PlanePoint, moved];
        };
        for (const [i, { from, to, section }] of bars.entries()) {
          const [[a, moveA], [b, moveB]] = [placed(from), placed(to)];
          const { length } = barOf(solved, i);
          const apart =
            ((b.x - a.x) * (moveB.x - moveA.x) + (b.z - a.z) * (moveB.z - moveA.z)) / length;
          const moved = Math.hypot(moveA.x, moveA.z) + Math.hypot(moveB.x, moveB.z);
          const stiffness = (section.E * section.A) / length;
          const [start, end] = [0, 3].map((at) => response[frame.barAt(i) + at] as number);
          const mean = ((start as number) + (end as number)) / 2;
          expectNear([mean], [stiffness * apart], 1e-8, sizeOf(one) + 1e-5 * stiffness * moved);
        }
      }),
    );
  });

  test("a bar rigid at a free joint bends by 3 E I / l for each turn of it against the chord", () => {
    let bent = 0;
    holds(
      fc.property(loadedHoop.map(withoutBarWeight), (one) => {
        const solved = solve(one);
        const { frame, response } = solved;
        const { line, joints, bars } = one.hoop;
        for (const [joint, point] of joints.entries()) {
          const [x, z, turn] = [0, 1, 2].map((k) => response[frame.jointAt(joint) + k]) as [
            number,
            number,
            number,
          ];
          const rigid = [...bars.entries()].filter(([, { toEnd }]) => toEnd === "rigid");
          if (rigid.length === 0) expect(turn).toBe(0);
          for (const [i, { from, section }] of rigid) {
            if (!("s" in from)) throw new Error("bars of a truss start on the hoop");
            const [start, moved] = [
              pointOnLine(line, from.s),
              hoopShapeAt(frame, response, from.s),
            ];
            const { length } = barOf(solved, i);
            const across =
              (point.x - start.x) * (z - moved.z) - (point.z - start.z) * (x - moved.x);
            const chord = across / length ** 2;
            const stiffness = (3 * section.E * section.I) / length;
            const most = sizeOf(one) * line.length + 1e-5 * stiffness * Math.abs(chord);
            expectNear(
              [response[frame.barAt(i) + 5] as number],
              [stiffness * (turn - chord)],
              1e-8,
              most,
            );
            bent += Math.abs(turn) > 1e-9 ? 1 : 0;
          }
        }
      }),
    );
    expect(bent).toBeGreaterThan(0);
  });

  test("a bar of next to no stiffness changes nothing: joints of its own only", () => {
    holds(
      fc.property(loadedHoop, (one) => {
        const { line, section } = one.hoop;
        const ghost: HoopBar = {
          from: { s: 0.11 * line.length },
          to: { s: 0.93 * line.length },
          fromEnd: "rigid",
          toEnd: "rigid",
          section: { ...section, E: section.E * 1e-13 },
          weight: 0,
        };
        const more = { ...one, hoop: { ...one.hoop, bars: [...one.hoop.bars, ghost] } };
        expectNear(feetOf(solve(more)), feetOf(solve(one)), 1e-8, sizeOf(one));
      }),
    );
  });

  test("the condensed stiffness of the feet with the forces of clamped feet gives the same as springs", () => {
    const feet: FeetSupport = fixedFeet;
    holds(
      fc.property(loadedHoop, ({ hoop, loads }) => {
        const solved = solve({ hoop, feet, loads });
        const { frame } = solved;
        expectNear(
          feetOf(solved),
          [0, 1, 2, 3, 4, 5].map((way) =>
            loads.reduce(
              (sum, [, factor], i) => sum + factor * (frame.fixedFootForces[6 * i + way] as number),
              0,
            ),
          ),
          1e-12,
        );
        const move = [0.01, -0.02, 0.03, 0.02, 0.01, -0.01];
        const response = new Float64Array(frame.size);
        frame.respond(
          loads.map(([, factor]) => factor),
          move,
          response,
        );
        const expected = feetOf(solved).map((force, i) =>
          move.reduce((sum, d, j) => sum + d * (frame.footStiffness[6 * i + j] as number), force),
        );
        expectNear(Array.from(response.slice(0, 12)), [...expected, ...move], 1e-10);
      }),
    );
  });
});
