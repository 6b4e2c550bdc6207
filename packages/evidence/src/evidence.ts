import type {
  EvidenceCounts,
  EvidenceReview,
  EvidenceRow,
  FormulaReach,
  Grade,
} from "@hoopstay/core";
import { type ChapterId, chaptersOf } from "./chapters.ts";
import type { Texts } from "./published/read-published.ts";
import { unreached } from "./reach/unreached.ts";
import { Watch } from "./reach/watch.ts";

/** Rows of one chapter alone, without looking at what they reach. */
export const chapterRows = (texts: Texts, id: ChapterId): readonly EvidenceRow[] =>
  chaptersOf(texts, [id]).flatMap(({ work }) => work.flatMap((one) => one()));

/**
 * The verification sheet: every published value beside what is computed now, and which formulas
 * these values reach.
 *
 * @param texts all files under `fixtures` that hold published values, by their path there
 */
export function makeEvidence(texts: Texts): EvidenceReview {
  const watch = new Watch();
  const chapters = watch.watched(() =>
    chaptersOf(texts).map(({ id, title, work }) => {
      const rows = work.flatMap((one) => watch.rowsOf(one));
      return { id, title, rows, counts: countsOf(rows) };
    }),
  );
  const rows = chapters.flatMap((chapter) => chapter.rows);
  const formulas = reachOf(watch);
  const reached = formulas.filter(({ heldBy }) => heldBy !== null).length;
  return {
    totals: {
      ...countsOf(rows),
      grades: gradesOf(rows),
      formulas: { declared: formulas.length, reached },
    },
    chapters,
    formulas,
  };
}

function countsOf(rows: readonly EvidenceRow[]): EvidenceCounts {
  const sum = (verdict?: EvidenceRow["verdict"]): number =>
    rows
      .filter((row) => verdict === undefined || row.verdict === verdict)
      .reduce((total, { values }) => total + values, 0);
  return { values: sum(), agree: sum("agrees"), known: sum("known"), differ: sum("differs") };
}

const grades = ["read", "second-hand", "memory", "derived"] as const satisfies readonly Grade[];

const gradesOf = (rows: readonly EvidenceRow[]): Partial<Record<Grade, number>> =>
  Object.fromEntries(
    grades.map((grade) => [grade, countsOf(rows.filter((row) => row.grade === grade)).values]),
  );

/** Every declared formula by its id; one that is declared for several cases counts as one. */
function reachOf(watch: Watch): FormulaReach[] {
  const byId = new Map<string, FormulaReach>();
  for (const formula of watch.formulas) {
    const { id, name, citation } = formula;
    const seen = watch.seenOf(formula);
    const before = byId.get(id);
    const heldBy = before === undefined ? seen.heldBy : before.heldBy && seen.heldBy;
    byId.set(id, {
      id,
      name,
      ...citation,
      rows: seen.rows + (before?.rows ?? 0),
      heldBy,
      reason: heldBy === null ? (unreached[id] ?? null) : null,
    });
  }
  return [...byId.values()];
}
