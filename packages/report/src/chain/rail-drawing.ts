import { type ChainReview, type DrawnLine, type System, show } from "@hoopstay/core";
import { apart, type Wanted } from "../drawing/apart.ts";
import { figure, label, line, px } from "../drawing/svg.ts";
import { text, typed } from "../html/escape.ts";
import { numbers, table, words } from "../html/table.ts";
import { across, peaksOf } from "./diagram.ts";
import { titleLines } from "./title-lines.ts";

const width = 340;
const edge = 16;
const strip = 62;
const rowHeight = 152;

/** The rail from end to end, what stands on it, and under it what bends and twists it. */
export function railDrawing(rail: ChainReview["rail"], system: System): string {
  const { lines, hoops, anchors, crossMembers } = rail;
  const places = [
    ...lines.flatMap(({ points }) => points.map(({ at }) => at)),
    ...hoops,
    ...anchors,
    ...crossMembers,
  ];
  if (places.length === 0) return "<p>No rail was worked out.</p>";
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const scale = (width - 2 * edge) / (high - low || 1);
  const x = (place: number): number => edge + (place - low) * scale;
  const height = strip + rowHeight * lines.length + 20;
  return `<div class="pair beside">${figure(
    "rail-lines",
    "The rail, to scale along its length",
    `${hoops.length} hoops, ${anchors.length} anchors and ${crossMembers.length} cross members on a rail of ${show(high - low, "length", system)}; ${lines
      .map(({ title }) => title)
      .join("; ")}. The table has the largest values.`,
    { width, height },
    [
      ...marks(rail, x, height - 20),
      ...lines.map((one, row) => lineMarkup(one, x, strip + rowHeight * row, system)),
      label({ x: edge, y: height - 4 }, "back", "start", "s"),
      label({ x: width / 2, y: height - 4 }, show(high - low, "length", system), "middle", "s"),
      label({ x: width - edge, y: height - 4 }, "front", "end", "s"),
    ],
    "slim",
  )}
${lines.length === 0 ? "" : largest(lines, system)}</div>`;
}

/** The rail itself: hoops as strokes above it, anchors as wedges below, cross members as squares on it. */
function marks(
  { hoops, anchors, crossMembers }: ChainReview["rail"],
  x: (place: number) => number,
  bottom: number,
): string[] {
  const y = 36;
  return [
    label({ x: edge, y: 12 }, "| hoop   \u25bc anchor   \u25a0 cross member", "start", "s"),
    ...anchors.map((place) => line({ x: x(place), y: y + 14 }, { x: x(place), y: bottom }, "g")),
    `<rect class="r" x="${px(edge)}" y="${y - 4}" width="${px(width - 2 * edge)}" height="8"/>`,
    ...hoops.map((place) => line({ x: x(place), y: y - 14 }, { x: x(place), y: y - 4 })),
    ...crossMembers.map(
      (place) => `<rect class="f" x="${px(x(place) - 4)}" y="${y - 4}" width="8" height="8"/>`,
    ),
    ...anchors.map((place) => `<path class="f" d="M${px(x(place) - 5)},${y + 5}h10l-5,9z"/>`),
  ];
}

/** A sign says something only where values of both signs stand on the line. */
const sign = (value: number, bothWays: boolean): string =>
  bothWays ? (value > 0 ? "+" : "\u2212") : "";

/** One line of values about its own axis, plus upward. */
function lineMarkup(
  { title, measure, points }: DrawnLine,
  x: (place: number) => number,
  top: number,
  system: System,
): string {
  const y = top + 96;
  const values = points.map(({ value }) => value);
  const stations = points.map(({ at }) => ({ spot: { x: x(at), y }, out: { x: 0, y: -1 } }));
  const { tips, markup } = across(stations, values);
  const peak = (sign: number) =>
    peaksOf(values)
      .filter(({ value }) => Math.sign(value) === sign)
      .toSorted((one, other) => Math.abs(other.value) - Math.abs(one.value))
      .slice(0, 1);
  const bothWays = values.some((value) => value < 0);
  const labels = [...peak(1), ...peak(-1)].map(({ place, value }): Wanted => {
    const tip = tips[place] ?? { x: 0, y };
    const shown = `${sign(value, bothWays)}${show(Math.abs(value), measure, system)}`;
    return { spot: { x: tip.x, y: tip.y + (value > 0 ? -4 : 13) }, words: shown, side: 0 };
  });
  return [
    ...titleLines(title).map((words, row) =>
      label({ x: edge, y: top + 12 + 13 * row }, words, "start", "s h"),
    ),
    markup,
    apart(labels, width),
  ].join("");
}

/** The largest value of every line, both ways. */
function largest(lines: readonly DrawnLine[], system: System): string {
  const rows = lines.flatMap(({ title, measure, points }) => {
    const bothWays = points.some(({ value }) => value < 0);
    return [1, -1].flatMap((way) => {
      const most = Math.max(...points.map(({ value }) => way * value));
      const place = points.find(({ value }) => way * value === most);
      if (!(place && most > 0)) return [];
      return [
        [
          typed(title),
          `${sign(way, bothWays)}${text(show(most, measure, system))}`,
          text(alongWords(place.at, system)),
        ],
      ];
    });
  });
  return table(
    "The rail in numbers",
    "The largest values along the rail.",
    [words("What"), numbers("How much"), words("Where")],
    rows,
    "plain",
  );
}

const alongWords = (at: number, system: System): string =>
  Math.abs(at) < 5e-4
    ? "in the middle"
    : `${show(Math.abs(at), "length", system)} to the ${at < 0 ? "back" : "front"}`;
