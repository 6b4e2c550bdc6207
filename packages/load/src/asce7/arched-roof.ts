import { cite, formula, judged } from "@hoopstay/core";

const figure = cite("bnbc-2020", "figure 6.2.8 (ASCE 7-16 figure 27.3-3, same rows)", "read");
export const archedRoofCitation = figure;
export const rowChoiceCitation = judged(
  "z_s up to 0.1 f counts as springing from the ground, up to 0.5 f both rows run; worse kept",
);

const riseRatio = [["r", "rise over span of the shell", "ratio"]] as const;

/** C_p of the centre half and the leeward quarter are the same in every row. */
export const centreHalf = formula({
  id: "arch-centre-half",
  symbol: "C_p,c",
  name: "outside coefficient, centre half",
  measure: "ratio",
  arguments: riseRatio,
  expression: "-0.7 - r",
  citation: figure,
  range: "0 < r <= 0.6",
  evaluate: (r) => -0.7 - r,
});

export const leewardQuarter = formula({
  id: "arch-leeward-quarter",
  symbol: "C_p,l",
  name: "outside coefficient, leeward quarter",
  measure: "ratio",
  arguments: [],
  expression: "-0.5",
  citation: figure,
  range: "0 < r <= 0.6",
  evaluate: () => -0.5,
});

const windwardQuarter = (
  id: string,
  expression: string,
  range: string,
  evaluate: (r: number) => number,
) =>
  formula({
    id: `arch-windward-${id}`,
    symbol: "C_p,w",
    name: "outside coefficient, windward quarter",
    measure: "ratio",
    arguments: riseRatio,
    expression,
    citation: figure,
    range,
    evaluate,
  });

/** One row, or one of two alternatives of a row, for the windward quarter. */
export interface WindwardRow {
  readonly id: string;
  readonly words: string;
  readonly coefficient: ReturnType<typeof windwardQuarter>;
}

const row = (
  id: string,
  words: string,
  expression: string,
  range: string,
  evaluate: (r: number) => number,
): WindwardRow => ({ id, words, coefficient: windwardQuarter(id, expression, range, evaluate) });

export const groundRow = row(
  "ground",
  "springing from the ground",
  "1.4 * r",
  "0 < r <= 0.6",
  (r) => 1.4 * r,
);
const flatRow = row("walls-flat", "on walls, flat", "-0.9 + 0 * r", "0 < r < 0.2", () => -0.9);
const middleRow = row(
  "walls-middle",
  "on walls",
  "1.5 * r - 0.3",
  "0.2 <= r < 0.3",
  (r) => 1.5 * r - 0.3,
);
const alternateRow = row(
  "walls-alternate",
  "on walls, alternate",
  "6 * r - 2.1",
  "0.2 <= r <= 0.3",
  (r) => 6 * r - 2.1,
);
const highRow = row(
  "walls-high",
  "on walls",
  "2.75 * r - 0.7",
  "0.3 <= r <= 0.6",
  (r) => 2.75 * r - 0.7,
);
export const archedRows = [groundRow, flatRow, middleRow, alternateRow, highRow];

/** Rounding slack on the borders of the table: on a border both neighbours run. */
const border = 1e-9;

/** Rows for a roof on walls. At r = 0.3 all three values run. */
function wallRows(r: number): WindwardRow[] {
  if (r < 0.2 - border) return [flatRow];
  if (r < 0.3 - border) return [middleRow, alternateRow];
  if (r <= 0.3 + border) return [middleRow, alternateRow, highRow];
  return [highRow];
}

/** Largest rise ratio of the table. */
export const highestRiseRatio = 0.6;

/**
 * The rows that run for a rise ratio and a springing height.
 *
 * @param r rise over span of the shell, 0 < r <= 0.6; the caller refuses others
 * @param springing height of the springing above ground over the rise
 */
export function windwardRows(r: number, springing: number): WindwardRow[] {
  if (!(r > 0 && r <= highestRiseRatio + border)) {
    throw new RangeError(`rise ratio ${r} is outside the arched-roof table`);
  }
  if (springing <= 0.1 + border) return [groundRow];
  return springing <= 0.5 + border ? [groundRow, ...wallRows(r)] : wallRows(r);
}

/** Whether the row "springing from the ground" is among the rows that run. */
export const groundRowRuns = (springing: number): boolean => springing <= 0.5 + border;
