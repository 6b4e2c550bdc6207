import {
  citationWords,
  type GustLandmark,
  type StormLadder,
  type System,
  showGust,
  showGustLimit,
  showHours,
  showWords,
} from "@hoopstay/core";
import { ladderDrawing } from "../drawing/storm-ladder.ts";
import { text, typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";

/** The storm ladder: what to do at which forecast gust, drawn to scale and as a table. */
export function stormMarkup(ladder: StormLadder, system: System): string {
  const { rungs, forecast, landmarks, hoursCitation, advice, cautions } = ladder;
  const given =
    forecast === null
      ? "<p>No forecast was given: find the gust in the forecast and act on every rung up to it.</p>"
      : `<p>Forecast gust: <b>${text(showGust(forecast, system))}</b>, forecast on (day and hour): ________</p>`;
  return `<p class="headline">${typed(showWords(advice, system))}</p>
${given}
<div class="pair">${ladderDrawing(ladder, system)}
${table(
  "Rungs of the storm ladder",
  `From calm upward: at this forecast gust or above, do this.`,
  [numbers("From gust"), words("Do"), words("Takes"), words("Because")],
  rungs.map((rung) => [
    text(showGustLimit(rung.gust, system)),
    `<b>${typed(rung.does)}</b>${forecast === null ? "" : `<br>${reachedWords(rung.reached)}`}`,
    text(showHours(rung.hours)),
    typed(showWords(rung.because, system)),
  ]),
  "plain rungs",
)}</div>
<p>Gusts are forecast gusts: the strongest three seconds, in open country, 33 ft (10 m) above
ground. A mean wind speed is no gust. Hours: ${typed(citationWords(hoursCitation))}.</p>
${landmarks.length === 0 ? "" : `<p>Words of the weather service:</p>\n${list(landmarks.map((one) => typed(landmarkWords(one, system))))}`}
${list(cautions.map(typed))}`;
}

function landmarkWords({ words: name, from, to, citation }: GustLandmark, system: System): string {
  const end = to === null ? " and more" : ` to ${showGust(to, system)}`;
  return `${name}: gusts of ${showGust(from, system)}${end}. ${citationWords(citation)}`;
}

const reachedWords = (reached: boolean): string =>
  reached ? "\u25a0 reached" : "\u25a1 not reached";
