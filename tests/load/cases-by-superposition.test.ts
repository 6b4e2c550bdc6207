import {
  acrossHoopRows,
  type CaseTable,
  type Covering,
  caseStride,
  componentTable,
  type DirectedLoad,
  hoopBorders,
  hoopStretchCount,
  hoopZones,
  insideLoad,
  roofSetsOf,
  shellOf,
  singleCheckCases,
  torsionCases,
  type WindBody,
  windSurfaces,
} from "@hoopstay/load";
import { describe, expect, test } from "vitest";

const shell = shellOf({
  shape: "round",
  span: 6,
  rise: 2,
  length: 12,
  springing: 0.5,
  hoopDiameter: 0.05,
  hoopCount: 7,
});
const body: WindBody = {
  shell,
  obstacles: [{ x: 1, y: 4, z: 0.7, areaAcross: 2, areaAlong: 3, outside: true }],
  frame: { dragArea: 5, x: 0.3, y: -0.4, z: 1.6 },
};
const ends = { front: true, back: false };

const rowOf = ({ components }: CaseTable, index: number) =>
  [...components.slice(index * caseStride, (index + 1) * caseStride)] as const;

/** Figure 27.3-8: the whole of one axis, 0.75 of both together, 0.75 and 0.5625 with torsion. */
const shares: Readonly<Record<number, number>> = { 1: 1, 2: 0.75, 3: 0.75, 4: 0.5625 };

describe.each<Covering>(["covered", "open", "bare"])("every case of a %s house", (covering) => {
  const surfaces = windSurfaces(body, covering, ends, roofSetsOf(body, covering));
  const tables = [
    singleCheckCases(surfaces, [0.55, -0.55]),
    torsionCases(surfaces, [0.55, -0.55], { across: shell.L, along: shell.b }),
  ];
  const part = (one: DirectedLoad | null, key: keyof DirectedLoad["load"]) => one?.load[key] ?? 0;

  test.each([0, 1])("adds up its parents' parts: table %s", (which) => {
    const table = tables[which];
    if (!table) throw new Error("no table");
    expect(table.components).toHaveLength(table.count * caseStride);
    expect(table.cases).toHaveLength(table.count);
    for (const [
      index,
      { number, across, along, vertical, inside, twist },
    ] of table.cases.entries()) {
      const share = shares[number] ?? 0;
      const lifting = vertical === "across" ? across : along;
      const both = (key: keyof DirectedLoad["load"]) => part(across, key) + part(along, key);
      const torsion =
        share *
        0.15 *
        (Math.abs(part(across, "fx")) * shell.L + Math.abs(part(along, "fy")) * shell.b);
      const expected = [
        share * both("fx"),
        share * both("fy") + inside * surfaces.inside.fy,
        part(lifting, "fz") + inside * surfaces.inside.fz,
        share * both("mxHorizontal") + part(lifting, "mxVertical") + inside * surfaces.inside.mx,
        share * both("myHorizontal") + part(lifting, "myVertical"),
        share * both("mz") + twist * torsion,
        share * (part(across, "fx") - part(across, "fxArch")),
      ];
      const row = rowOf(table, index);
      for (const [place, value] of expected.entries()) {
        expect(row[place], `case ${number}, number ${place}`).toBeCloseTo(value, 9);
      }
    }
  });
});

test("the same table is told twice", () => {
  const surfaces = windSurfaces(body, "covered", ends, roofSetsOf(body, "covered"));
  const table = singleCheckCases(surfaces, [0.18]);
  expect(table.components).toBe(table.components);
  expect(table.cases).toBe(table.cases);
});

test("stretches of a hoop: equal neighbours as one, the strips by themselves", () => {
  const even = hoopZones(new Array<number>(hoopStretchCount).fill(-1));
  expect(even).toHaveLength(3);
  expect(even.map(({ coefficient }) => coefficient)).toEqual([-1, -1, -1]);
  const stepped = Array.from({ length: hoopStretchCount }, (_, place) => place);
  expect(hoopZones(stepped).map(({ coefficient }) => coefficient)).toEqual(stepped);
  for (const zones of [even, hoopZones(stepped)]) {
    expect(zones[0]?.from).toBe(hoopBorders[0]);
    expect(zones.at(-1)?.to).toBe(hoopBorders.at(-1));
    for (const [place, { from }] of zones.slice(1).entries()) expect(from).toBe(zones[place]?.to);
  }
});

test("cases that load the hoop alike share a row, others do not", () => {
  const surfaces = windSurfaces(body, "covered", ends, roofSetsOf(body, "covered"));
  const insideCoefficients = [0.18, -0.18];
  const table = singleCheckCases(surfaces, insideCoefficients);
  const rows = acrossHoopRows(shell, { surfaces, insideCoefficients, table });
  const told = rows.map(({ outside, inside }) => [...outside, inside].join());
  expect(new Set(told).size).toBe(rows.length);
  const sets = new Set(surfaces.across.flat().map(({ set }) => set?.id));
  expect(rows.length).toBeGreaterThan(2 * sets.size);
  const sources = rows.flatMap((row) => row.sources);
  // Each direction and set twice, by both forms of its coefficients, for each inside pressure.
  expect(sources).toHaveLength(2 * 2 * surfaces.across.flat().length);
});

test("inside pressure pushes the one end wall that stands outward, at its middle", () => {
  const { endArea, endCentroid, b, L } = shell;
  const expected = { fy: endArea, fz: b * L, mx: -endCentroid * endArea };
  expect(insideLoad(shell, { front: true, back: false })).toEqual(expected);
  expect(insideLoad(shell, { front: false, back: true })).toMatchObject({ fy: -endArea });
});

test("the slope at the springing of a flat arch is that of its circle", () => {
  // R sin(slope) is half the span.
  const { springSlope } = componentTable(shell, "covered");
  expect(Math.sin(springSlope) * shell.arc.radius).toBeCloseTo(shell.b / 2, 9);
  expect(springSlope).toBeLessThan(Math.PI / 2);
});
