import { type Citation, cite } from "@hoopstay/core";

interface DisplacementRow {
  /** Inches; null where the source gives none. */
  readonly up: number | null;
  readonly sideways: number | null;
  readonly citation: Citation;
}

/**
 * Head movement at which a test anchor has failed. The sources disagree; all are kept, and the
 * least of each column is the limit (`upwardLimit`, `sidewaysLimit`).
 */
export const displacementRows: readonly DisplacementRow[] = [
  { up: 2, sideways: 3, citation: cite("ill-77-870", "870.200(b), at 4,725 lb", "read") },
  {
    up: 2,
    sideways: 4,
    citation: cite("minn-1350", "1350.2900, 4 in at 3,150 lb and 45 degrees", "read"),
  },
  { up: 2, sideways: 3, citation: cite("fema-p-85", "chapter 7", "read") },
  {
    up: 2,
    sideways: null,
    citation: cite("fema-p-85", "IRC appendix E, as quoted", "second-hand"),
  },
  { up: 2, sideways: 3, citation: cite("24-cfr-3285", "402, test protocol", "memory") },
];
