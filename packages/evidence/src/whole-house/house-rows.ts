import { type EvidenceRow, sources } from "@hoopstay/core";
import { workingGust } from "@hoopstay/load";
import {
  type Combination,
  type CombinationId,
  checkTerms,
  combinations,
  extremesOf,
  type Governing,
  governingChecks,
} from "@hoopstay/stability";
import { type Allowance, type NumberSet, type RowHead, setRow } from "../row.ts";
import { type IndependentCase, numberOf } from "./independent-case.ts";
import {
  type ComputedHouse,
  computeHouse,
  holdingsOf,
  leastTable,
  rowsOf,
} from "./independent-house.ts";

const place = "whole houses from the design basis by other code, in another language";
const relative = 1e-6;
/** A ratio below it counts as none. */
const tiny = 1e-6;
const why = "a millionth of each: limits by bisection on both sides";

/**
 * Where downhill is unknown and tethers pull aslant, both calculations search for the worst
 * direction, and ours finds a worse one: the cautious one is kept.
 */
const worse = {
  reason:
    "downhill unknown, tethers aslant: both search for the worst direction, ours finds a worse one; the cautious one is kept",
  allowed: 5e-2,
};

const oursIsWorse = (id: string, combination: CombinationId): boolean =>
  id.startsWith("25-") || (id.startsWith("26-") && combination === "LRFD");

/** The same search ends at a slightly different direction here: 1.2e-6 in speed. */
const sameSearch = (id: string): number => (id.startsWith("26-") ? 1e-5 : relative);

type Row = (
  quantity: string,
  sets: readonly NumberSet[],
  allowance?: Allowance & { readonly why?: string },
) => EvidenceRow;

/** A ratio or a speed beside the other calculation's, as a part of the greater of both. */
const alike = (ours: number, theirs: number): NumberSet => ({
  ours: [ours],
  theirs: [theirs],
  scale: Math.max(Math.abs(ours), Math.abs(theirs), tiny),
});

/** The rows of a house: pressure, class, load cases, and every check, held and bare. */
export function houseRows(one: IndependentCase): readonly (() => EvidenceRow[])[] {
  const row = rowOf(one);
  let computed: ComputedHouse | undefined;
  const house = (): ComputedHouse => (computed ??= computeHouse(one.input));
  return [
    () => sitedRows(one, computeHouse(one.input), row),
    ...(["anchored", "bare"] as const).flatMap((hold) =>
      combinations.flatMap((combination) => [
        () => checkRows(one, house(), hold, combination, row),
        () => [leastRow(one, house(), hold, combination, row)],
      ]),
    ),
  ];
}

function rowOf({ id, input }: IndependentCase): Row {
  const { title, edition } = sources.statics;
  const { shape, span, rise, length, edition: asce, exposure, speed } = input;
  const head = {
    file: "independent/whole-house.json",
    source: "statics",
    edition,
    place,
    grade: "derived",
    title: `${title}, ${place} [derived]: ${id}`,
    case: id,
    inputs: `${shape}, span ${span} m, rise ${rise} m, length ${length} m, ASCE ${asce}, exposure ${exposure}, ${speed} m/s`,
    unit: "1",
  } as const satisfies Partial<RowHead>;
  return (quantity, sets, { why: tolerance = why, ...allowance } = { allowed: relative }) =>
    setRow({ ...head, quantity, tolerance }, sets, allowance);
}

function sitedRows(one: IndependentCase, house: ComputedHouse, row: Row): EvidenceRow[] {
  const { enclosure, table, q } = house;
  const inside = (all: readonly number[]): number[] => [...all].sort();
  const cases = rowsOf(table, q);
  const least = leastTable(house.least);
  return [
    row("velocity pressure", [alike(q, one.q)]),
    row(`enclosure class: ${one.class} (1)`, [
      { ours: [Number(enclosure.kind === one.class)], theirs: [1] },
    ]),
    row("inside pressure coefficients", [
      { ours: inside(enclosure.insideCoefficients), theirs: inside(one.GCpi) },
    ]),
    row(
      `load cases, six components each, of ${one.load_case_count}`,
      [{ ours: [table.count], theirs: [one.load_case_count] }, ...paired(cases, one.load_cases)],
      { allowed: 1e-9, why: "twelve digits printed" },
    ),
    row(
      "least loads",
      [
        { ours: [least.count], theirs: [one.least_loads.length] },
        ...paired(rowsOf(least, 1), one.least_loads),
      ],
      { allowed: 1e-9, why: "twelve digits printed" },
    ),
  ];
}

/** Pairs every listed row with the nearest of ours, each of ours taken once. */
function paired(
  ours: readonly (readonly number[])[],
  theirs: readonly (readonly number[])[],
): NumberSet[] {
  const left = new Set(ours);
  return theirs.map((listed) => {
    const offOf = (mine: readonly number[]): number =>
      Math.max(...listed.map((value, i) => Math.abs(value - (mine[i] ?? Number.NaN))));
    let nearest: readonly number[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const mine of left) {
      const off = offOf(mine);
      if (off < least) [nearest, least] = [mine, off];
    }
    left.delete(nearest);
    return { ours: nearest, theirs: listed };
  });
}

type Hold = "anchored" | "bare";

function checkRows(
  one: IndependentCase,
  { table, q, perSpeedSquared }: ComputedHouse,
  hold: Hold,
  combination: Combination,
  row: Row,
): EvidenceRow[] {
  const { holdings, lines } = holdingsOf(one.input, hold === "anchored");
  const terms = checkTerms(holdings, lines, combination, q);
  const checks = governingChecks(terms, table, extremesOf(table, lines));
  const setsOf = ({ check, byRatio, byLimit }: Governing): NumberSet[] => {
    const speed = Math.sqrt(byLimit.limit / perSpeedSquared);
    const ours = [byRatio.ratio, speed, workingGust.evaluate(speed, 0.85)];
    const theirs = one[hold][check][combination.id].map(numberOf);
    if (theirs.length !== (combination.id === "ASD" ? 3 : 2))
      throw new Error(`${one.id}: ${check}`);
    return theirs.map((value, i) => alike(ours[i] as number, value));
  };
  const what = `${hold}, ${combination.id}`;
  const slides = checks.filter(({ check }) => check === "slide");
  const others = checks.filter(({ check }) => check !== "slide");
  const numbers =
    combination.id === "ASD" ? "ratios, code speeds, working gusts" : "ratios, code speeds";
  const found = slides.flatMap(setsOf);
  const known = hold === "anchored" && oursIsWorse(one.id, combination.id);
  // Ours may be worse only: a greater ratio, lower speeds.
  const cautious = found.every(({ ours, theirs }, i) => {
    const [mine = Number.NaN, listed = Number.NaN] = [ours[0], theirs[0]];
    return i === 0 ? mine >= listed * (1 - relative) : mine <= listed * (1 + relative);
  });
  const allowed = hold === "anchored" ? sameSearch(one.id) : relative;
  return [
    row(`${what}: ${numbers} of lifting and tipping`, others.flatMap(setsOf)),
    row(
      `${what}: the same of sliding`,
      found,
      known && cautious ? { allowed, disagreement: worse } : { allowed },
    ),
  ];
}

function leastRow(
  one: IndependentCase,
  house: ComputedHouse,
  hold: Hold,
  combination: Combination,
  row: Row,
): EvidenceRow {
  const { holdings, lines } = holdingsOf(one.input, hold === "anchored");
  const table = leastTable(house.least);
  const terms = checkTerms(holdings, lines, combination, 1);
  const checks = governingChecks(terms, table, extremesOf(table, lines));
  return row(
    `${hold}, ${combination.id}: ratios under the least load`,
    checks.map(({ check, byRatio }) =>
      alike(byRatio.ratio, numberOf(one[hold][check].least[combination.id])),
    ),
  );
}
