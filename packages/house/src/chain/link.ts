import type { Chapter, LinkId, LinkNotChecked, Measure, Words } from "@hoopstay/core";
import type { LoadSet } from "../review/evaluate.ts";
import type { WindDirection } from "./chain-case.ts";
import type { LinkCombination } from "./combination.ts";
import type { ChainContext } from "./context.ts";

/** What a link has to carry and what it can, factored by one combination. */
interface Asked {
  readonly demand: number;
  readonly resistance: number;
}

/** Where a row's wind comes from, and in which load sets it blows. */
export interface RowCase {
  readonly direction: WindDirection;
  /** Case index in every load set in which this case stands. */
  readonly sets: ReadonlyMap<LoadSet, number>;
  /** Words beside the case's own: form of the coefficients, component zone. */
  readonly form: string;
}

/** One way in which one link can give way under one case. */
export interface LinkRow {
  readonly link: LinkId;
  /** What gives way. */
  readonly part: string;
  /** Which one of them. */
  readonly place: string;
  /** How it was computed. */
  readonly run: string;
  readonly windCase: RowCase;
  /** What demand and resistance measure; a ratio where actions interact (resistance 1). */
  readonly measure: Measure;
  /**
   * Demand over resistance at K_d q_h = `q`, Pa, zero where nothing is asked; infinite where there is
   * nothing to resist.
   */
  ratio(q: number, combination: LinkCombination): number;
  /** The same in its parts, whether or not it still counts at this wind. */
  asked(q: number, combination: LinkCombination): Asked;
  /** K_d q_h up to which the row counts, Pa: the ties it stands on are gone beyond. */
  lasts(combination: LinkCombination): number;
  /** Whether the rail's contact with the ground has a part in it, so that it may fail and hold again. */
  readonly touches: boolean;
  /** At most the demand over resistance of `asked`, where that is found quicker. */
  readonly atMost?: (q: number, combination: LinkCombination) => number;
  /** Works demand and resistance on a sheet, by the formulas that computed them. */
  work(sheet: Chapter, q: number, combination: LinkCombination): void;
}

/** What a link's file makes of a house at a site. */
export interface LinkRows {
  readonly rows: readonly LinkRow[];
  readonly notChecked: readonly LinkNotChecked[];
  readonly findings: readonly Words[];
}

/** A file of `links` exports one of these. */
export type LinkMaker = (context: ChainContext) => LinkRows;

/** What a maker tells of a row; most last in any wind and have no part in the ground. */
export type RowAbout = Omit<LinkRow, "ratio" | "asked" | "lasts" | "touches"> &
  Partial<Pick<LinkRow, "lasts" | "touches">>;

const always = (): number => Number.POSITIVE_INFINITY;

/** A row whose demand is computed and whose resistance is fixed. */
export function plainRow(
  about: RowAbout,
  demand: (q: number, combination: LinkCombination) => number,
  resistance: { readonly ASD: number; readonly LRFD: number },
): LinkRow {
  return {
    lasts: always,
    touches: false,
    ...about,
    ratio: (q, combination) => {
      const asked = demand(q, combination);
      return asked > 0 ? asked / resistance[combination.method] : 0;
    },
    asked: (q, combination) => ({
      demand: demand(q, combination),
      resistance: resistance[combination.method],
    }),
  };
}

/** A row of interacting actions: the demand is the ratio itself. */
export function ratioRow(
  about: Omit<RowAbout, "measure">,
  ratio: (q: number, combination: LinkCombination) => number,
): LinkRow {
  return {
    lasts: always,
    touches: false,
    ...about,
    measure: "ratio",
    ratio,
    asked: (q, combination) => ({ demand: ratio(q, combination), resistance: 1 }),
  };
}
