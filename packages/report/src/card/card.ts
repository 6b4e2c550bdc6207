import {
  type Drawings,
  type MoveCard,
  type System,
  show,
  showGustLimit,
  showPlace,
  showWords,
} from "@hoopstay/core";
import { anchorPlan } from "../drawing/anchor-plan.ts";
import { text, typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { forceColumn } from "../value/reader.ts";
import { type Stamp, single } from "./single.ts";

/** Things to do on the spot, each with a box to tick. */
const ticks = (items: readonly string[]): string =>
  list(items).replace("<ul>", '<ul class="ticks">');

const part = (id: string, title: string, body: string): string =>
  `<section class="part ${id}" aria-labelledby="${id}-h"><h2 id="${id}-h">${title}</h2>\n${body}</section>`;

/**
 * The move card: one self-contained page for the person on the ground, one side of paper.
 *
 * @returns HTML, the same in every locale
 */
export function renderCard(
  card: MoveCard,
  drawings: Drawings,
  { system }: { readonly system: System },
): string {
  const sentences = (all: MoveCard["doNotUnhook"]): string[] =>
    all.map((sentence) => typed(showWords(sentence, system)));
  const body = `<section class="first" aria-label="The answer">
<p class="verdict"><b>${card.go ? "\u2713 GO" : "\u2717 DO NOT GO"}</b></p>
<p class="headline">${typed(showWords(card.headline, system))}</p>
${gusts(card, system)}
</section>
${part("six", "Six questions asked of this place", questions(card, system))}
${part("set", "Set the anchors in this order", anchors(card, drawings, system))}
${part("shut", "Close", card.close.length === 0 ? "<p>Nothing to close.</p>" : ticks(card.close.map(typed)))}
${part("hook", "Do not unhook until", ticks(sentences(card.doNotUnhook)))}
${part("buy", "Bring or buy", shopping(card, system))}
${part("care", "Take care", list(card.cautions.map(typed)))}`;
  const stamp: Stamp = card;
  return single("Move card", card, stamp, body, `card ${sizeOf(card)}`.trim());
}

/** How small the print must be for one side of Letter paper, by how much there is to say. */
function sizeOf(card: MoveCard): "" | "dense" | "tight" {
  const { anchors, questions, doNotUnhook, shopping, cautions, order, close } = card;
  const signs = JSON.stringify([questions, doNotUnhook, shopping, cautions, order, close]).length;
  const load = signs + 110 * anchors.length;
  return load > 6200 ? "tight" : load > 4000 ? "dense" : "";
}

function gusts(card: MoveCard, system: System): string {
  const { gustLoose, looseState, gustShutLoose, gustDone } = card;
  const rows = [
    [`Loose, ${typed(looseState)}`, gustLoose],
    ["Loose, all shut", gustShutLoose],
    ["When all is done", gustDone],
  ] as const;
  const boxes = rows.map(
    ([when, speed]) => `<div><dt>${when}</dt><dd>${text(showGustLimit(speed, system))}</dd></div>`,
  );
  return `<p class="lead">The gust it stands: act well before the forecast reaches it.</p>
<dl class="gusts">${boxes.join("")}</dl>`;
}

const questions = ({ questions: all }: MoveCard, system: System): string =>
  `<dl>${all
    .map(
      ({ ask, answer }, place) =>
        `<div><dt>${place + 1}. ${typed(ask)}</dt><dd>${typed(showWords(answer, system))}</dd></div>`,
    )
    .join("\n")}</dl>`;

function anchors(card: MoveCard, drawings: Drawings, system: System): string {
  if (card.anchors.length === 0) return "<p><b>No anchors: none is known to hold here.</b></p>";
  const force = forceColumn(
    system,
    card.anchors.flatMap(({ pull, proof }) => [pull, proof]),
  );
  const over = card.anchors.some(({ ratio }) => ratio > 1);
  const rows = card.anchors.map((one, place) => [
    `<b>${place + 1}</b> <small>${typed(one.name)}</small>`,
    text(showPlace(one, system)),
    `${typed(one.lead)}, ${text(show(one.angle, "angle", system, 2))}`,
    `<b>${one.ratio > 1 ? "\u2717 " : ""}${force.cell(one.pull)}</b>`,
    force.cell(one.proof),
    '<span class="tick"></span>',
  ]);
  return `<p>${card.plan === null ? "" : `<b>Anchors: ${typed(card.plan)}.</b> `}${typed(card.order)}</p>
<div class="pair">${anchorPlan("card-plan", "Plan to scale, worst pull at each anchor", card.anchors, drawings, system)}
${table(
  "Anchors in the order in which they are set",
  `Pulls in ${force.symbol}; places from the middle of the house.${over ? " \u2717: more than this anchor may carry." : ""}`,
  [
    words("No."),
    words("Place"),
    words("Tether"),
    numbers("Worst pull"),
    numbers("Prove to"),
    words("Set"),
  ],
  rows,
)}</div>`;
}

const shopping = ({ shopping: items }: MoveCard, system: System): string =>
  items.length === 0
    ? "<p>Nothing.</p>"
    : ticks(
        items.map(({ what, count, atLeast, why }) => {
          const marked =
            atLeast === null ? "" : `, marked ${text(show(atLeast, "force", system))} or more`;
          const reason = why === "" ? "" : `: ${typed(why)}`;
          return `<b>${count} \u00d7 ${typed(what)}</b>${marked}${reason}`;
        }),
      );
