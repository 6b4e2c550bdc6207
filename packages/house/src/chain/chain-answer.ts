import { type LinkSummary, speedLimit, type Words } from "@hoopstay/core";
import type { Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { lowestState } from "../storm-ladder/state-gusts.ts";

/** First to go, at which gust, in which state: what gives way, and where. */
export function chainAnswer(links: readonly LinkSummary[]): Words {
  const [first] = links;
  if (!first) return ["No link of the load path could be checked."];
  const { state, check } = first.worst;
  if (!Number.isFinite(check.workingGust)) {
    return ["No link of the load path that could be checked gives way in any wind."];
  }
  return [
    "First to go, at a gust of ",
    speedLimit(check.workingGust),
    `, ${state}: ${check.part}; ${check.place}.`,
  ];
}

/** The whole house beside its links: at which gust it lifts, tips or slides as it is held. */
export function wholeHouse(evaluation: Evaluation): Words {
  const found = lowestState(evaluation);
  if (!found || !Number.isFinite(found.gust)) return [" As a whole it stands any wind."];
  const { check, state, gust } = found;
  return [
    ` As a whole it would ${checkWords[check].verb} at a gust of `,
    speedLimit(gust),
    `, ${state.words}.`,
  ];
}

/** Ties that give way before the hoops do. */
export function tieRemark(links: readonly LinkSummary[]): Words[] {
  const ties = links.find(({ id }) => id === "ties");
  if (!ties) return [];
  const { state, check } = ties.worst;
  if (!Number.isFinite(check.workingGust)) return [];
  return [
    [
      `Of the ties the ${check.part} reaches what is allowed at a gust of `,
      speedLimit(check.workingGust),
      `, ${state}. Beyond it the hoops are rated without ties.`,
    ],
  ];
}
