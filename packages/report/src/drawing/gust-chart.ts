import { convert, type StateSummary, type System } from "@hoopstay/core";
import { gustFigure, speedUnit } from "../value/reader.ts";
import { statePairs } from "../value/state-pairs.ts";
import { type Ends, roundEnds, roundValues, straight } from "./axis.ts";
import { checkMark } from "./check-mark.ts";
import { figure, label, line, px } from "./svg.ts";

const width = 720;
const left = 306;
const right = 610;
const rowHeight = 24;

const cut = (words: string, most: number): string => {
  const signs = Array.from(words);
  return signs.length > most ? `${signs.slice(0, most - 1).join("")}\u2026` : words;
};

const inUnit = (speed: number, system: System): number =>
  convert(speed, "speed", speedUnit(system));

/** Wide enough for most states; one state far stronger than the others does not squeeze them. */
function endsOf(states: readonly StateSummary[], system: System): Ends {
  const finite = (values: number[]) => values.filter(Number.isFinite).sort((a, b) => a - b);
  const firsts = finite(states.map(({ first }) => first.workingGust));
  const all = finite(states.flatMap(({ checks }) => checks.map((check) => check.workingGust)));
  const most = firsts[Math.floor(0.8 * (firsts.length - 1))] ?? 0;
  const end = inUnit(Math.min(1.8 * most, all.at(-1) ?? 0), system);
  return roundEnds([0, Math.max(1, end)]);
}

/** Every check's working gust, state by state; the nearest to nought gives way first. */
export function gustChart(states: readonly StateSummary[], system: System): string {
  const ends = endsOf(states, system);
  const across = straight(ends, [left, right]);
  const kinds = [...new Map(states.flatMap(({ checks }) => checks.map((c) => [c.check, c.words])))];
  const top = 34 + 20 * Math.ceil(kinds.length / 3);
  const rows = statePairs(states).flatMap(({ words, bare, fitted }) =>
    [bare, fitted]
      .filter((state) => state !== undefined)
      .map((state, place) => ({ state, heading: place === 0 ? words : "" })),
  );
  const bottom = top + rowHeight * rows.length;
  const key = kinds.flatMap(([check, words], place) => {
    const spot = { x: 14 + 236 * (place % 3), y: 14 + 20 * Math.floor(place / 3) };
    return [
      checkMark(check, spot, false),
      label({ x: spot.x + 12, y: spot.y + 4 }, cut(words, 30)),
    ];
  });
  const axis = roundValues(ends).flatMap((value) => {
    const x = across(value);
    const name = label({ x, y: top - 10 }, String(value), "middle");
    return [line({ x, y: top - 6 }, { x, y: bottom }, "g"), name];
  });
  return figure(
    "gusts",
    "The gust at which each thing gives way, by state",
    "One bar for each state and way of holding, as long as the gust at which the first check gives" +
      " way; the filled mark is that check, open marks are the others. The table above has the" +
      " same numbers.",
    { width, height: bottom + 6 },
    [
      ...key,
      label({ x: left - 14, y: top - 10 }, `gust, ${speedUnit(system)}`, "end"),
      label({ x: right + 14, y: top - 10 }, "stronger", "start"),
      ...axis,
      ...rows.map(({ state, heading }, place) =>
        stateRow(state, heading, top + rowHeight * (place + 0.5), ends, system),
      ),
    ],
  );
}

function stateRow(
  { hold, first, checks }: StateSummary,
  heading: string,
  y: number,
  ends: Ends,
  system: System,
): string {
  const across = straight(ends, [left, right]);
  let beyond = 0;
  const marks = checks.map(({ check, workingGust }) => {
    const value = inUnit(workingGust, system);
    const x = value <= ends[1] ? across(value) : right + 20 + 15 * beyond++;
    return { x, check, first: check === first.check };
  });
  const reach = Math.min(right, marks.find((mark) => mark.first)?.x ?? right);
  const above = y - rowHeight / 2;
  const held = hold === "bare" ? "own weight" : "as fitted";
  return [
    heading === "" ? "" : line({ x: 4, y: above }, { x: width - 4, y: above }, "g"),
    heading === "" ? "" : label({ x: 4, y: y + 4 }, cut(heading, 28), "start", "s"),
    label({ x: left - 72, y: y + 4 }, held, "end", "s"),
    label({ x: left - 14, y: y + 4 }, gustFigure(first.workingGust, system), "end"),
    `<rect class="bar" x="${left}" y="${px(y - 5)}" width="${px(reach - left)}" height="10"/>`,
    ...marks.filter((mark) => !mark.first).map(({ check, x }) => checkMark(check, { x, y }, false)),
    ...marks.filter((mark) => mark.first).map(({ check, x }) => checkMark(check, { x, y }, true)),
  ].join("");
}
