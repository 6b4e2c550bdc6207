import {
  figures,
  type LinkId,
  type System,
  showGustLimit,
  unitOf,
  unpricedInAll,
  unpricedOnlyHere,
  type VariantReview,
} from "@hoopstay/core";
import type { TableRow } from "./columns.ts";

type Houses = readonly VariantReview[];
type State = VariantReview["states"][number];

const shortLinks: Readonly<Record<LinkId, string>> = {
  cover: "cover",
  boards: "boards",
  hoop: "hoops",
  ties: "ties",
  bolts: "bolts",
  stub: "stubs",
  weld: "welds",
  face: "rail wall",
  rail: "rails",
  splices: "splices",
  "cross-members": "cross members",
  "ridge-line": "ridge",
  "end-wall": "end walls",
  anchors: "anchors",
};

const mean = ({ low, high }: { readonly low: number; readonly high: number }): number =>
  (low + high) / 2;

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

const gustCell = (gust: number, system: System): string =>
  showGustLimit(gust, system).replace(` ${unitOf("speed", system).symbol}`, "");

/** Whole, with commas; a plus where something has no price that is priced in another house. */
function costCell({ cost }: VariantReview, inAll: readonly string[]): string {
  if (!cost) return "-";
  const amount = Math.round(cost.total)
    .toString()
    .replace(/(?<=\d)(?=(?:\d{3})+$)/g, ",");
  return unpricedOnlyHere({ cost }, inAll).length === 0 ? amount : `${amount}+`;
}

function costRows(houses: Houses): TableRow[] {
  const currency = houses.find(({ cost }) => cost)?.cost?.currency;
  if (currency === undefined) return [];
  const inAll = unpricedInAll(houses);
  return [{ about: `cost, ${currency}`, cells: houses.map((house) => costCell(house, inAll)) }];
}

const leftOver = ({ cuts }: VariantReview): string => {
  const bought = sum(cuts.map(({ stock, sticks }) => stock * sticks.length));
  const waste = sum(cuts.flatMap(({ sticks }) => sticks.map((stick) => stick.waste)));
  return bought > 0 ? ((100 * waste) / bought).toFixed(0) : "-";
};

/** Weight and steel at the middle of their tolerance, what to buy and to pay, the greatest pull on the level. */
export function amountRows(houses: Houses, system: System): TableRow[] {
  const force = unitOf("force", system, Math.max(...houses.map(({ weight }) => weight.high)));
  const cell = (value: number): string => figures(value, force);
  const row = (about: string, of: (house: VariantReview) => string): TableRow => {
    return { about, cells: houses.map(of) };
  };
  return [
    row(`weight, middle, ${force.symbol}`, ({ weight }) => cell(mean(weight))),
    row(`steel, middle, ${force.symbol}`, ({ steel }) => cell(mean(steel))),
    row("sticks to buy", ({ cuts }) => String(sum(cuts.map(({ sticks }) => sticks.length)))),
    row("  left over of them, %", leftOver),
    ...costRows(houses),
    row(`pull, most, ${force.symbol}`, ({ pull }) => cell(pull.high)),
  ];
}

export function anchorRows(houses: Houses): TableRow[] {
  const kinds = [...new Set(houses.flatMap(({ anchors }) => anchors.map(({ kind }) => kind)))];
  const rows = kinds.map((kind) => ({
    about: `  ${kind}`,
    cells: houses.map(({ anchors }) => {
      const perRail = anchors.find((one) => one.kind === kind)?.perRail;
      return perRail === undefined ? "-" : perRail === null ? "none" : String(perRail);
    }),
  }));
  return rows.length > 0
    ? [{ about: "fewest on each rail that hold it here in every state", cells: [] }, ...rows]
    : [];
}

/** The first link to go, and how the house as a whole begins to move, each with its lowest gust. */
export function firstRows(houses: Houses, system: System): TableRow[] {
  const speed = unitOf("speed", system).symbol;
  const wholes = houses.map(({ states }) =>
    states.map(({ whole }) => whole).reduce((a, b) => (b.gust < a.gust ? b : a)),
  );
  return [
    { about: "first link to go", cells: houses.map(({ first }) => shortLinks[first.check.link]) },
    {
      about: `  good for, ${speed}`,
      cells: houses.map(({ first }) => gustCell(first.check.workingGust, system)),
    },
    {
      about: "as a whole it would",
      cells: wholes.map(({ words }) => words.split(/[ ,]/)[0] ?? ""),
    },
    { about: `  good for, ${speed}`, cells: wholes.map(({ gust }) => gustCell(gust, system)) },
  ];
}

/** Good for which gust in which state, by the house or a link; states of the same gusts share a row. */
export function stateRows(houses: Houses, system: System): TableRow[] {
  const ids = [...new Set(houses.flatMap(({ states }) => states.map(({ id }) => id)))];
  const rows: { words: string[]; cells: string[] }[] = [];
  for (const id of ids) {
    const found = houses.map(({ states }) => states.find((state) => state.id === id));
    const words = (found.find((state) => state !== undefined) as State).words;
    const cells = found.map((state) =>
      state ? gustCell(Math.min(state.whole.gust, state.link.gust), system) : "-",
    );
    const same = rows.find((row) => row.cells.join(" ") === cells.join(" "));
    if (same) same.words.push(words);
    else rows.push({ words: [words], cells });
  }
  const named = rows.map(({ words: [first = "", ...more], cells }) => ({
    about: `  ${first}`,
    ...(more.length > 0 ? { after: ` +${more.length}` } : {}),
    cells,
  }));
  return [{ about: `by state (+ more), ${unitOf("speed", system).symbol}`, cells: [] }, ...named];
}
