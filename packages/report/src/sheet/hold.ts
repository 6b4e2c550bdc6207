import { type Drawings, type HoldReview, type System, showWords } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { list } from "../html/table.ts";
import { kindLayouts, kindsTable } from "./kinds.ts";
import { layoutMarkup } from "./layout.ts";
import { pullLogMarkup } from "./pull-log.ts";
import { ballastTable, towMarkup } from "./tow.ts";

/** What holds the house here: ground, what is set, the fewest that would do, ballast, moving it. */
export function holdSheet(hold: HoldReview, drawings: Drawings, system: System): string {
  const { ground, fitted, kinds } = hold;
  const said = (sentences: HoldReview["ground"]["findOut"]): string =>
    list(sentences.map((sentence) => typed(showWords(sentence, system))));
  const clues = ground.clues.map(
    ({ told, means }) => `${typed(showWords(told, system))}: ${typed(means)}`,
  );
  return `<p class="verdict"><b>${hold.holds ? "\u2713 Holds" : "\u2717 Does not hold"}</b> with what is fitted now.</p>
<p class="headline">${typed(showWords(hold.headline, system))}</p>
<h3>The ground</h3>
<p>${typed(showWords(ground.words, system))}</p>
${list(clues)}
${ground.findOut.length === 0 ? "" : `<p>Not known yet, most useful first:</p>\n${said(ground.findOut)}`}
<h3>As fitted</h3>
${fitted === null ? "<p>Nothing is fitted.</p>" : layoutMarkup({ id: "plan-fitted", words: "as fitted" }, fitted, drawings, system)}
<h3>Fewest anchors of each kind</h3>
${kinds.length === 0 ? "<p>No other layout was looked for.</p>" : kindsTable(kinds, system)}
${kindLayouts(hold, drawings, system)}
<h3>Ballast</h3>
${ballastTable(hold.ballast, system)}
<h3>Pull to move</h3>
${towMarkup(hold.tow, system)}
<h3>Pull log</h3>
${pullLogMarkup(hold.pulls, system)}`;
}
