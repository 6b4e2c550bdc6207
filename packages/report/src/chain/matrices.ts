import {
  type ChainReview,
  type LinkCheck,
  type LinkSummary,
  type System,
  windFrom,
} from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { gustFigure, speedUnit } from "../value/reader.ts";
import { linkNames, linkNumbers } from "./link-names.ts";

type Found = readonly { readonly of: string; readonly check: LinkCheck }[];

/** Every link against every direction of the wind: the gust it is good for. */
export function byDirection(chain: ChainReview, system: System): string {
  const of = ({ directions }: LinkSummary): Found =>
    directions.map(({ direction, check }) => ({ of: windFrom(direction), check }));
  return matrix(
    chain,
    system,
    of,
    "Links by direction of the wind",
    `The gust each link is good for, by direction of the wind, in ${speedUnit(system)}, in the worst state. The
lowest of each row is bold.`,
    "Wind",
  );
}

/** Every link against every state. */
export function byState(chain: ChainReview, system: System): string {
  const of = ({ states }: LinkSummary): Found =>
    states.map(({ state, check }) => ({ of: state, check }));
  return matrix(
    chain,
    system,
    of,
    "Links by state of the house",
    `The gust each link is good for, by state, in ${speedUnit(system)}, in the worst wind. States
that the wind cannot tell apart are one row. The lowest of each row is bold.`,
    "State",
  );
}

/** Rows are what was asked about, columns the links in the order of the load path. */
function matrix(
  chain: ChainReview,
  system: System,
  of: (link: LinkSummary) => Found,
  label: string,
  caption: string,
  heading: string,
): string {
  const known = linkNumbers(chain);
  const links = chain.links.toSorted((a, b) => (known.get(a.id) ?? 0) - (known.get(b.id) ?? 0));
  const found = links.map(of);
  const rows = [...new Set(found.flat().map((one) => one.of))];
  return table(
    label,
    caption,
    [words(heading), ...links.map(({ id }) => numbers(`${known.get(id)} ${linkNames[id]}`))],
    rows.map((row) => {
      const gusts = found.map((some) => some.find((one) => one.of === row)?.check.workingGust);
      const lowest = Math.min(...gusts.filter((gust) => gust !== undefined));
      return [
        typed(row),
        ...gusts.map((gust) => {
          if (gust === undefined) return "\u2013";
          const shown = gustFigure(gust, system);
          return gust === lowest && Number.isFinite(gust) ? `<b>${shown}</b>` : shown;
        }),
      ];
    }),
    "matrix",
  );
}
