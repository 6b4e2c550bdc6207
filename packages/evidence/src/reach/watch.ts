import type { EvidenceRow, Formula } from "@hoopstay/core";
import { declared } from "./declared.ts";

/** How often a formula was evaluated for a row, and the first row that moves with it. */
interface Seen {
  rows: number;
  heldBy: string | null;
}

/** Rows that are computed at once; the same each time. */
export type Work = () => readonly EvidenceRow[];

/** By how much a formula is changed to see whether a row moves with it. */
const change = 1.01;

/** Of costly works, which give many rows at once, so many are tried for a formula. */
const mostTries = 3;

type Watched = Formula & { value?: number };

/**
 * Watches the declared formulas while rows are computed. A row reaches a formula when its number
 * changes with the formula's result: being evaluated beside it is not enough. Outside of `watched`
 * the formulas are as they were.
 */
export class Watch {
  readonly formulas: readonly Watched[] = declared;
  readonly #seen = new Map<Watched, Seen>();
  readonly #tries = new Map<Watched, number>();
  #hit = new Set<Watched>();
  #changed: Watched | null = null;

  seenOf(formula: Watched): Seen {
    return this.#seen.get(formula) ?? { rows: 0, heldBy: null };
  }

  /** Runs with every formula under watch, and gives them back whatever happens. */
  watched<Result>(run: () => Result): Result {
    const giveBack = this.formulas.map((formula) => this.#wrap(formula));
    try {
      return run();
    } finally {
      for (const back of giveBack) back();
    }
  }

  /** Computes rows, and sees which formulas they reach. */
  rowsOf(work: Work): readonly EvidenceRow[] {
    this.#hit = new Set();
    const rows = work();
    for (const formula of this.#hit) {
      const seen = this.#seen.get(formula) ?? { rows: 0, heldBy: null };
      seen.rows += rows.length;
      this.#seen.set(formula, seen);
    }
    for (const formula of [...this.#hit]) {
      const seen = this.#seen.get(formula) as Seen;
      if (seen.heldBy === null) seen.heldBy = this.#movedRow(formula, work, rows);
    }
    return rows;
  }

  /** The title of the first row that moves when a formula's result does. */
  #movedRow(formula: Watched, work: Work, rows: readonly EvidenceRow[]): string | null {
    const tries = this.#tries.get(formula) ?? 0;
    if (rows.length > 1 && tries >= mostTries) return null;
    if (rows.length > 1) this.#tries.set(formula, tries + 1);
    this.#changed = formula;
    try {
      const moved = work();
      return rows.find((row, place) => differs(row, moved[place]))?.title ?? null;
    } catch {
      return rows[0]?.title ?? null;
    } finally {
      this.#changed = null;
    }
  }

  #wrap(formula: Watched): () => void {
    const { evaluate, value } = formula;
    const heard = (result: number): number => {
      this.#hit.add(formula);
      return this.#changed === formula ? result * change : result;
    };
    const wrapped = Object.assign(formula as { evaluate: Formula["evaluate"] }, {
      evaluate: (...values: number[]) => heard(evaluate(...values)),
    });
    if (value === undefined) return () => Object.assign(wrapped, { evaluate });
    Object.defineProperty(formula, "value", { get: () => heard(value), configurable: true });
    return () => {
      Object.defineProperty(formula, "value", {
        value,
        configurable: true,
        enumerable: true,
        writable: true,
      });
      Object.assign(wrapped, { evaluate });
    };
  }
}

const differs = (row: EvidenceRow, moved: EvidenceRow | undefined): boolean =>
  moved === undefined || row.ours !== moved.ours || row.off !== moved.off;
