import { type MoveCard, type System, show, showGustLimit, showWords } from "@hoopstay/core";
import { anchorLines } from "./anchors.ts";
import { bullet, bullets, column, leadOf, notSealed, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

const box = "[ ] ";

/** The move card for the terminal; the page has the plan as well. */
export function showCard(card: MoveCard, system: System): string {
  const { questions, anchors, shopping } = card;
  const gust = (words: string, speed: number): string =>
    `  ${column(words, 44)}${showGustLimit(speed, system)}`;
  const lines = [
    leadOf(card.go ? "GO" : "DO NOT GO", [visible(card.house), visible(card.site)]),
    wrap(showWords(card.headline, system), "  "),
    "  The gust it stands; act well before the forecast reaches it:",
    gust(`  loose, ${card.looseState}`, card.gustLoose),
    gust("  loose, all shut", card.gustShutLoose),
    gust("  when all is done", card.gustDone),
    "",
    ...questions.map(({ ask, answer }, place) =>
      bullet(`${ask} ${showWords(answer, system)}`, `${place + 1}. `),
    ),
    "",
    wrap(
      `Set the anchors in this order. ${card.plan === null ? "" : `Anchors: ${card.plan}. `}${card.order}`,
      "  ",
    ),
    ...(anchors.length === 0
      ? ["  No anchors: none is known to hold here."]
      : anchorLines(anchors, system)),
    "",
    "  Close:",
    ...(card.close.length === 0 ? ["  nothing"] : card.close.map((one) => bullet(one, box))),
    "  Do not unhook until:",
    ...bullets(card.doNotUnhook, system, box),
    "  Bring or buy:",
    ...shopping.map(({ what, count, atLeast, why }) => {
      const marked = atLeast === null ? "" : `, marked ${show(atLeast, "force", system)} or more`;
      return bullet(`${count} x ${what}${marked}${why === "" ? "" : `: ${why}`}`, box);
    }),
    "",
    ...card.cautions.map((one) => bullet(one)),
    notSealed,
    wrap(
      `${card.date ?? "no date in the site file"}, inputs ${card.digest.slice(0, 12)}, hoopstay ${card.version}`,
      "  ",
    ),
  ];
  return `${lines.join("\n")}\n`;
}

/** What is said where the card was written: the answer, and where it is. */
export const showCardWritten = (card: MoveCard, system: System, to: string): string =>
  `${[
    leadOf(card.go ? "GO" : "DO NOT GO", [visible(card.house), visible(card.site)]),
    wrap(showWords(card.headline, system), "  "),
    notSealed,
    `  Move card: ${visible(to)}`,
  ].join("\n")}\n`;
