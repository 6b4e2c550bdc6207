import type { EvidenceReview, EvidenceRow } from "@hoopstay/core";

const row: EvidenceRow = {
  file: "published/asce-7-16/sample.yaml",
  source: "asce-7-16",
  edition: "ASCE/SEI 7-16",
  place: "table of a sample",
  grade: "read",
  title: "A sample, table [read]: one",
  case: "one",
  inputs: "height 15 ft",
  quantity: "K_z",
  unit: "psf",
  published: "0.85",
  ours: 0.8489,
  values: 1,
  off: 0.0011,
  allowed: 0.005,
  tolerance: "0.5 last digit (half the last printed digit)",
  verdict: "agrees",
  reason: null,
};

/** A verification sheet with every kind of row. */
export const sampleEvidence: EvidenceReview = {
  totals: {
    values: 27,
    agree: 25,
    known: 1,
    differ: 1,
    grades: { read: 3, derived: 24 },
    formulas: { declared: 3, reached: 2 },
  },
  chapters: [
    {
      id: "wind",
      title: "Wind",
      counts: { values: 27, agree: 25, known: 1, differ: 1 },
      rows: [
        row,
        { ...row, ours: 0.9, off: 0.05, allowed: 0.06, verdict: "known", reason: "cut off" },
        { ...row, case: "two", ours: 1.2, off: 0.35, verdict: "differs" },
        { ...row, file: "statics/set.json", published: "24 numbers", ours: "the same", values: 24 },
      ],
    },
  ],
  formulas: [
    { id: "a", name: "first", source: "asce-7-16", place: "26", grade: "read" },
    { id: "b", name: "second", source: "statics", place: "lever", grade: "derived" },
  ].map((formula, place) => ({
    ...(formula as { id: string; name: string; source: "statics"; place: string; grade: "read" }),
    rows: place,
    heldBy: place === 0 ? row.title : null,
    reason: place === 0 ? null : "one product of named numbers",
  })),
};
