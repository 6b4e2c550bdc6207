import {
  convert,
  type LadderRung,
  rungNames,
  type StormLadder,
  type System,
  showGust,
  showGustLimit,
  showHours,
} from "@hoopstay/core";
import { speedUnit } from "../value/reader.ts";
import { roundValues, straight } from "./axis.ts";
import { spread } from "./spread.ts";
import { figure, label, line, px } from "./svg.ts";

const width = 366;
const rails = [52, 84] as const;
const words = 108;
const mostSigns = 37;

/** What stands beside the ladder: its gust in m/s, its mark on the ladder, and a line or two. */
interface Beside {
  readonly gust: number;
  readonly mark: "reached" | "open" | "forecast" | "landmark";
  readonly lines: readonly string[];
}

const cut = (text: string): string => {
  const signs = Array.from(text);
  return signs.length > mostSigns ? `${signs.slice(0, mostSigns - 1).join("")}\u2026` : text;
};

/** A ladder to the scale of the gust: a rung for each thing to do, the forecast marked on it. */
export function ladderDrawing(ladder: StormLadder, system: System): string {
  const { rungs, forecast } = ladder;
  const unit = speedUnit(system);
  const beside = besideOf(ladder, system);
  const rooms = beside.map(({ lines }) => (lines.length > 1 ? 42 : 24));
  const most = Math.max(1, ...beside.map(({ gust }) => gust));
  const top = 34;
  const bottom = top + Math.max(260, 20 + rooms.reduce((sum, room) => sum + room, 0));
  const ends = [0, 1.08 * convert(most, "speed", unit)] as const;
  const heightAt = straight(ends, [bottom, top]);
  const heightOf = ({ gust }: Beside): number => heightAt(convert(gust, "speed", unit));
  const wanted = beside.map((one, index) => ({ at: heightOf(one), room: rooms[index] as number }));
  const places = spread(wanted, top + 6, bottom - 10);
  const axis = roundValues(ends).map((value) => {
    const y = heightAt(value);
    const tick = line({ x: rails[0] - 6, y }, { x: rails[0], y });
    return tick + label({ x: rails[0] - 10, y: y + 4 }, String(value), "end");
  });
  return figure(
    "ladder",
    "The storm ladder, to scale",
    `${rungs.length} rungs, each at the forecast gust from which it is to be done. The table has ` +
      `the same.${forecast === null ? "" : ` The forecast gust is ${showGust(forecast, system)}.`}`,
    { width, height: bottom + 14 },
    [
      label({ x: 4, y: 16 }, `forecast gust, ${unit}`),
      ...rails.map((x) => line({ x, y: 26 }, { x, y: bottom }, "o")),
      ...axis,
      ...beside.map((one, index) => besideMarkup(one, heightOf(one), places[index] as number)),
    ],
    "slim",
  );
}

/** Everything with a place on the ladder, strongest gust first. */
function besideOf({ rungs, landmarks, forecast }: StormLadder, system: System): Beside[] {
  const shown: Beside[] = [
    ...rungs.map((rung) => besideRung(rung, system)),
    ...landmarks.map(
      ({ words: name, from }): Beside => ({
        gust: from,
        mark: "landmark",
        lines: [cut(`${showGust(from, system)}: ${name}`)],
      }),
    ),
  ];
  if (forecast !== null) {
    const lines = [`\u25c0 forecast ${showGust(forecast, system)}`];
    shown.push({ gust: forecast, mark: "forecast", lines });
  }
  return shown
    .filter(({ gust }) => Number.isFinite(gust))
    .toSorted((one, other) => other.gust - one.gust);
}

function besideRung({ id, gust, hours, reached }: LadderRung, system: System): Beside {
  const state = reached ? "\u25a0 reached" : "\u25a1 not reached";
  return {
    gust,
    mark: reached ? "reached" : "open",
    lines: [
      `${showGustLimit(gust, system)}: ${rungNames[id]}`,
      `${state}; takes ${showHours(hours)}`,
    ],
  };
}

function besideMarkup({ mark, lines }: Beside, y: number, place: number): string {
  const [left, right] = rails;
  const leader = line({ x: right, y }, { x: words - 4, y: place }, "dim");
  const texts = lines.map((text, index) => {
    const bold = index === 0 && mark !== "landmark" ? "w" : "";
    return label({ x: words, y: place + 4 + 16 * index }, text, "start", bold);
  });
  return rungOf(mark, left, right, y) + leader + texts.join("");
}

function rungOf(mark: Beside["mark"], left: number, right: number, y: number): string {
  if (mark === "landmark") return line({ x: left - 8, y }, { x: right + 8, y }, "dash");
  if (mark !== "forecast")
    return line({ x: left, y }, { x: right, y }, mark === "open" ? "o" : "u");
  const tip = `M${px(right + 2)},${px(y)}l12,-6v12z`;
  return `${line({ x: left - 8, y }, { x: right + 8, y }, "t")}<path class="f" d="${tip}"/>`;
}
