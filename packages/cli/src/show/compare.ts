import {
  type CompareReview,
  type System,
  showWords,
  unpricedInAll,
  unpricedOnlyHere,
  type VariantReview,
} from "@hoopstay/core";
import { tableLines } from "./columns.ts";
import { amountRows, anchorRows, firstRows, stateRows } from "./compare-rows.ts";
import { bullet, bullets, leadOf, notSealed, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

const widestWords = 34;
const widestInMany = 22;

/** What is to be said of the houses: of all at once, or with the numbers of those it is true of. */
function findingsOf(houses: readonly VariantReview[], system: System): string[] {
  const found = new Map<string, string[]>();
  houses.forEach(({ findings }, place) => {
    for (const words of findings) {
      const said = showWords(words, system);
      const numbers = found.get(said) ?? [];
      found.set(said, [...numbers, place === 0 ? "today" : String(place)]);
    }
  });
  return [...found].map(([said, numbers]) =>
    bullet(numbers.length === houses.length ? said : `${numbers.join(", ")}: ${said}`),
  );
}

function notPriced(houses: readonly VariantReview[]): string[] {
  const inAll = unpricedInAll(houses);
  if (inAll.length === 0) return [];
  const partly = [...new Set(houses.flatMap((house) => unpricedOnlyHere(house, inAll)))];
  const plus =
    partly.length > 0
      ? ` Cost with a plus is without some of these too: ${partly.join("; ")}.`
      : "";
  return [bullet(`No price, so not in the cost: ${inAll.join("; ")}.${plus}`)];
}

/** Today's house beside its variants: one table, and what differs in words. */
export function showCompare(
  { today, variants, sentences }: CompareReview,
  names: readonly [house: string, site: string],
  system: System,
  report: string | undefined,
): string {
  const houses = [today, ...variants];
  const rows = [
    { about: "", cells: houses.map((_, place) => (place === 0 ? "today" : String(place))) },
    ...amountRows(houses, system),
    ...anchorRows(houses),
    ...firstRows(houses, system),
    ...stateRows(houses, system),
    { about: "holds here", cells: houses.map(({ holds }) => (holds ? "yes" : "no")) },
  ];
  const legend = variants.map(({ name, changes }, place) => {
    const changed = changes.map(({ key, from, to }) => `${key} ${to} (today ${from})`).join("; ");
    return wrap(`${place + 1}: ${name}. ${changed}`, "  ", "     ");
  });
  const lines = [
    leadOf("SIDE BY SIDE", names.map(visible)),
    ...legend,
    ...tableLines(rows, houses.length > 4 ? widestInMany : widestWords),
    wrap(
      "Middle: of the tolerance of what it weighs. Most: on the level, at the high end of weight and ground.",
      "  ",
    ),
    ...bullets(sentences, system),
    ...notPriced(houses),
    ...findingsOf(houses, system),
    ...(report === undefined ? ["  Cut lists, joints and drawings: --report side.html"] : []),
    notSealed,
    ...(report === undefined ? [] : [`  Report: ${visible(report)}`]),
  ];
  return `${lines.join("\n")}\n`;
}
