import { convert, type FoundDesign, type SearchReview, type System, unitOf } from "@hoopstay/core";
import { roundEnds, roundValues, straight } from "../drawing/axis.ts";
import { figure, label, line, px, type Spot } from "../drawing/svg.ts";

const width = 420;
const height = 444;
const frame = { left: 46, right: 396, top: 30, bottom: 352 };

/** The letters of the designs worth a look. */
export const lookLetter = (index: number): string => String.fromCharCode(65 + index);

/** A mark of the plot with its words; those that come first get their words first. */
interface Mark {
  readonly spot: Spot;
  readonly words: string;
  readonly kind: "today" | "look" | "plain";
}

/** Gust against weight of steel: strong and light is top left. */
export function searchPlot(review: SearchReview, system: System): string {
  const { cloud, today, unbeaten, worthALook } = review;
  const gusts = [today, ...unbeaten].map(({ gust }) => gust).concat(cloud.map(([, gust]) => gust));
  const steels = [today, ...unbeaten]
    .map(({ steel }) => steel.value)
    .concat(cloud.map(([steel]) => steel));
  const force = unitOf("force", system, Math.max(0, ...steels));
  const speed = unitOf("speed", system);
  const across = roundEnds(endsOf(steels.map((steel) => steel / force.factor)));
  const up = roundEnds(endsOf(gusts.map((gust) => convert(gust, "speed", speed.symbol))));
  const x = straight(across, [frame.left, frame.right]);
  const y = straight(up, [frame.bottom, frame.top]);
  const spotOf = (steel: number, gust: number): Spot => ({
    x: x(steel / force.factor),
    y: Number.isFinite(gust) ? y(convert(gust, "speed", speed.symbol)) : frame.top,
  });
  const at = ({ steel, gust }: FoundDesign): Spot => spotOf(steel.value, gust);
  const looks = new Map(worthALook.map(({ place }, index) => [place, lookLetter(index)]));
  const marks: Mark[] = [
    { spot: at(today), words: "today", kind: "today" },
    ...unbeaten.map((design, place): Mark => {
      const letter = looks.get(place);
      return letter === undefined
        ? { spot: at(design), words: String(place + 1), kind: "plain" }
        : { spot: at(design), words: `${letter} (${place + 1})`, kind: "look" };
    }),
  ];
  const dots = cloud.map(([steel, gust]) => {
    const spot = spotOf(steel, gust);
    return `M${px(spot.x)},${px(spot.y)}h0`;
  });
  return figure(
    "search-plot",
    "What each design stands, against the steel in it",
    "Every dot is a design that was looked at, by quick forms that promise too much rather than too little; circles are those that no other beats, worked in full and numbered as in the table; filled diamonds are worth a look; the square is the house as it is today. Strong and light is at the top left.",
    { width, height },
    [
      ...roundValues(across).flatMap((value) => [
        line({ x: x(value), y: frame.top }, { x: x(value), y: frame.bottom }, "g"),
        label({ x: x(value), y: frame.bottom + 16 }, tickWords(value), "middle"),
      ]),
      ...roundValues(up).flatMap((value) => [
        line({ x: frame.left, y: y(value) }, { x: frame.right, y: y(value) }, "g"),
        label({ x: frame.left - 6, y: y(value) + 4 }, tickWords(value), "end"),
      ]),
      label({ x: 4, y: 16 }, `gust it stands, ${speed.symbol}`),
      label({ x: frame.right, y: frame.bottom + 34 }, `steel, ${force.symbol}`, "end"),
      `<path class="dots" d="${dots.join("")}M${px(frame.left)},408h0"/>`,
      label({ x: frame.left + 10, y: 412 }, "by quick forms only, which promise too much"),
      label(
        { x: frame.left - 4, y: 434 },
        "\u25cb worked in full   \u25c6 worth a look   \u25a1 today",
      ),
      ...marks.toReversed().map(markShape),
      named(marks),
    ],
    "slim plot",
  );
}

/** Ends of an axis: from nought, but for values that lie close together far from it. */
function endsOf(values: readonly number[]): [number, number] {
  const known = values.filter(Number.isFinite);
  const most = Math.max(1e-9, ...known);
  const least = Math.min(most, ...known);
  const apart = most - least;
  return least > 0.5 * most && apart > 0
    ? [least - 0.15 * apart, most + 0.15 * apart]
    : [0, 1.06 * most];
}

const tickWords = (value: number): string => String(Number(value.toPrecision(6)));

function markShape({ spot: { x, y }, kind }: Mark): string {
  if (kind === "today")
    return `<rect class="b" x="${px(x - 6)}" y="${px(y - 6)}" width="12" height="12"/>`;
  if (kind === "look") return `<path class="f" d="M${px(x)},${px(y - 8)}l8,8l-8,8l-8,-8z"/>`;
  return `<circle class="o" cx="${px(x)}" cy="${px(y)}" r="4.5"/>`;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const apartFrom = (one: Box, other: Box): boolean =>
  one.left > other.right ||
  one.right < other.left ||
  one.top > other.bottom ||
  one.bottom < other.top;

const boxAt = (left: number, y: number, size: number): Box => ({
  left,
  right: left + size,
  top: y - 11,
  bottom: y + 3,
});

/** Words beside the marks, left out where nothing is free: the table has every number. */
function named(marks: readonly Mark[]): string {
  const taken = marks.map(
    ({ spot: { x, y } }): Box => ({ left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 }),
  );
  const order = ["today", "look", "plain"];
  return marks
    .toSorted((one, other) => order.indexOf(one.kind) - order.indexOf(other.kind))
    .map(({ spot: { x, y }, words, kind }) => {
      const size = 7.4 * words.length;
      const around = [
        [x - 8 - size, y - 5],
        [x - size / 2, y - 11],
        [x + 8, y + 16],
        [x + 9, y + 5],
        [x - 8 - size, y - 18],
        [x + 14, y + 28],
      ] as const;
      const free = around
        .map(([left, base]) => boxAt(left, base, size))
        .find(
          (box) =>
            box.left > frame.left &&
            box.right < width - 2 &&
            taken.every((one) => apartFrom(box, one)),
        );
      if (free === undefined) return "";
      taken.push(free);
      return label(
        { x: free.left, y: free.top + 11 },
        words,
        "start",
        kind === "plain" ? "h" : "w h",
      );
    })
    .join("");
}
