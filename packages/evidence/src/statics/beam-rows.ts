import type { EvidenceRow } from "@hoopstay/core";
import { railAt } from "@hoopstay/frame";
import type { NumberSet } from "../row.ts";
import { heldRail, rigidAt } from "./held-rail.ts";
import { staticsRow } from "./statics-row.ts";

/** A number of equal spans under a uniform load; parts of w L and w L^2. */
interface UniformRow {
  readonly support_moments: readonly string[];
  readonly reactions: readonly string[];
  readonly shear_left: readonly string[];
  readonly shear_right: readonly string[];
  readonly span_max_moment_dec: readonly number[];
  readonly x_of_max_over_L: readonly number[];
}

/** Equal loads at equal spaces of every span, none on supports; parts of P and P L. */
interface PointRow {
  readonly spaces_per_span: number;
  readonly spans: number;
  readonly R: readonly number[];
  readonly support_hog: readonly number[];
  readonly max_sag: number;
}

export interface BeamTables {
  readonly spans: Readonly<Record<string, UniformRow>>;
  readonly equal_point_loads: { readonly rows: readonly PointRow[] };
}

const file = {
  file: "continuous_beam_tables.json",
  place: "equal spans by the three-moment equation, by other code",
};

const fraction = (text: string): number => {
  const [above = Number.NaN, below = 1] = text.split("/").map(Number);
  return above / below;
};

const spansOf = (count: number, length: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => i * length);

/** Rows of a number of spans under a uniform load. */
export function uniformBeamRows(count: number, row: UniformRow): EvidenceRow[] {
  const [w, length] = [75, 3.2];
  const places = spansOf(count, length);
  const rail = { length: count * length, stiffness: 2e5 };
  const { bent, ...solution } = heldRail(rail, { uniform: -w }, rigidAt(places));
  const force = w * length;
  const moment = force * length;
  const inSpans = places.slice(0, -1);
  const peaks = inSpans.map((from, i) =>
    railAt(bent, from + (row.x_of_max_over_L[i] as number) * length),
  );
  const made = (quantity: string, set: NumberSet, allowed = 1e-12, why = "exact fractions") =>
    staticsRow(file, {
      case: `${count} spans, uniform load`,
      inputs: "parts of w L and w L^2",
      quantity,
      sets: [set],
      allowed,
      why,
    });
  return [
    made("reactions", {
      ours: solution.supports.map(({ reaction }) => reaction / force),
      theirs: row.reactions.map(fraction),
    }),
    made("moments at supports", {
      ours: places.map((x) => -railAt(bent, x).moment / moment),
      theirs: row.support_moments.map(fraction),
      least: 0.1,
    }),
    made("shears at the left of spans", {
      ours: inSpans.map((from) => railAt(bent, from).shear / force),
      theirs: row.shear_left.map(fraction),
    }),
    made("shears at the right of spans", {
      ours: inSpans.map((_, i) => -railAt(bent, places[i + 1] as number, "left").shear / force),
      theirs: row.shear_right.map(fraction),
    }),
    made(
      "greatest moment of each span, and of all",
      {
        ours: [
          ...peaks.map((peak) => peak.moment / moment),
          solution.extremes.momentMost.moment / moment,
        ],
        theirs: [...row.span_max_moment_dec, Math.max(...row.span_max_moment_dec)],
      },
      1e-9,
      "ten digits printed",
    ),
    made(
      "no shear where the moment is greatest",
      {
        ours: peaks.map((peak) => peak.shear / force),
        theirs: peaks.map(() => 0),
        scale: 1,
      },
      1e-9,
      "ten digits of the place",
    ),
  ];
}

/** The row of equal loads at equal spaces: reactions, moments at supports, greatest sag. */
export function pointBeamRow({ spaces_per_span, spans, ...row }: PointRow): EvidenceRow {
  const [length, force] = [4.2, 900];
  const supports = spansOf(spans, length);
  const loads = spansOf(spaces_per_span * spans, length / spaces_per_span)
    .filter((_, i) => i % spaces_per_span !== 0)
    .map((x) => ({ x, force: -force }));
  const rail = { length: spans * length, stiffness: 2e5 };
  const { bent, extremes, ...held } = heldRail(rail, { forces: loads }, rigidAt(supports));
  return staticsRow(file, {
    case: `${spans} spans, loads at every ${spaces_per_span}th of a span`,
    inputs: "parts of P and P L",
    quantity: "reactions, moments at supports, greatest moment",
    sets: [
      { ours: held.supports.map(({ reaction }) => reaction / force), theirs: row.R },
      {
        ours: supports.map((x) => -railAt(bent, x).moment / (force * length)),
        theirs: row.support_hog,
        least: 0.1,
      },
      { ours: [extremes.momentMost.moment / (force * length)], theirs: [row.max_sag] },
    ],
    allowed: 1e-9,
    why: "ten digits printed",
  });
}
