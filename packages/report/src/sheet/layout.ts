import {
  type AnchorRow,
  type Drawings,
  type JointSummary,
  type LayoutReview,
  type System,
  show,
  showGustLimit,
  showPlace,
  showWords,
} from "@hoopstay/core";
import { anchorPlan } from "../drawing/anchor-plan.ts";
import { text, typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { forceColumn, ratio } from "../value/reader.ts";
import { certificateTable } from "./certificate.ts";

/** A layout's name in words, unique on its sheet, and the id its plan gets. */
export interface LayoutName {
  readonly id: string;
  readonly words: string;
}

/** One layout whole: its anchors with the worst pull of each, where they stand, and the proof. */
export function layoutMarkup(
  { id, words: name }: LayoutName,
  layout: LayoutReview,
  drawings: Drawings,
  system: System,
): string {
  const { anchors, oneMissing, joint, remarks, holds } = layout;
  const said = [
    `<b>${holds ? "\u2713 holds" : "\u2717 does not hold"}</b>: ${jointWords(joint)}`,
    ...(oneMissing === null
      ? []
      : [
          `With ${typed(oneMissing.name)} missing, the worst of the others has a ratio of ${ratio(oneMissing.ratio)}.`,
        ]),
    ...remarks.map((remark) => typed(showWords(remark, system))),
  ];
  return `<div class="layout">${list(said)}
${anchors.length === 0 ? "<p>No anchors.</p>" : anchorsTable(name, anchors, system)}
${anchors.length === 0 ? "" : anchorPlan(id, `Plan: ${name}`, anchors, drawings, system)}
${joint.certificate === null ? "" : certificateTable(`Forces in balance: ${name}`, joint.certificate, joint, system)}</div>`;

  function jointWords({ factor, gust, state, direction, loadCase, weight }: JointSummary): string {
    return `all tethers, ground and friction at once stand ${text(ratioShare(factor))} of the design
wind, a working gust of <b>${text(showGustLimit(gust, system))}</b>. Worst: ${typed(state)}, wind ${typed(direction)}, load case
${loadCase}, ${typed(weight)} weight.`;
  }
}

const ratioShare = (factor: number): string =>
  Number.isFinite(factor) ? `${Math.floor(100 * factor + 1e-9)} %` : "any multiple";

function anchorsTable(name: string, anchors: readonly AnchorRow[], system: System): string {
  const force = forceColumn(
    system,
    anchors.flatMap((one) => [one.pull, one.upright, one.level, one.allowable, one.proof]),
  );
  return table(
    `Anchors: ${name}`,
    `Anchors, each with its worst pull over all states and winds, in ${force.symbol}. Ratio is pull over
allowable; above 1.00 fails and is marked \u2717.`,
    [
      words("Anchor"),
      words("Place"),
      words("Tether"),
      numbers("Pull"),
      numbers("Upright part"),
      numbers("Level part"),
      numbers("Allowed"),
      numbers("Ratio"),
      numbers("Prove to"),
      words("Worst in"),
    ],
    anchors.map((one, place) => [
      `${place + 1} <small>${typed(one.name)}</small>`,
      text(showPlace(one, system)),
      `${typed(one.lead)}, ${text(show(one.angle, "angle", system, 2))}`,
      force.cell(one.pull),
      force.cell(one.upright),
      force.cell(one.level),
      force.cell(one.allowable),
      `${one.ratio > 1 ? "\u2717 " : ""}${ratio(one.ratio)}`,
      force.cell(one.proof),
      `${typed(one.state)}, wind ${typed(one.direction)}`,
    ]),
    "anchors",
  );
}
