import { showWords } from "@hoopstay/core";
import { gustChart } from "../drawing/gust-chart.ts";
import { typed } from "../html/escape.ts";
import { list } from "../html/table.ts";
import type { Matter } from "./sheet.ts";
import { statesTable } from "./states-table.ts";

const shown = 3;

const roles = ["Originator", "Checker", "Engineer"];

/** Blank lines to be filled by hand; nothing in them comes from the program. */
const signatures = `<h3>To be filled in by hand</h3>
<div class="sign">${roles
  .map(
    (role) =>
      `<div><b>${role}</b><span>Name</span><span>Date</span><span>Signature</span>${
        role === "Engineer" ? '<span class="seal">Seal</span>' : ""
      }</div>`,
  )
  .join("")}</div>`;

/** The owner's sheet: the answer in plain words, the states, who signs, and the gusts drawn. */
export function answer({ review, system }: Matter, index: string): string {
  const { headline, answers, cautions, notChecked, states, holds } = review;
  const verdict = holds ? "\u2713 Holds" : "\u2717 Does not hold";
  const sentences = answers.map((words) => typed(showWords(words, system)));
  return `<p class="verdict"><b>${verdict}</b> at the wind this sheet was made for.</p>
<p class="headline">${typed(showWords(headline, system))}</p>
${list(sentences)}
${statesTable(states, system)}
<p>Gusts are real gusts, as a forecast gives them: the strongest three seconds, in open country,
33 ft (10 m) above ground. Act well before the gust in the table.</p>
${gustChart(states, system)}
<h3>Bear in mind</h3>
${list([...cautions.slice(0, shown).map(typed), ...unchecked(notChecked)])}
${signatures}
<h3>Sheets</h3>
${index}`;
}

/** The short form of what is not checked; the whole list is on the last sheet. */
function unchecked(notChecked: readonly string[]): string[] {
  if (notChecked.length === 0) return [];
  const first = notChecked.slice(0, shown).map(typed).join("; ");
  const more = notChecked.length - shown;
  return [
    `Not checked: ${first}${more > 0 ? `; and ${more} more` : ""}. <a href="#limits">All of it</a>`,
  ];
}
