import { convert, type StateSummary, type System, unitOf } from "@hoopstay/core";
import { scaleLinear } from "d3-scale";
import { gust } from "../value/reader.ts";
import { checkMark } from "./check-mark.ts";
import { figure, label, line, px } from "./svg.ts";

const width = 720;
const left = 220;
const right = 610;
const rowHeight = 24;

const cut = (words: string): string => {
  const signs = Array.from(words);
  return signs.length > 34 ? `${signs.slice(0, 33).join("")}\u2026` : words;
};

/** Every check's working gust, state by state; the nearest to nought gives way first. */
export function gustChart(states: readonly StateSummary[], system: System): string {
  const unit = unitOf("speed", system).symbol;
  const size = (speed: number) => convert(speed, "speed", unit);
  const firsts = states.map(({ first }) => first.workingGust).filter(Number.isFinite);
  const all = states.flatMap(({ checks }) => checks.map(({ workingGust }) => workingGust));
  const farthest = Math.min(
    2.2 * Math.max(0, ...firsts),
    Math.max(0, ...all.filter(Number.isFinite)),
  );
  const scale = scaleLinear([0, Math.max(1, size(farthest))], [left, right]).nice(6);
  const end = scale.domain()[1] as number;
  const kinds = [...new Map(states.flatMap(({ checks }) => checks.map((c) => [c.check, c.words])))];
  const top = 34 + 20 * Math.ceil(kinds.length / 3);

  const key = kinds.flatMap(([check, words], place) => {
    const spot = { x: 14 + 236 * (place % 3), y: 14 + 20 * Math.floor(place / 3) };
    return [checkMark(check, spot, false), label({ x: spot.x + 12, y: spot.y + 4 }, cut(words))];
  });
  const bottom = top + rowHeight * states.length;
  const axis = scale
    .ticks(6)
    .flatMap((value) => [
      line({ x: scale(value), y: top - 6 }, { x: scale(value), y: bottom }, "g"),
      label({ x: scale(value), y: top - 10 }, String(value), "middle"),
    ]);
  const rows = states.map((state, place) => {
    const y = top + rowHeight * (place + 0.5);
    const { first } = state;
    const reach = Number.isFinite(first.workingGust) ? scale(size(first.workingGust)) : right;
    const starts = states[place - 1]?.words !== state.words;
    const rest = state.checks.filter((check) => check.check !== first.check);
    const marks = rest.map(({ check, workingGust }) => ({ check, value: size(workingGust) }));
    const beyond = marks.filter(({ value }) => !(value <= end));
    return [
      starts
        ? line({ x: 4, y: y - rowHeight / 2 }, { x: width - 4, y: y - rowHeight / 2 }, "g")
        : "",
      starts ? label({ x: 4, y: y + 4 }, cut(state.words), "start", "s") : "",
      label({ x: left - 6, y: y + 4 }, state.hold === "bare" ? "own weight" : "fitted", "end", "s"),
      `<rect class="bar" x="${left}" y="${px(y - 7)}" width="${px(reach - left)}" height="14"/>`,
      ...marks
        .filter(({ value }) => value <= end)
        .map(({ check, value }) => checkMark(check, { x: scale(value), y }, false)),
      ...beyond.map(({ check }, index) =>
        checkMark(check, { x: right + 16 + 15 * index, y }, false),
      ),
      checkMark(first.check, { x: reach, y }, true),
      label({ x: left + 4, y: y + 4 }, gust(first.workingGust, system), "start", "h"),
    ].join("");
  });
  const heads = [
    label({ x: left - 6, y: top - 10 }, `gust, ${unit}`, "end"),
    label({ x: right + 10, y: top - 10 }, "beyond the scale"),
  ];
  return figure(
    "gusts",
    "The gust at which each thing gives way, by state",
    "One bar for each state and way of holding, as long as the gust at which the first check gives" +
      " way; the filled mark is that check, open marks are the others. The table above has the" +
      " same numbers.",
    { width, height: bottom + 6 },
    [...key, ...heads, ...axis, ...rows],
  );
}
