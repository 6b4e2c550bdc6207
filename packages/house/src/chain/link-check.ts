import { type CaseWords, type LinkCheck, measured } from "@hoopstay/core";
import type { WindCase } from "@hoopstay/load";
import type { Evaluation, LoadSet } from "../review/evaluate.ts";
import { caseId, gustOf, speedOf } from "../review/summaries.ts";
import { directionOf, insideOf, readingOf, setOf } from "../review/words.ts";
import { designCombinations } from "./combination.ts";
import type { LinkRow } from "./link.ts";
import type { RatedRow } from "./row-rater.ts";

/** The case of a row in words, as it stands in one load set. */
function caseOfRow(
  row: LinkRow,
  set: LoadSet,
  letters: ReadonlyMap<LoadSet, string>,
  weight: string,
): CaseWords {
  const index = row.windCase.sets.get(set) as number;
  const windCase = set.table.cases[index] as WindCase;
  return {
    id: caseId(letters.get(set) ?? "", index),
    loadCase: windCase.number,
    direction: directionOf(windCase),
    reading: readingOf(windCase),
    set: `${setOf(windCase)}, ${row.windCase.form}`,
    inside: insideOf(windCase),
    weight,
  };
}

/** A rated row as owner and reviewer read it. */
export function linkCheck(
  evaluation: Evaluation,
  { row, ratio, limit }: RatedRow,
  set: LoadSet,
  letters: ReadonlyMap<LoadSet, string>,
): LinkCheck {
  const { pressure, site } = evaluation;
  const worst = designCombinations(site.combination).reduce((a, b) =>
    row.ratio(pressure, b) > row.ratio(pressure, a) ? b : a,
  );
  const { demand, resistance } = row.asked(pressure, worst);
  const code = { ASD: speedOf(evaluation, limit.ASD), LRFD: speedOf(evaluation, limit.LRFD) };
  return {
    link: row.link,
    part: row.part,
    place: row.place,
    run: row.run,
    demand: measured(demand, row.measure),
    resistance: measured(resistance, row.measure),
    ratio,
    codeSpeed: code,
    workingGust: gustOf(code.ASD),
    governs: caseOfRow(row, set, letters, `${worst.weight}, ${worst.words}`),
  };
}
