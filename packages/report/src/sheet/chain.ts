import { type ChainReview, type Drawings, type System, showWords } from "@hoopstay/core";
import { chainPicture } from "../chain/chain-picture.ts";
import { allParts, rankedCases, rankedChecks } from "../chain/checks.ts";
import { hoopDrawings } from "../chain/hoop-drawings.ts";
import { byDirection, byState } from "../chain/matrices.ts";
import { railDrawing } from "../chain/rail-drawing.ts";
import { firstByState, rankedTable } from "../chain/ranked.ts";
import { uncheckedTable } from "../chain/unchecked.ts";
import { typed } from "../html/escape.ts";
import { list } from "../html/table.ts";

/** What goes first: the load path from the cover's edge to the ground, weakest first. */
export function chainSheet(
  chain: ChainReview,
  drawings: Drawings,
  combination: "ASD" | "LRFD",
  system: System,
): string {
  const findings = chain.findings.map((sentence) => typed(showWords(sentence, system)));
  const checked = chain.links.length > 0;
  const ranked = !checked
    ? ""
    : `<div class="pair beside">${chainPicture(chain, combination, system)}
${rankedTable(chain, combination, system)}</div>
${firstByState(chain, system)}`;
  const reviewed = !checked
    ? ""
    : `<h3>For the reviewer</h3>
${rankedChecks(chain, combination, system)}
${rankedCases(chain, system)}
${byDirection(chain, system)}
${byState(chain, system)}
${allParts(chain, combination, system)}`;
  return `<p class="verdict"><b>${chain.holds ? "\u2713 Every link holds" : "\u2717 Not every link holds"}</b> the design wind in
every state${chain.notChecked.length > 0 ? ", as far as it was checked" : ""}.</p>
<p class="headline">${typed(showWords(chain.answer, system))}</p>
<p>This sheet is about strength alone. Whether the house as a whole lifts, tips or slides before that stands on
the first sheet.</p>
${ranked}
<h3>Not checked</h3>
${uncheckedTable(chain, system)}
<h3>Findings</h3>
${findings.length === 0 ? "<p>None.</p>" : list(findings)}
<h3>The hoop</h3>
${hoopDrawings(chain.hoop, drawings, system)}
<h3>The rail</h3>
${railDrawing(chain.rail, system)}
${reviewed}`;
}
