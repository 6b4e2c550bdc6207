import { type EvidenceRow, type EvidenceVerdict, Refusal } from "@hoopstay/core";

/** Everything of a row that is not yet compared. */
export type RowHead = Pick<
  EvidenceRow,
  | "file"
  | "source"
  | "edition"
  | "place"
  | "grade"
  | "title"
  | "case"
  | "inputs"
  | "quantity"
  | "unit"
  | "tolerance"
>;

/** What is allowed, and the wider allowance of a printed value that is held to be wrong. */
export interface Allowance {
  readonly allowed: number;
  readonly disagreement?: { readonly reason: string; readonly allowed: number };
}

/**
 * How far off is well. Where the source is held to be wrong, the number must lie outside the
 * tolerance and inside the wider allowance: a disagreement that has gone away is a fault too.
 */
function verdictOf(off: number, { allowed, disagreement }: Allowance): EvidenceVerdict {
  if (!disagreement) return off <= allowed ? "agrees" : "differs";
  return off > allowed && off <= disagreement.allowed ? "known" : "differs";
}

/** A row of one number. */
export function numberRow(
  head: RowHead,
  ours: number,
  {
    printed,
    value,
    ...allowance
  }: Allowance & { readonly printed: string; readonly value: number },
): EvidenceRow {
  const off = Math.abs(ours - value);
  const { allowed, disagreement } = allowance;
  return {
    ...head,
    published: printed,
    ours,
    values: 1,
    off,
    allowed: disagreement?.allowed ?? allowed,
    verdict: verdictOf(off, allowance),
    reason: disagreement?.reason ?? null,
  };
}

/** A row whose number could not be computed, which says why. */
export const failedRow = (head: RowHead, printed: string, why: string): EvidenceRow => ({
  ...head,
  published: printed,
  ours: why,
  values: 1,
  off: Number.POSITIVE_INFINITY,
  allowed: 0,
  verdict: "differs",
  reason: null,
});

/** A row about a refusal: the code that a case must be refused with, and what came of it. */
export function refusalRow(head: RowHead, code: string, compute: () => unknown): EvidenceRow {
  const ours = refusalOf(compute) ?? "not refused";
  return {
    ...head,
    published: `refused: ${code}`,
    ours: ours === "not refused" ? ours : `refused: ${ours}`,
    values: 1,
    off: 0,
    allowed: 0,
    verdict: ours === code ? "agrees" : "differs",
    reason: null,
  };
}

function refusalOf(compute: () => unknown): string | undefined {
  try {
    compute();
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.complaints[0]?.code;
    throw refusal;
  }
  return undefined;
}

/** Numbers of a set; their differences are parts of the greatest of them. */
export interface NumberSet {
  readonly ours: readonly number[];
  readonly theirs: readonly number[];
  /** What they are parts of at least, where the set is of small numbers beside larger ones. */
  readonly least?: number;
  /** What they are parts of instead. */
  readonly scale?: number;
}

/**
 * A row of many numbers: the greatest difference, as a part of the size of its set. Sets may be
 * given one after the other, each with a size of its own.
 */
export function setRow(
  head: RowHead,
  sets: readonly NumberSet[],
  allowance: Allowance,
): EvidenceRow {
  const values = sets.reduce((sum, { theirs }) => sum + theirs.length, 0);
  const off = Math.max(0, ...sets.map(greatestOff));
  const { allowed, disagreement } = allowance;
  const verdict = values === 0 ? "differs" : verdictOf(off, allowance);
  return {
    ...head,
    published: values === 1 ? "1 number" : `${values} numbers`,
    ours: { agrees: "the same", known: "some off, as is known", differs: "not the same" }[verdict],
    values,
    off,
    allowed: disagreement?.allowed ?? allowed,
    verdict,
    reason: disagreement?.reason ?? null,
  };
}

/** Greatest difference as a part of the set's size; infinite where the sets are not alike. */
function greatestOff({ ours, theirs, least = 0, scale }: NumberSet): number {
  if (ours.length !== theirs.length) return Number.POSITIVE_INFINITY;
  const size = scale ?? Math.max(least, ...theirs.map(Math.abs).filter(Number.isFinite));
  const parts = theirs.map((value, place) => {
    const mine = ours[place] as number;
    if (mine === value) return 0;
    const off = Math.abs(mine - value) / size;
    return Number.isNaN(off) ? Number.POSITIVE_INFINITY : off;
  });
  return Math.max(0, ...parts);
}
