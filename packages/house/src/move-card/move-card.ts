import type { HoldReview, MoveCard } from "@hoopstay/core";
import type { House } from "../model/house-model.ts";
import { cautions } from "../review/cautions.ts";
import type { Evaluation } from "../review/evaluate.ts";
import type { ReviewMeta } from "../review/make-review.ts";
import { closedStateOf, lowest, openStatesOf, stateGust } from "../storm-ladder/state-gusts.ts";
import { cardVerdict } from "./card-headline.ts";
import { type CardLayout, cardEnd, cardLayout, firstKindThatHolds } from "./card-layout.ts";
import { cardQuestions } from "./card-questions.ts";
import { closingList } from "./closing.ts";
import { setOrder } from "./set-order.ts";
import { shoppingList } from "./shopping-list.ts";
import { unhookList } from "./unhook-list.ts";

const services =
  "Locate buried services before any anchor is set: a cable or a gas pipe under an anchor kills.";
const isServices = (caution: string): boolean => caution.startsWith("Locate buried services");

/** What the rating of the anchors found: frost, shallow plates, tests left out. */
function findingsOf(house: House, { kinds }: HoldReview, chosen: CardLayout | null): string[] {
  const fitted = house.anchors.map(({ kind }) => kind);
  const used = chosen?.kind
    ? [chosen.kind]
    : kinds.filter(({ id }) => chosen !== null && fitted.includes(id));
  return [...new Set(used.flatMap(({ findings }) => findings))];
}

/**
 * The page for the person who moves the house: what this place is taken to be, which anchors to set
 * in which order and to which proof pull, what to close, and what must be true before unhooking.
 *
 * Left out: the pull of the tractor, ruts and stones on the way, everything the review leaves out.
 */
export function moveCard(evaluation: Evaluation, hold: HoldReview, meta: ReviewMeta): MoveCard {
  const { house, site } = evaluation;
  const closed = closedStateOf(evaluation);
  const bare = [closed, ...openStatesOf(evaluation)].map((one) =>
    stateGust(evaluation, one, "bare"),
  );
  const shutLoose = stateGust(evaluation, closed, "bare");
  const loose = lowest(bare) ?? shutLoose;
  const chosen = cardLayout(hold);
  const end = cardEnd(evaluation, chosen);
  const { anchors, why } = setOrder(chosen?.layout.anchors ?? [], site.slope);
  return {
    house: house.name,
    site: site.name,
    date: meta.date,
    digest: meta.digest,
    version: meta.version,
    ...cardVerdict(evaluation, hold, chosen, end, loose),
    questions: cardQuestions(evaluation, hold),
    plan: chosen ? (chosen.kind?.words ?? "as fitted") : null,
    anchors,
    order: why,
    close: closingList(house),
    doNotUnhook: unhookList(evaluation, hold, anchors, loose),
    gustLoose: loose.gust,
    looseState: loose.state.words,
    gustShutLoose: shutLoose.gust,
    gustDone: end.gust,
    shopping: shoppingList(house, hold, chosen, firstKindThatHolds(hold)),
    cautions: [
      services,
      ...findingsOf(house, hold, chosen),
      "Gusts here are real 3-second gusts at 10 m in open country, not mean winds and not map speeds.",
      ...cautions.filter((caution) => !isServices(caution)),
    ],
  };
}
