import { Chapter, derived, taken } from "@hoopstay/core";
import { codeSpeed, directionality, workingGust } from "@hoopstay/load";
import { designCombinations } from "../chain/combination.ts";
import { linkWords } from "../chain/link-words.ts";
import type { RatedRow } from "../chain/row-rater.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { sectionChapter, sectionsId } from "./section-chapter.ts";

const byScan = derived("first failure from no wind upward, by scan and bisection to 1e-9");

/** From the pressure at which a link first fails to its code speed, m/s; null where it does not. */
function workSpeed(
  chapter: Chapter,
  method: "ASD" | "LRFD",
  limit: number,
  { factors }: Evaluation,
): number | null {
  if (!Number.isFinite(limit)) return null;
  const name = "K_d q_h at which the link first fails";
  const found = taken(
    "found by search, to 1e-9",
    "link-limit",
    "q_c",
    name,
    limit,
    "pressure",
    byScan,
  );
  const q = chapter.work(found, [], { note: method });
  return chapter.work(codeSpeed, [q, factors.perSpeedSquared], { note: method });
}

/**
 * Sections and steel, and one chapter for every link of the load path, weakest first: its weakest
 * check, worked in full.
 */
export function chainChapters(
  evaluation: Evaluation,
  weakest: readonly { readonly rated: RatedRow; readonly state: string }[],
): Chapter[] {
  const { pressure, site } = evaluation;
  const links = weakest.map(({ rated, state }, index) => {
    const { row, limit } = rated;
    const title = `Strength of ${linkWords[row.link]}: ${row.part}; ${row.place}; ${state}; ${row.run}`;
    const chapter = new Chapter(`S${index + 1}`, title, [sectionsId, "Q", "B"]);
    const combination = designCombinations(site.combination).reduce((a, b) =>
      row.ratio(pressure, b) > row.ratio(pressure, a) ? b : a,
    );
    row.work(chapter, pressure, combination);
    const { demand, resistance } = row.asked(pressure, combination);
    const failing = limit[combination.method];
    // Nothing is left at the design wind: what decides shows where the link first fails.
    if (!Number.isFinite(demand / resistance) && Number.isFinite(failing)) {
      row.work(chapter, failing, combination);
    }
    workSpeed(chapter, "LRFD", limit.LRFD, evaluation);
    const speed = workSpeed(chapter, "ASD", limit.ASD, evaluation);
    if (speed !== null) chapter.work(workingGust, [speed, directionality.value]);
    return chapter;
  });
  return [sectionChapter(evaluation), ...links];
}
