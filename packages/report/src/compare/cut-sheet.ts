import {
  type CompareReview,
  type CutList,
  type System,
  showWords,
  type VariantReview,
} from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { cutLength } from "../value/cut-length.ts";
import { money, share } from "./money.ts";
import { groupSticks, sticksDrawing } from "./sticks.ts";
import { titled } from "./titled.ts";

/** What to buy for every house and how to cut it; what is as today's is not printed again. */
export function cutSheet({ today, variants }: CompareReview, system: System): string {
  const known = new Set(today.cuts.map((cut) => JSON.stringify(cut)));
  return [today, ...variants]
    .map((house, place) => houseCuts(house, place, place === 0 ? new Set() : known, system))
    .join("\n");
}

function houseCuts(
  { name, cuts, cost }: VariantReview,
  house: number,
  known: ReadonlySet<string>,
  system: System,
): string {
  const same = cuts.filter((cut) => known.has(JSON.stringify(cut)));
  const others = cuts.filter((cut) => !known.has(JSON.stringify(cut)));
  const titles = same.map(
    ({ tube, stock, sticks }) =>
      `${sticks.length} \u00d7 ${cutLength(stock, system)} of ${typed(tube)}`,
  );
  return `<h3>${typed(titled(name, house))}</h3>
${cuts.length === 0 ? "<p>No stock lengths are entered, so there is no cut list.</p>" : ""}
${titles.length === 0 ? "" : `<p>Cut as today: ${titles.join("; ")}.</p>`}
${others
  .map((cut, place) =>
    cutMarkup(cut, `${house === 0 ? "" : house}${letter(place)}`, cost?.currency ?? "", system),
  )
  .join("\n")}`;
}

const letter = (place: number): string => String.fromCharCode(97 + (place % 26));

/** One tube at one stock length: every stick drawn, and the same as a table. */
function cutMarkup(cut: CutList, name: string, currency: string, system: System): string {
  const { tube, stock, sticks, waste, price, fewest, findings } = cut;
  const said = [
    `${sticks.length} ${sticks.length === 1 ? "stick" : "sticks"} of ${cutLength(stock, system)}, ${share(waste)} of it left over, saw cuts among it`,
    fewest ? "no plan for these pieces has fewer sticks" : "a plan with fewer sticks may exist",
    price === null ? "no price" : money(price, currency, system),
  ].join("; ");
  return `<div class="cut">${sticksDrawing(cut, name, system)}
${table(
  `Cut list ${name}`,
  `${name} ${typed(tube)}: ${said}.`,
  [numbers("Sticks"), words("Cut into"), numbers("Left over")],
  groupSticks(sticks).map(({ count, stick }) => [
    String(count),
    groupPieces(stick.pieces)
      .map(
        ({ count: times, what, length }) =>
          `${times} \u00d7 ${cutLength(length, system)} <small>${typed(what)}</small>`,
      )
      .join("<br>"),
    cutLength(stick.waste, system),
  ]),
)}
${list(findings.map((sentence) => typed(showWords(sentence, system))))}</div>`;
}

type Piece = CutList["sticks"][number]["pieces"][number];

/** Equal pieces of a stick together. */
function groupPieces(pieces: readonly Piece[]): (Piece & { readonly count: number })[] {
  const groups = new Map<string, Piece & { count: number }>();
  for (const piece of pieces) {
    const key = JSON.stringify([piece.what, piece.length]);
    const known = groups.get(key);
    if (known) known.count += 1;
    else groups.set(key, { ...piece, count: 1 });
  }
  return [...groups.values()];
}
