import { type Drawings, type System, show, type VariantReview } from "@hoopstay/core";
import { across, upright } from "../drawing/dimension.ts";
import { figure, label, line, polyline, px } from "../drawing/svg.ts";
import { titled } from "./titled.ts";

const width = 260;
const middle = width / 2;

/** Pixels a metre of the two views, the same for all houses, so that sizes can be compared. */
interface Scales {
  readonly section: number;
  readonly side: number;
}

const topOf = ({ springing, rise }: Drawings): number => springing + rise;
const lengthOf = (one: Drawings): number =>
  Math.max(one.length, one.railFront + one.railBack + one.noseFront + one.noseBack);

/** Every house in cross section and from its side, all to the same two scales. */
export function outlines(houses: readonly VariantReview[], system: System): string {
  const all = houses.map(({ drawings }) => drawings);
  const most = (of: (one: Drawings) => number): number => Math.max(...all.map(of));
  const scales = {
    section: Math.min(150 / most(({ span, railWidth }) => span + railWidth), 130 / most(topOf)),
    side: Math.min(210 / most(lengthOf), 90 / most(topOf)),
  };
  const heights = { section: most(topOf) * scales.section, side: most(topOf) * scales.side };
  return `<div class="row small">${houses
    .map((house, place) => outline(house, place, scales, heights, system))
    .join("\n")}</div>`;
}

function outline(
  { name, drawings }: VariantReview,
  place: number,
  scales: Scales,
  heights: Scales,
  system: System,
): string {
  const { span, rise, springing, length, hoopStations, railDepth, marks } = drawings;
  const anchors = marks.filter(({ kind, x }) => kind === "anchor" && x > 0).length;
  const words = (value: number) => show(value, "length", system);
  const ground = 20 + heights.section;
  const below = ground + 46 + heights.side;
  const crown = topOf(drawings);
  return figure(
    `outline-${place}`,
    titled(name, place),
    `Span ${words(span)}, crown at ${words(crown)}, springing at ${words(springing)}, rise ${words(rise)}, ` +
      `${hoopStations.length} hoops over ${words(length)}, rail ${words(railDepth)} high, ${anchors} anchors at its right side.`,
    { width, height: below + 42 },
    [
      ...section(drawings, ground, scales.section),
      across(
        middle - (span / 2) * scales.section,
        middle + (span / 2) * scales.section,
        ground + 20,
        words(span),
      ),
      upright(middle, ground, ground - crown * scales.section, words(crown), "right"),
      ...side(drawings, below, scales.side),
      label(
        { x: middle, y: below + 32 },
        `${hoopStations.length} hoops over ${words(length)}, rail ${words(railDepth)}`,
        "middle",
      ),
    ],
    "slim",
  );
}

function section(
  { sectionLine, span, railWidth, railDepth }: Drawings,
  ground: number,
  scale: number,
): string[] {
  const x = (value: number): number => middle + value * scale;
  const z = (value: number): number => ground - value * scale;
  const rails = [-span / 2, span / 2].map(
    (at) =>
      `<rect class="r" x="${px(x(at - railWidth / 2))}" y="${px(z(railDepth))}" width="${px(railWidth * scale)}" height="${px(railDepth * scale)}"/>`,
  );
  return [
    line({ x: 10, y: ground }, { x: width - 10, y: ground }, "g"),
    ...rails,
    polyline(
      sectionLine.map((point) => ({ x: x(point.x), y: z(point.z) })),
      "o",
    ),
  ];
}

function side(drawings: Drawings, ground: number, scale: number): string[] {
  const { hoopStations, railDepth, railFront, railBack } = drawings;
  const y = (along: number): number => middle + (along - (railFront - railBack) / 2) * scale;
  const z = (height: number): number => ground - height * scale;
  const crown = z(topOf(drawings));
  const anchors = drawings.marks.filter(({ kind, x }) => kind === "anchor" && x > 0);
  const ends = [hoopStations[0] ?? 0, hoopStations.at(-1) ?? 0];
  return [
    line({ x: 10, y: ground }, { x: width - 10, y: ground }, "g"),
    ...hoopStations.map((at) => line({ x: y(at), y: ground }, { x: y(at), y: crown })),
    line({ x: y(ends[0] ?? 0), y: crown }, { x: y(ends[1] ?? 0), y: crown }),
    `<rect class="r" x="${px(y(-railBack))}" y="${px(z(railDepth))}" width="${px((railFront + railBack) * scale)}" height="${px(railDepth * scale)}"/>`,
    ...anchors.map((anchor) => anchorBelow(y(anchor.y), ground)),
  ];
}

/** A triangle below the rail whose upper corner is where an anchor holds it. */
const anchorBelow = (x: number, ground: number): string =>
  `<path class="f" d="M${px(x)} ${px(ground + 3)}l4 8h-8z"/>`;
