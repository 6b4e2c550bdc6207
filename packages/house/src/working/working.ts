import { type Chapter, Refusal } from "@hoopstay/core";
import type { DirectedLoad, WindCase } from "@hoopstay/load";
import { type CheckOutcome, checksOfCase, combinations } from "@hoopstay/stability";
import type { EvaluatedState, Evaluation, LoadSet } from "../review/evaluate.ts";
import { caseId, setLetters } from "../review/summaries.ts";
import { checkWords, directionCode } from "../review/words.ts";
import { type GoverningPlace, lowestPlaces } from "../review/worst-places.ts";
import { checkChapter } from "./check-chapter.ts";
import { leastChapter } from "./least-chapter.ts";
import { type ParentWork, parentChapter } from "./parent-chapter.ts";
import { enclosureChapter, holdChapter, pressureChapter, shellChapter } from "./shared-chapters.ts";
import { weightChapter } from "./weight-chapter.ts";

/** Parent loads already worked, so that each stands in the working once. */
class Parents {
  readonly chapters: Chapter[] = [];
  private readonly done = new Map<string, ParentWork>();

  constructor(readonly evaluation: Evaluation) {}

  of(set: LoadSet, axis: "across" | "along", directed: DirectedLoad | null): ParentWork | null {
    if (!directed) return null;
    const { ends, covering } = set;
    const source = directed.set;
    const toward = `${directed.sense > 0 ? "+" : "-"}${axis === "across" ? "x" : "y"}`;
    const key = [toward, covering, ends.front, ends.back, source?.id, source?.reading].join(" ");
    const found = this.done.get(key);
    if (found) return found;
    const id = `P${this.chapters.length + 1}`;
    const missing = (["front", "back"] as const).filter((end) => !ends[end]);
    const words = [
      `Wind toward ${toward}`,
      source?.words ?? "bare frame",
      source?.reading ? `quarters of the ${source.reading}` : "",
      missing.length > 0 ? `${missing.join(" and ")} end wall missing` : "",
    ];
    const title = words.filter(Boolean).join(", ");
    const { chapter, work } = parentChapter(this.evaluation, id, title, axis, directed, ends);
    this.chapters.push(chapter);
    this.done.set(key, work);
    return work;
  }
}

/** The chapter of one outcome, its parents worked where they are not yet. */
function outcomeChapter(
  parents: Parents,
  { state, set }: EvaluatedState,
  outcome: CheckOutcome,
  id: string,
  lead = "",
): Chapter {
  const { evaluation } = parents;
  const windCase = set.table.cases[outcome.caseIndex] as WindCase;
  const hold = set.holds.at(-1);
  const combination = combinations.find((one) => one.id === evaluation.site.combination);
  if (!hold || !combination) throw new Error("nothing holds the house");
  const verb = checkWords[outcome.check].verb;
  return checkChapter(evaluation, {
    id,
    title: `${lead}Does it ${verb}? ${state.words}, load case ${windCase.number}, wind toward ${directionCode(windCase)}`,
    state: state.id,
    outcome,
    set,
    hold,
    combination,
    across: parents.of(set, "across", windCase.across),
    along: parents.of(set, "along", windCase.along),
  });
}

/**
 * Shared quantities once, then in full the case of the greatest ratio of every check, and that of
 * its lowest wind where it is another one.
 */
export function workingOf(evaluation: Evaluation, places: readonly GoverningPlace[]): Chapter[] {
  const parents = new Parents(evaluation);
  const states = [...new Set(places.map(({ state }) => state))];
  const checks = places.map(({ state, governing }, index) =>
    outcomeChapter(parents, state, governing.byRatio, `C${index + 1}`),
  );
  const limits = lowestPlaces(evaluation).flatMap(({ state, outcome }, index) => {
    const { state: worked, governing } = places[index] as GoverningPlace;
    const { byRatio } = governing;
    const same = worked.set === state.set && byRatio.caseIndex === outcome.caseIndex;
    const alike =
      same && byRatio.weight === outcome.weight && byRatio.withoutArch === outcome.withoutArch;
    if (alike || !Number.isFinite(outcome.limit)) return [];
    return [outcomeChapter(parents, state, outcome, `L${index + 1}`, "At the lowest wind: ")];
  });
  return [
    shellChapter(evaluation),
    pressureChapter(evaluation),
    ...states
      .map((state) => enclosureChapter(evaluation, state))
      .filter((chapter) => chapter !== null),
    ...[weightChapter(evaluation), leastChapter(evaluation)].filter((chapter) => chapter !== null),
    holdChapter(evaluation),
    ...parents.chapters,
    ...checks,
    ...limits,
  ];
}

/**
 * Every check of one load case in full, by its name in the tables.
 *
 * @throws Refusal case-unknown
 */
export function workingOfCase(evaluation: Evaluation, name: string): Chapter[] {
  for (const [set, letter] of setLetters(evaluation)) {
    const index = set.table.cases.findIndex((_, place) => caseId(letter, place) === name);
    const state = evaluation.states.find((one) => one.set === set);
    const hold = set.holds.at(-1);
    if (index < 0 || !hold || !state) continue;
    const parents = new Parents(evaluation);
    const outcomes = checksOfCase(hold.terms[evaluation.site.combination], set.table, index);
    const checks = outcomes.map((outcome, place) =>
      outcomeChapter(parents, state, outcome, `${name}-${place + 1}`),
    );
    return [...parents.chapters, ...checks];
  }
  throw new Refusal([
    {
      code: "case-unknown",
      given: name,
      expected: "a case of the table of load cases, such as A001",
      mend: "Look it up in the report's table of all load cases.",
    },
  ]);
}
