import {
  acrossHoopRows,
  alongHoopRows,
  type CentreLines,
  type Covering,
  caseStride,
  componentArchFactor,
  type EndsPresent,
  gustFactor,
  type HoopPressureRow,
  hoopBorders,
  hoopDragRows,
  hoopLineLoad,
  hoopSection,
  hoopTributaries,
  hoopZones,
  type LoadsOfCases,
  type Shell,
  shellOf,
  singleCheckCases,
} from "@hoopstay/load";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  between,
  centreLines,
  componentsOf,
  ends,
  holds,
  insideCoefficients,
  seed,
  surfacesOf,
} from "./arbitrary-house.ts";

const both = { front: true, back: true };
const shut = fc.constantFrom<Covering>("covered", "open");

/** A house of hoops alone, its case table and the places of its hoops. */
function houseOf(
  lines: CentreLines,
  over: Covering,
  present: EndsPresent,
  inside: readonly number[],
) {
  const shell = shellOf(lines);
  const { hoopDiameter, hoopLine, hoopCount } = shell;
  const frame = { dragArea: 1.2 * hoopDiameter * hoopLine * hoopCount, x: 0, y: 0, z: 1 };
  const surfaces = surfacesOf({ shell, obstacles: [], frame }, over, present);
  const loads: LoadsOfCases = {
    surfaces,
    insideCoefficients: inside,
    table: singleCheckCases(surfaces, inside),
  };
  const places = Array.from(
    { length: hoopCount },
    (_, hoop) => -lines.length / 2 + (hoop * lines.length) / (hoopCount - 1),
  );
  return { shell, loads, tributaries: hoopTributaries(shell, places) };
}

/** Net force on one hoop per length of house, m: to the right, and up. */
function forceOf(shell: Shell, { outside, inside }: HoopPressureRow): { fx: number; fz: number } {
  const section = hoopSection(shell);
  let [fx, fz] = [0, 0];
  for (const [stretch, coefficient] of outside.entries()) {
    const [a, b] = [section[stretch], section[stretch + 1]];
    if (!a || !b) throw new Error("eight stretches between nine borders");
    fx += (coefficient - inside) * (b.z - a.z);
    fz -= (coefficient - inside) * (b.x - a.x);
  }
  return { fx, fz };
}

/** The parent load as the frame feels it, by the form of its coefficients. */
function parentOf({ table }: LoadsOfCases, row: HoopPressureRow, shell: Shell, source = 0) {
  const from = row.sources[source];
  if (!from) throw new Error("a row has a source");
  const [fx = NaN, , fz = NaN] = componentsOf(table, from.caseIndex);
  const scale = from.form === "0.87 C_p" ? 0.87 / 0.85 : 1;
  const lift = row.inside * shell.b * shell.L;
  return { fx: scale * fx, fz: scale * (fz - lift) + lift, from };
}

describe(`laws of pressures on hoops (seed ${seed})`, () => {
  test("wind across: all hoops together feel the parent load, sideways and up", () => {
    holds(
      fc.property(centreLines, shut, ends, insideCoefficients, (lines, over, present, inside) => {
        const { shell, loads, tributaries } = houseOf(lines, over, present, inside);
        const length = tributaries.reduce((sum, { from, to }) => sum + to - from, 0);
        expect(length).toBeCloseTo(shell.L, 10);
        const rows = acrossHoopRows(shell, loads);
        const size = shell.b * shell.L;
        for (const row of rows) {
          const { fx, fz } = forceOf(shell, row);
          for (const [place] of row.sources.entries()) {
            const parent = parentOf(loads, row, shell, place);
            expect(Math.abs(length * fx - parent.fx)).toBeLessThan(1e-9 * size);
            expect(Math.abs(length * fz - parent.fz)).toBeLessThan(1e-9 * size);
            const one = loads.table.cases[parent.from.caseIndex];
            expect(one).toMatchObject({ number: 1, along: null, inside: row.inside });
            expect(one?.across?.set).toBe(parent.from.set);
            expect(parent.from.direction).toBe(one?.across?.sense === 1 ? "+x" : "-x");
          }
        }
      }),
    );
  });

  test("every case 1 across stands in a row, the arched ones in both forms", () => {
    holds(
      fc.property(centreLines, shut, insideCoefficients, (lines, over, inside) => {
        const { shell, loads } = houseOf(lines, over, both, inside);
        const all = acrossHoopRows(shell, loads).flatMap(({ sources }) => sources);
        for (const [index, one] of loads.table.cases.entries()) {
          if (one.number !== 1 || !one.across) continue;
          const forms = all.filter((source) => source.caseIndex === index).map(({ form }) => form);
          const free =
            one.across.set?.id.startsWith("clear") || one.across.set?.id.startsWith("ob");
          expect(forms).toEqual(free ? ["G C_N"] : ["G C_p", "0.87 C_p"]);
        }
      }),
      60,
    );
  });

  test("wind along: all hoops together are lifted as the house is, and not pushed sideways", () => {
    const fine = centreLines.map((lines) => ({ ...lines, hoopCount: lines.hoopCount + 20 }));
    let exact = 0;
    holds(
      fc.property(fine, shut, ends, insideCoefficients, (lines, over, present, inside) => {
        const { shell, loads, tributaries } = houseOf(lines, over, present, inside);
        const size = shell.b * shell.L;
        const sums = new Map<string, { fz: number; want: number; whole: boolean }>();
        const first = (tributaries[0]?.to ?? NaN) - (tributaries[0]?.from ?? NaN);
        for (const tributary of tributaries) {
          const length = tributary.to - tributary.from;
          for (const row of alongHoopRows(shell, loads, tributary)) {
            const { fx, fz } = forceOf(shell, row);
            expect(Math.abs(fx)).toBeLessThan(1e-12 * shell.b);
            for (const [place] of row.sources.entries()) {
              const { from, fz: want } = parentOf(loads, row, shell, place);
              const one = loads.table.cases[from.caseIndex];
              expect(one).toMatchObject({ number: 1, across: null, inside: row.inside });
              expect(one?.along?.set).toBe(from.set);
              expect(from.direction).toBe(one?.along?.sense === 1 ? "+y" : "-y");
              const key = `${from.caseIndex} ${from.form}`;
              const zone = from.set.zones[0];
              const whole = zone !== undefined && zone.to - zone.from >= first;
              const sum = sums.get(key) ?? { fz: 0, want, whole };
              sums.set(key, { ...sum, fz: sum.fz + length * fz });
            }
          }
        }
        for (const { fz, want, whole } of sums.values()) {
          if (!whole) continue;
          exact += 1;
          expect(Math.abs(fz - want)).toBeLessThan(1e-9 * size);
        }
      }),
      40,
    );
    expect(exact).toBeGreaterThan(200);
  });

  test("the end hoop to windward takes the first zone's suction on all it carries", () => {
    holds(
      fc.property(centreLines, shut, (lines, over) => {
        const { shell, loads, tributaries } = houseOf(lines, over, both, [0]);
        const [back, front] = [tributaries[0], tributaries[tributaries.length - 1]];
        if (!back || !front) throw new Error("two hoops at least");
        for (const [end, to] of [
          [back, "+y"],
          [front, "-y"],
        ] as const) {
          for (const { outside, sources } of alongHoopRows(shell, loads, end)) {
            for (const { set, form, direction } of sources) {
              if (direction !== to) continue;
              const first = set.zones[0]?.shapeCoefficient ?? NaN;
              const factor = form === "0.87 C_p" ? 0.87 : 0.85;
              expect(outside[3]).toBeCloseTo(factor * first, 12);
              expect(outside[0]).toBeCloseTo(factor * -0.7, 12);
            }
          }
        }
      }),
      60,
    );
  });

  test("mirror images: wind from the other side is the row read backwards", () => {
    holds(
      fc.property(centreLines, shut, insideCoefficients, (lines, over, inside) => {
        const { shell, loads, tributaries } = houseOf(lines, over, both, inside);
        const rows = acrossHoopRows(shell, loads);
        const find = (side: string, id: string, reading: unknown, form: string, within: number) =>
          rows.find(
            (row) =>
              row.inside === within &&
              row.sources.some(
                ({ direction, set, form: as }) =>
                  direction === side && set.id === id && set.reading === reading && as === form,
              ),
          );
        for (const { outside, inside: within, sources } of rows) {
          for (const { direction, set, form } of sources) {
            if (direction === "-x") continue;
            const other = find("-x", set.id, set.reading, form, within);
            expect([...(other?.outside ?? [])].reverse()).toEqual(outside);
          }
        }
        const section = hoopSection(shell);
        for (const [place, { x, z, archShare }] of section.entries()) {
          const twin = section[section.length - 1 - place];
          expect([twin?.x === -x || x === 0, twin?.z]).toEqual([true, z]);
          if (archShare !== null) expect(twin?.archShare).toBeCloseTo(1 - archShare, 12);
        }
        const last = tributaries.length - 1;
        for (const [hoop, { from, to }] of tributaries.entries()) {
          expect(tributaries[last - hoop]?.from).toBeCloseTo(-to, 10);
          expect(tributaries[last - hoop]?.to).toBeCloseTo(-from, 10);
        }
      }),
      60,
    );
  });

  test("the borders follow the outline in order, each at its share of the arch", () => {
    holds(
      fc.property(centreLines, (lines) => {
        const shell = shellOf(lines);
        const { arc, springing } = shell;
        const section = hoopSection(shell);
        expect(section.map(({ id }) => id)).toEqual([...hoopBorders]);
        let before = 0;
        for (const { x, z, archShare } of section.slice(1, -1)) {
          const share = archShare ?? NaN;
          expect(share).toBeGreaterThanOrEqual(before);
          before = share;
          const turn = 2 * (arc.crownAngle - arc.springAngle);
          const angle = arc.springAngle + turn * Math.min(share, 1 - share);
          expect(Math.abs(x)).toBeCloseTo(Math.abs(arc.radius * Math.cos(angle) - arc.c), 8);
          expect(z).toBeCloseTo(springing + arc.e + arc.radius * Math.sin(angle), 8);
        }
      }),
    );
  });

  test("zones in words merge what is equal and lose nothing", () => {
    holds(
      fc.property(centreLines, shut, (lines, over) => {
        const { shell, loads } = houseOf(lines, over, both, [0.18, -0.18]);
        for (const { outside, sources } of acrossHoopRows(shell, loads)) {
          const zones = hoopZones(outside);
          expect(zones.length).toBeLessThanOrEqual(5);
          const again = zones.flatMap(({ from, to, coefficient }) =>
            new Array(hoopBorders.indexOf(to) - hoopBorders.indexOf(from)).fill(coefficient),
          );
          expect(again).toEqual([...outside]);
          const { set } = sources[0] ?? { set: null };
          if (set?.reading && sources[0]?.direction === "+x" && zones.length === 5) {
            expect(zones[1]?.to).toBe(`left quarter by ${set.reading}`);
            expect(zones[2]?.to).toBe(`right quarter by ${set.reading}`);
          }
        }
      }),
      60,
    );
  });

  test("a house k times as large has the same coefficients", () => {
    holds(
      fc.property(centreLines, shut, between(0.5, 2), (lines, over, k) => {
        const grown = {
          ...lines,
          span: k * lines.span,
          rise: k * lines.rise,
          length: k * lines.length,
          springing: k * lines.springing,
          hoopDiameter: k * lines.hoopDiameter,
        };
        const [one, other] = [lines, grown].map((of) => {
          const { shell, loads, tributaries } = houseOf(of, over, both, [0.55, -0.55]);
          const middle = tributaries[Math.floor(tributaries.length / 2)];
          if (!middle) throw new Error("two hoops at least");
          return [...acrossHoopRows(shell, loads), ...alongHoopRows(shell, loads, middle)].flatMap(
            ({ outside, sources }) => sources.map((source) => ({ outside, source })),
          );
        });
        const key = ({ caseIndex, form }: { caseIndex: number; form: string }) =>
          `${caseIndex} ${form}`;
        const twins = new Map(other?.map(({ outside, source }) => [key(source), outside]));
        for (const { outside, source } of one ?? []) {
          const twin = twins.get(key(source));
          for (const [stretch, value] of outside.entries()) {
            expect(twin?.[stretch]).toBeCloseTo(value, 9);
          }
        }
      }),
      60,
    );
  });

  test("film off: the hoops of a house of hoops catch the whole drag, each way; no pressures", () => {
    holds(
      fc.property(centreLines, ends, (lines, present) => {
        const { shell, loads, tributaries } = houseOf(lines, "bare", present, [0]);
        const [anywhere] = tributaries;
        if (!anywhere) throw new Error("two hoops at least");
        expect(acrossHoopRows(shell, loads)).toEqual([]);
        expect(alongHoopRows(shell, loads, anywhere)).toEqual([]);
        const rows = hoopDragRows(shell, loads);
        expect(rows.map(({ direction }) => direction)).toEqual(["+x", "-x", "+y", "-y"]);
        for (const { caseIndex, direction, drag } of rows.slice(0, 2)) {
          const fx = loads.table.components[caseIndex * caseStride];
          expect(drag * shell.hoopLine * shell.hoopCount).toBeCloseTo(fx ?? NaN, 9);
          expect(loads.table.cases[caseIndex]?.across?.sense).toBe(direction === "+x" ? 1 : -1);
        }
        expect(hoopDragRows(shell, houseOf(lines, "open", present, [0]).loads)).toEqual([]);
      }),
      60,
    );
  });

  test("the line load on the centre line lifts as the pressure on the shell's span does", () => {
    holds(
      fc.property(centreLines, between(0.5, 3), between(-900, 900), (lines, length, pressure) => {
        const { span, hoopDiameter } = lines;
        const load = hoopLineLoad.evaluate(pressure, length, span, hoopDiameter);
        const lift = pressure * length * (span + hoopDiameter);
        expect(Math.abs(load * span - lift)).toBeLessThan(1e-9 * Math.abs(lift) + 1e-12);
      }),
    );
    expect(componentArchFactor.value / gustFactor.value).toBeCloseTo(87 / 85, 12);
  });
});
