import {
  caseOnRails,
  combinationOf,
  type Evaluation,
  railLoadsOf,
  sideSign,
} from "@hoopstay/house";
import { caseStride } from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { change, evaluated, holds, level, seed, sloping } from "./example-house.ts";

const sets = ({ states }: Evaluation) => [...new Set(states.map(({ set }) => set))];
const sum = (values: ArrayLike<number>, by: (at: number) => number = () => 1): number =>
  Array.from(values).reduce((total, value, at) => total + value * by(at), 0);

describe(`laws of rail loads (seed ${seed})`, () => {
  test("the parts of every load case add up to its uplift and its two moments", () => {
    holds(
      fc.property(change, (by) => {
        const evaluation = evaluated(by);
        const { house, shell } = evaluation;
        const { span } = house.lines;
        for (const set of sets(evaluation)) {
          const { components, count } = set.table;
          for (let index = 0; index < count; index += 1) {
            const at = index * caseStride;
            const [fz, mx, my] = [2, 3, 4].map((place) => components[at + place] ?? Number.NaN);
            const { even, roof, rest, front, back } = caseOnRails(set, shell, span, index);
            const zoned = roof ? roof.roof.force.uplift : 0;
            const turned = roof ? -roof.sense * roof.roof.force.upliftMoment : 0;
            const size = shell.b * shell.L * 1e-12;
            expect(Math.abs(even.right + even.left + zoned - (fz ?? 0))).toBeLessThan(size);
            const tipping = ((even.left - even.right) * span) / 2;
            expect(Math.abs(tipping - (my ?? 0))).toBeLessThan(size * shell.b);
            expect(Math.abs(rest + front + back + turned - (mx ?? 0))).toBeLessThan(size * shell.L);
          }
        }
      }),
      25,
    );
  });

  test("without boxes all of the moment along the ridge is on the end walls that stand", () => {
    holds(
      fc.property(change, (by) => {
        const evaluation = evaluated({ ...by, boxes: [] });
        const { house, shell } = evaluation;
        for (const set of sets(evaluation)) {
          set.table.cases.forEach(({ along }, index) => {
            const { rest, front, back } = caseOnRails(set, shell, house.lines.span, index);
            if (!set.ends.front) expect(front).toBe(0);
            if (!set.ends.back) expect(back).toBe(0);
            const through = !set.ends.front && !set.ends.back;
            if (set.covering === "bare" || (through && along)) return;
            expect(Math.abs(rest)).toBeLessThan(1e-11 * shell.endArea * shell.L);
          });
        }
      }),
      15,
    );
  });

  test.each([
    ["level ground", level, "ASD"],
    ["a slope", sloping, "LRFD"],
  ] as const)("every load on a rail has its half of the case and its weight: %s", (_, on, by) => {
    holds(
      fc.property(change, (changes) => {
        const evaluation = evaluated(changes, on);
        const { house, site, pressure, shell } = evaluation;
        const loads = railLoadsOf(evaluation, undefined, by);
        const { wind, dead, slope } = combinationOf(by);
        const places = loads.on.stations.map((place) => place - loads.on.middle);
        const angle = site.slope?.angle ?? 0;
        const downhill = site.slope?.downhill ?? [0, 0];
        for (const { corners, inner } of loads.families) {
          for (const id of new Set([...corners, ...inner()])) {
            const load = loads.loads[id];
            if (!load) throw new Error("no such load");
            const n = sideSign[load.side];
            const { span } = house.lines;
            const { table, holds: held } = load.state.set;
            const at = load.caseIndex * caseStride;
            const [fz = 0, mx = 0, my = 0] = [2, 3, 4].map(
              (place) => (table.components[at + place] ?? Number.NaN) * wind * pressure,
            );
            const holding = held[0]?.holdings.find(({ weight }) => weight.name === load.weight);
            if (!holding) throw new Error("no such weight");
            let [force, moment] = [fz / 2 - (n * my) / span, mx / 2];
            let overturning = 0;
            for (const { x, y, z, weight } of [
              { ...holding.weight, weight: holding.weight.W },
              ...house.ballast,
            ]) {
              const down = dead * weight * Math.cos(angle) * (0.5 + (n * x) / span);
              force -= down;
              moment -= down * y;
              overturning += slope * weight * Math.sin(angle) * z;
            }
            const forces = loads.forces(id);
            const scale = wind * pressure * shell.b * shell.L * 1e-9;
            // With the slope or without, by each axis.
            const offForce = [0, 1].map((part) =>
              Math.abs(sum(forces) - force + (part * n * overturning * downhill[0]) / span),
            );
            const offMoment = [0, 1].map((part) =>
              Math.abs(
                sum(forces, (place) => places[place] ?? Number.NaN) -
                  moment +
                  (part * overturning * downhill[1]) / 2,
              ),
            );
            expect(Math.min(...offForce)).toBeLessThan(scale);
            expect(Math.min(...offMoment)).toBeLessThan(scale * shell.L);
          }
        }
      }),
      12,
    );
  });
});
