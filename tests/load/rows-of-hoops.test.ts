import {
  acrossHoopRows,
  alongHoopRows,
  coveredAlong,
  freeAlong,
  type HoopPressureRow,
  hoopTributaries,
  type LoadsOfCases,
  type Shell,
  shellOf,
  singleCheckCases,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centreLines, holds, insideCoefficients, seed, surfacesOf } from "./arbitrary-house.ts";

const both = { front: true, back: true };
const bare = { dragArea: 1, x: 0, y: 0, z: 1 };

function loadsOn(shell: Shell, over: "covered" | "open", inside: readonly number[]): LoadsOfCases {
  const surfaces = surfacesOf({ shell, obstacles: [], frame: bare }, over, both);
  return {
    surfaces,
    insideCoefficients: inside,
    table: singleCheckCases(surfaces, inside),
  };
}

const evenPlaces = ({ L, hoopCount }: Shell) =>
  Array.from({ length: hoopCount }, (_, hoop) => -L / 2 + (hoop * L) / (hoopCount - 1));

/** Each row whose hoop stretch lies under one zone of its set has that zone's coefficient. */
function expectOneZone(rows: readonly HoopPressureRow[], from: number, to: number): number {
  let met = 0;
  for (const { outside, sources } of rows) {
    for (const { set, direction, form } of sources) {
      if (form === "0.87 C_p") continue;
      const [near, far] = direction === "+y" ? [from, to] : [-to, -from];
      const zone = set.zones.find((one) => one.from <= near && far <= one.to);
      if (!zone) continue;
      met += 1;
      expect(outside[3]).toBe(zone.coefficient);
    }
  }
  return met;
}

describe(`rows of pressures on hoops (seed ${seed})`, () => {
  const over = fc.constantFrom("covered" as const, "open" as const);

  test("no two rows load a hoop alike, and every case stands in one of them only", () => {
    let shared = 0;
    holds(
      fc.property(centreLines, over, insideCoefficients, (lines, covering, inside) => {
        const shell = shellOf(lines);
        const loads = loadsOn(shell, covering, inside);
        const middle = { from: -shell.L / 8, to: shell.L / 8 };
        for (const rows of [acrossHoopRows(shell, loads), alongHoopRows(shell, loads, middle)]) {
          const texts = rows.map((row) => `${row.outside} ${row.inside}`);
          expect(new Set(texts).size).toBe(texts.length);
          const names = rows.flatMap(({ sources }) =>
            sources.map(({ caseIndex, form }) => `${caseIndex} ${form}`),
          );
          expect(new Set(names).size).toBe(names.length);
          shared += names.length - rows.length;
        }
      }),
      40,
    );
    expect(shared).toBeGreaterThan(0);
  });

  test("a hoop under one zone has its very coefficient, so that rows alike are found alike", () => {
    let met = 0;
    holds(
      fc.property(centreLines, over, (lines, covering) => {
        const shell = shellOf(lines);
        const loads = loadsOn(shell, covering, [0]);
        for (const { from, to } of hoopTributaries(shell, evenPlaces(shell))) {
          met += expectOneZone(alongHoopRows(shell, loads, { from, to }), from, to);
        }
      }),
      40,
    );
    expect(met).toBeGreaterThan(100);
  });

  test("also where its stretch begins or ends with the zone", () => {
    const shell = { ...shellOf(eighth), L: 16, crown: 2 };
    const loads = loadsOn(shell, "covered", [0]);
    for (let part = 1; part < 60; part += 1) {
      const length = part / 60;
      // Zones end at a half, one and two crown heights from the windward end: 1, 2 and 4 m.
      for (const [from, to] of [
        [-7, -7 + length],
        [-6 - length, -6],
        [-6, -6 + length],
        [-4, -4 + length],
      ] as const) {
        const met = expectOneZone(alongHoopRows(shell, loads, { from, to }), from, to);
        expect(met).toBeGreaterThan(0);
      }
    }
  });
});

const eighth = {
  shape: "round",
  span: 5.95,
  rise: 1.975,
  length: 15.95,
  springing: 0,
  hoopDiameter: 0.05,
  hoopCount: 9,
} as const;

describe("zones along the ridge", () => {
  test.each([1.5, 3, 4, 6, 16, 40])(
    "cover a house %s m long once, none of them empty",
    (length) => {
      const shell = { ...shellOf(eighth), L: length, crown: 2 };
      for (const { zones } of [...coveredAlong(shell), ...freeAlong(shell)]) {
        expect(zones[0]?.from).toBe(-length / 2);
        expect(zones.at(-1)?.to).toBe(length / 2);
        for (const [place, { from, to }] of zones.entries()) {
          expect(to).toBeGreaterThan(from);
          if (place > 0) expect(from).toBe(zones[place - 1]?.to);
        }
      }
    },
  );
});
