import { type AnchorRow, type HoldReview, measured, speedLimit, type Words } from "@hoopstay/core";
import {
  draggingFrictionLow,
  lightAnchorPractice,
  sidewaysLimit,
  upwardLimit,
} from "@hoopstay/ground";
import type { Evaluation } from "../review/evaluate.ts";
import { actionGust } from "../storm-ladder/action-gust.ts";
import type { StateGust } from "../storm-ladder/state-gusts.ts";
import { closingList } from "./closing.ts";

/** Whether the house would run down the slope it stands on by itself, its anchors not counted. */
function runsHere({ site }: Evaluation, { tow }: HoldReview): boolean {
  const least = Math.min(draggingFrictionLow.value, site.friction);
  const here = site.slope !== null && Math.tan(site.slope.angle) >= least;
  return here || tow?.runsByItself === true;
}

/** The coming gust that the house was checked for is too much for it while it is loose. */
export const tooWindyToMove = ({ site }: Evaluation, loose: StateGust): boolean =>
  site.basis === "gust" && site.speed > actionGust.evaluate(loose.gust);

function windItem({ site }: Evaluation, loose: StateGust): Words | null {
  if (loose.gust === 0) {
    return [
      "The last anchor is proved, whatever the weather: by its weight alone it does not hold even in calm air.",
    ];
  }
  if (!Number.isFinite(loose.gust)) return null;
  const limit: Words = [
    speedLimit(actionGust.evaluate(loose.gust)),
    `, three quarters of what it stands loose (${loose.state.words})`,
  ];
  if (site.basis === "gust") {
    const coming = measured(site.speed, "speed");
    return site.speed > actionGust.evaluate(loose.gust)
      ? ["The gust of ", coming, " is over: loose, no gust may be above ", ...limit, "."]
      : ["No gust above ", ...limit, " is forecast; it was checked for ", coming, "."];
  }
  return ["No gust above ", ...limit, " is forecast before the last anchor is proved."];
}

function slopeItem(evaluation: Evaluation, hold: HoldReview): Words | null {
  const { site } = evaluation;
  if (runsHere(evaluation, hold)) {
    return [
      "The bridle is slack and the wheels are chocked: on this slope the house can run by itself, and a slack bridle shows that the anchors have it.",
    ];
  }
  if (site.slope) return ["The skids are chocked on the downhill side."];
  return site.assumptions.some(({ key }) => key === "slope")
    ? ["The slope has been measured: this card takes the ground as level."]
    : null;
}

function anchorItems(anchors: readonly AnchorRow[]): Words[] {
  const { minutesAtTop, accepted } = lightAnchorPractice;
  if (anchors.length === 0) {
    return [["Something that is rated holds it: this card has no anchor to set."]];
  }
  const count =
    anchors.length === 1
      ? "The anchor of this card is"
      : `All ${anchors.length} anchors of this card are`;
  return [
    [
      `${count} set, in the order of the list, and each is proved: pulled along its tether to the proof pull beside it and held ${minutesAtTop} minutes, with no more than `,
      measured(accepted.movement, "length", 2),
      ` of further movement after minute ${accepted.from}.`,
    ],
    [
      "No head has moved more than ",
      measured(upwardLimit.value, "length"),
      " up or ",
      measured(sidewaysLimit.value, "length"),
      " sideways: one that has counts nothing and is set anew, not in its old hole.",
    ],
    ["Every tether is tight, its links closed."],
  ];
}

/** What must be true before the house is unhooked. The first that is not true stops it. */
export function unhookList(
  evaluation: Evaluation,
  hold: HoldReview,
  anchors: readonly AnchorRow[],
  loose: StateGust,
): Words[] {
  const closing = closingList(evaluation.house);
  const closed: Words | null =
    closing.length > 0 ? ['It is shut: everything under "close" is done.'] : null;
  const located: Words | null =
    evaluation.site.servicesLocated === true
      ? null
      : ["Buried pipes and cables have been located, before the first anchor was set."];
  const items = [
    located,
    ...anchorItems(anchors),
    closed,
    slopeItem(evaluation, hold),
    windItem(evaluation, loose),
  ];
  return items.filter((item) => item !== null);
}
