import { Chapter, derived, inMeasure, sumOf } from "@hoopstay/core";
import { leastForce, leastOnRoof, leastOnWalls, leverMoment } from "@hoopstay/load";
import { demandOf, utilization } from "@hoopstay/stability";
import type { Evaluation } from "../review/evaluate.ts";
import { leastOutcomes } from "../review/least-check.ts";
import { checkWords } from "../review/words.ts";
import { mustAgree } from "./must-agree.ts";

/** The least load of the standard that comes out worst over all states, band by band. */
export function leastChapter(evaluation: Evaluation): Chapter | null {
  const { site, holds, states } = evaluation;
  const hold = holds.at(-1)?.id ?? "bare";
  const all = states.flatMap(({ state, set }) =>
    leastOutcomes(set.least, hold, site.combination).map((one) => ({ ...one, state })),
  );
  const [first] = all;
  if (!first) return null;
  const worst = all.reduce((a, b) => (b.outcome.ratio > a.outcome.ratio ? b : a), first);
  const { check, load, outcome, state } = worst;
  const verb = checkWords[check].verb;
  const chapter = new Chapter(
    "M",
    `Least load of the standard: does it ${verb}? ${state.words}, ${load.words}`,
    ["B"],
  );
  for (const least of [leastOnWalls, leastOnRoof]) {
    if (load.bands.some(({ pressure }) => pressure === least.value)) chapter.work(least, []);
  }
  const terms = load.bands.map(({ pressure, area, height }, index) => {
    const mark = String(index + 1);
    const force = chapter.work(leastForce, [pressure, area], { symbol: `F_${mark}` });
    const moment = chapter.work(leverMoment, [force, height], { symbol: `M_${mark}` });
    return { mark, force, moment };
  });
  const sum = (symbol: string, name: string, measure: "force" | "moment") =>
    sumOf(
      `least-${measure}-sum`,
      symbol,
      name,
      measure,
      terms.map(({ mark }) => ({ symbol: `${symbol}_${mark}`, name: "", measure })),
      derived("sum"),
    );
  const force = chapter.work(
    sum("F", "least load", "force"),
    terms.map((one) => one.force),
  );
  const moment = chapter.work(
    sum("M", "its moment about the ground", "moment"),
    terms.map((one) => one.moment),
  );
  const [wind, measure] = outcome.line ? [moment, "moment" as const] : [force, "force" as const];
  const combination = holds.at(-1)?.terms[site.combination].combination;
  if (!combination || site.slope || check === "lift") return chapter;
  const demand = chapter.work(inMeasure(demandOf, measure), [combination.wind, wind, 0]);
  mustAgree("the least load", demand, outcome.demand, outcome.demand);
  if (outcome.resistance > 0) {
    chapter.work(inMeasure(utilization, measure), [demand, outcome.resistance], {
      note: "resistance as in the checks of this kind: weight, anchors, friction; no uplift",
    });
  }
  return chapter;
}
