import type { Computations } from "./published/given.ts";
import { publishedRows } from "./published/published-rows.ts";
import { readPublished, type Texts } from "./published/read-published.ts";
import type { Work } from "./reach/watch.ts";
import { type BeamTables, pointBeamRow, uniformBeamRows } from "./statics/beam-rows.ts";
import { type BedCase, bedRows } from "./statics/bed-rows.ts";
import type { HoopCase } from "./statics/hoop-case.ts";
import { hoopRows } from "./statics/hoop-rows.ts";
import type { RailCase } from "./statics/rail-case.ts";
import { railRows } from "./statics/rail-rows.ts";
import { ballastAndTowComputations } from "./subject/ballast-and-tow.ts";
import { connectionComputations } from "./subject/connections.ts";
import { cuttingComputations } from "./subject/cutting.ts";
import { groundComputations } from "./subject/ground.ts";
import { hoopComputations } from "./subject/hoop-forces.ts";
import { materialComputations } from "./subject/materials.ts";
import { memberComputations } from "./subject/members.ts";
import { pullTestComputations } from "./subject/pull-tests.ts";
import { sectionComputations } from "./subject/sections.ts";
import { componentComputations } from "./subject/wind-components.ts";
import { shapeComputations } from "./subject/wind-shape.ts";
import { siteComputations } from "./subject/wind-site.ts";
import { workedFormula } from "./subject/worked-formula.ts";
import { houseRows } from "./whole-house/house-rows.ts";
import type { IndependentCase } from "./whole-house/independent-case.ts";

/** A chapter of the calculation: which published quantities belong to it, and what else does. */
interface Subject {
  readonly title: string;
  readonly computations: Computations;
  /** Rows from files that are no list of published values. */
  readonly others?: (read: (file: string) => unknown) => readonly Work[];
}

const beams = (tables: BeamTables): Work[] => [
  ...Object.entries(tables.spans).map(
    ([count, row]): Work =>
      () =>
        uniformBeamRows(Number(count), row),
  ),
  ...tables.equal_point_loads.rows.map(
    (row): Work =>
      () => [pointBeamRow(row)],
  ),
];

/** The chapters, in the order of the calculation. */
const subjects = {
  wind: {
    title: "Wind: pressure, openings, coefficients",
    computations: {
      ...siteComputations,
      ...shapeComputations,
      ...componentComputations,
      "wind formula": workedFormula,
    },
  },
  section: {
    title: "Sections, gauges, zinc",
    computations: { ...sectionComputations, "section formula": workedFormula },
  },
  frame: {
    title: "Hoops, rails and beds as frames",
    computations: { ...hoopComputations, "frame formula": workedFormula },
    others: (read) => [
      ...(read("statics/hoop_cases.json") as { cases: HoopCase[] }).cases.map(
        (one): Work =>
          () =>
            hoopRows(one),
      ),
      ...(read("statics/rail_cases.json") as { cases: RailCase[] }).cases.map(
        (one): Work =>
          () =>
            railRows(one),
      ),
      ...beams(read("statics/continuous_beam_tables.json") as BeamTables),
      ...(read("statics/boef_cases.json") as BedCase[]).map(
        (one): Work =>
          () =>
            bedRows(one),
      ),
    ],
  },
  ground: {
    title: "Ground and anchors",
    computations: { ...groundComputations, "ground formula": workedFormula },
  },
  "pull-test": {
    title: "Pull tests and their statistics",
    computations: { ...pullTestComputations, "pull-test formula": workedFormula },
  },
  ballast: {
    title: "Ballast, friction, pull to move",
    computations: { ...ballastAndTowComputations, "ballast formula": workedFormula },
  },
  member: {
    title: "Strength of members",
    computations: { ...memberComputations, "member formula": workedFormula },
  },
  material: {
    title: "Steels, wood and panels",
    computations: { ...materialComputations, "material formula": workedFormula },
  },
  connection: {
    title: "Bolts, welds, stubs on rails",
    computations: { ...connectionComputations, "connection formula": workedFormula },
  },
  "load-path": {
    title: "Load path: shares, spans, resultants",
    computations: { "load-path formula": workedFormula },
  },
  cutting: {
    title: "Cut lists",
    computations: cuttingComputations,
  },
  "whole-house": {
    title: "Whole houses, worked independently",
    computations: {},
    others: (read) =>
      (read("independent/whole-house.json") as { cases: IndependentCase[] }).cases.flatMap(
        houseRows,
      ),
  },
} as const satisfies Record<string, Subject>;

export type ChapterId = keyof typeof subjects;
export const chapterIds = Object.keys(subjects) as ChapterId[];

/** What is to be computed for a chapter. */
export interface ChapterWork {
  readonly id: ChapterId;
  readonly title: string;
  readonly work: readonly Work[];
}

/**
 * The work of each chapter asked for.
 *
 * @param texts all files under `fixtures` that hold published values, by their path there
 * @throws Error where a file's quantity is computed by no chapter, or by more than one
 */
export function chaptersOf(texts: Texts, ids: readonly ChapterId[] = chapterIds): ChapterWork[] {
  const files = readPublished(texts);
  for (const { file, quantity } of files) {
    const by = chapterIds.filter((id) => quantity in subjects[id].computations);
    if (by.length !== 1) throw new Error(`${file}: ${quantity} is computed ${by.length} times`);
  }
  const read = (file: string): unknown => {
    const text = texts[file];
    if (text === undefined) throw new Error(`${file} is missing`);
    return JSON.parse(text);
  };
  return ids.map((id) => {
    const { title, computations, others }: Subject = subjects[id];
    const rows = files.flatMap((file) => {
      const compute = computations[file.quantity];
      return compute ? publishedRows(file, compute) : [];
    });
    const single = rows.map(
      (row): Work =>
        () => [row()],
    );
    return { id, title, work: [...single, ...(others?.(read) ?? [])] };
  });
}
