import {
  type ChainReview,
  type LinkInState,
  type Measured,
  type System,
  showMeasured,
  unitOf,
} from "@hoopstay/core";
import { text, typed } from "../html/escape.ts";
import { type Column, numbers, rowOf, table, words } from "../html/table.ts";
import { gustFigure, ratio, signed, speedUnit } from "../value/reader.ts";
import { linkNumbers } from "./link-names.ts";
import { gives, when } from "./ranked.ts";

type Combination = "ASD" | "LRFD";

/** A value whose sign is a minus and whose unit stays beside it. */
export const shown = (value: Measured, system: System): string =>
  text(signed(showMeasured(value, system)).replace(" ", "\u00a0"));

/** A force against a force; where several act together their shares make the ratio. */
const force = (value: Measured, system: System): string =>
  value.measure === "ratio" ? "\u2013" : shown(value, system);

const share = (value: number): string =>
  value === Number.POSITIVE_INFINITY ? "<b>beyond any strength</b>" : ratio(value);

const inNumbers: readonly Column[] = [
  "Demand",
  "Resistance",
  "Ratio",
  "Code speed",
  "Working gust",
].map(numbers);

/** A speed that something stands, in tenths of the reader's unit, rounded down. */
function limit(speed: number, system: System): string {
  if (!Number.isFinite(speed)) return gustFigure(speed, system);
  const tenths = Math.floor((10 * speed) / unitOf("speed", system).factor + 1e-9);
  return (tenths / 10).toFixed(1);
}

function numberCells({ check }: LinkInState, combination: Combination, system: System): string[] {
  const { demand, resistance, ratio: ratios, codeSpeed, workingGust } = check;
  return [
    force(demand, system),
    force(resistance, system),
    share(ratios[combination]),
    limit(codeSpeed[combination], system),
    limit(workingGust, system),
  ];
}

/** The reviewer's ranking: the worst check of every link with its numbers. */
export function rankedChecks(chain: ChainReview, combination: Combination, system: System): string {
  const known = linkNumbers(chain);
  return table(
    "The worst check of every link",
    `The worst check of every link, weakest first, by ${combination}. Ratio is demand over resistance; above 1.00
fails and is printed bold. \u2013: several forces act together, and their shares make the ratio. Speeds in ${speedUnit(system)}, rounded down.
The working of each stands on sheet Working, in the chapter named.`,
    [words("Link"), words("What gives way, and where"), words("When"), ...inNumbers],
    chain.links.map(({ id, words: link, worst: one }, place) => [
      `${known.get(id)} ${typed(link)}<br><small>working S${place + 1}</small>`,
      gives(one.check),
      when(one),
      ...numberCells(one, combination, system),
    ]),
    "checks",
  );
}

/** The case behind each of them, and both methods of combining loads side by side. */
export function rankedCases(chain: ChainReview, system: System): string {
  const known = linkNumbers(chain);
  return table(
    "The case that governs each link",
    `The case that governs each link, and its ratios and code speeds both ways; speeds in ${speedUnit(system)}.`,
    [
      words("Link"),
      words("Case"),
      words("Reading"),
      words("Set"),
      words("Inside"),
      words("Weight"),
      numbers("Ratio ASD"),
      numbers("Ratio LRFD"),
      numbers("Code speed ASD"),
      numbers("Code speed LRFD"),
    ],
    chain.links.map(({ id, words: link, worst: { check } }) => [
      `${known.get(id)} ${typed(link)}`,
      `${typed(check.governs.id)}, case ${check.governs.loadCase}`,
      ...[check.governs.reading, check.governs.set, check.governs.inside, check.governs.weight].map(
        typed,
      ),
      share(check.ratio.ASD),
      share(check.ratio.LRFD),
      limit(check.codeSpeed.ASD, system),
      limit(check.codeSpeed.LRFD, system),
    ]),
    "checks",
  );
}

/** Every way in which every link can give way, link by link in the order of the load path. */
export function allParts(chain: ChainReview, combination: Combination, system: System): string {
  const known = linkNumbers(chain);
  const links = chain.links.toSorted((a, b) => (known.get(a.id) ?? 0) - (known.get(b.id) ?? 0));
  const columns = [words("What gives way, and where"), words("When"), ...inNumbers];
  return table(
    "Every way in which each link can give way",
    `Every way in which each link can give way, the worst case of each, by ${combination}; speeds in ${speedUnit(system)}.`,
    columns,
    links.map(({ id, words: link, parts }) =>
      [
        `<tr><th scope="colgroup" colspan="${columns.length}">${known.get(id)} ${typed(link)}`,
        ...parts.map((part) =>
          rowOf([gives(part.check), when(part), ...numberCells(part, combination, system)]),
        ),
      ].join("\n"),
    ),
    "checks",
  );
}
