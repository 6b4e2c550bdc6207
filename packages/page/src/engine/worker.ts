import { Refusal } from "@hoopstay/core";
import { houseSchema, questionOf, quickFirst, siteSchema } from "@hoopstay/house";
import { holdingOf, ladderMarkup } from "./holding.ts";
import { load } from "./load.ts";
import type { Asked, Reading, Told } from "./messages.ts";
import { paperOf } from "./paper.ts";
import { changed, look, readingOf } from "./reading.ts";
import { linksOf } from "./study.ts";

// Only what a worker needs of its surroundings: the same engine runs twice, once for what follows
// every keystroke and once for what takes longer.
const port = self as unknown as {
  postMessage(told: Told): void;
  onmessage: ((event: { readonly data: Asked }) => void) | null;
};

const tell = (told: Told): void => port.postMessage(told);

/** Lift, tip and slide at once; then how far the links go at the most. */
function tellReading(reading: Reading): void {
  tell({ kind: "reading", ...reading });
  if (!reading.answer) return;
  const { evaluation } = load(reading.texts);
  tell({ kind: "links-at-most", turn: reading.turn, gust: quickFirst(evaluation) });
}

function answer(asked: Asked): void {
  switch (asked.kind) {
    case "start":
      tell({
        kind: "ready",
        questions: { house: questionOf(houseSchema), site: questionOf(siteSchema) },
      });
      return;
    case "read":
      tellReading(readingOf(asked.turn, asked.texts));
      return;
    case "change": {
      const { turn, texts, changes } = asked;
      tellReading(readingOf(turn, changed(texts, changes)));
      return;
    }
    case "look":
      look(asked.file, asked.text);
      tell({ kind: "sound", ask: asked.ask });
      return;
    case "study": {
      const { turn, texts, system } = asked;
      const loaded = load(texts);
      tell({ kind: "holding", turn, ...holdingOf(loaded, system) });
      tell({ kind: "ladder", turn, html: ladderMarkup(loaded, asked) });
      tell({ kind: "chain", turn, chain: linksOf(loaded).review });
      return;
    }
    case "forecast":
      tell({ kind: "ladder", turn: asked.turn, html: ladderMarkup(load(asked.texts), asked) });
      return;
    case "paper":
      tell({
        kind: "paper",
        ask: asked.ask,
        html: paperOf(load(asked.texts), asked.paper, asked.system),
      });
  }
}

port.onmessage = ({ data }) => {
  const ask = "ask" in data ? data.ask : null;
  const turn = "turn" in data ? data.turn : null;
  try {
    answer(data);
  } catch (error) {
    if (error instanceof Refusal && ask !== null) {
      tell({ kind: "refused", ask, complaints: error.complaints });
      return;
    }
    tell({ kind: "failed", turn, ask, message: String((error as Error).message) });
  }
};
