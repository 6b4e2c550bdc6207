import { type AnchorRow, type Drawings, type System, show } from "@hoopstay/core";
import { type ColumnUnit, forceColumn } from "../value/reader.ts";
import { compass } from "./compass.ts";
import { across, upright } from "./dimension.ts";
import { spread } from "./spread.ts";
import { arrow, figure, label, line, px, type Spot } from "./svg.ts";

const width = 340;
const middle = width / 2;
const top = 58;
const gap = 17;

/** An anchor with the number it has in the table beside the plan. */
interface Numbered {
  readonly anchor: AnchorRow;
  readonly number: number;
}

/**
 * The house from above, upright and narrow enough for a phone, front at the top: rails to scale,
 * every anchor with its number and its pull.
 */
export function anchorPlan(
  id: string,
  title: string,
  anchors: readonly AnchorRow[],
  drawings: Drawings,
  system: System,
): string {
  const { span, railWidth, railFront, railBack, noseFront, noseBack, frontBearing } = drawings;
  const widest = Math.max(span + railWidth, ...anchors.map((one) => 2 * Math.abs(one.across)));
  const front = Math.max(railFront + noseFront, ...anchors.map(({ along }) => along));
  const back = Math.max(railBack + noseBack, ...anchors.map(({ along }) => -along));
  const most = Math.max(260, (gap * (anchors.length + 2)) / 2);
  const scale = Math.min(150 / widest, most / (front + back));
  const spot = (x: number, y: number): Spot => ({
    x: middle + x * scale,
    y: top + (front - y) * scale,
  });
  const bottom = spot(0, -back).y;
  const half = span / 2;
  const words = (value: number) => show(value, "length", system);
  const rail = (x: number): string => {
    const corner = spot(x - railWidth / 2, railFront);
    const size = `width="${px(railWidth * scale)}" height="${px((railFront + railBack) * scale)}"`;
    return `<rect class="r" x="${px(corner.x)}" y="${px(corner.y)}" ${size}/>`;
  };
  const force = forceColumn(
    system,
    anchors.map(({ pull }) => pull),
  );
  const numbered = anchors.map((anchor, place): Numbered => ({ anchor, number: place + 1 }));
  const column = (left: boolean): string =>
    labels(
      numbered.filter(({ anchor }) => anchor.across < 0 === left),
      left,
      spot,
      { low: top, high: bottom },
      force,
    );
  const ballast = drawings.marks
    .filter(({ kind }) => kind === "ballast")
    .map(({ x, y }) => spot(x, y))
    .map(
      ({ x, y }) => `<rect class="b" x="${px(x - 5)}" y="${px(y - 5)}" width="10" height="10"/>`,
    );
  return figure(
    id,
    title,
    `Rails ${words(span)} apart, front at the top. ${anchors.length} anchors, numbered as in the ` +
      `table, each with its worst pull.${ballast.length > 0 ? " Squares are ballast." : ""}`,
    { width, height: bottom + 54 },
    [
      ...drawings.hoopStations.map((y) => line(spot(-half, y), spot(half, y), "g")),
      rail(-half),
      rail(half),
      ...ballast,
      upright(
        middle,
        spot(0, -railBack).y,
        spot(0, railFront).y,
        words(railFront + railBack),
        "right",
        0.36,
      ),
      ...numbered.map(({ anchor }) => mark(anchor, spot(anchor.across, anchor.along))),
      column(true),
      column(false),
      label({ x: middle, y: top - 14 }, "front", "middle", "h"),
      label({ x: middle, y: bottom + 22 }, "back", "middle", "h"),
      label({ x: spot(-half, 0).x, y: bottom + 22 }, "left", "middle", "h"),
      label({ x: spot(half, 0).x, y: bottom + 22 }, "right", "middle", "h"),
      across(spot(-half, 0).x, spot(half, 0).x, bottom + 46, words(span)),
      frontBearing === null
        ? label({ x: width - 4, y: 14 }, "compass not known", "end", "s")
        : compass({ x: width - 30, y: 28 }, frontBearing, 0.55),
    ],
    "slim",
  );
}

function mark({ toward }: AnchorRow, { x, y }: Spot): string {
  const [right, forward] = toward;
  const size = Math.hypot(right, forward);
  const tip = { x: x + (20 * right) / (size || 1), y: y - (20 * forward) / (size || 1) };
  const pulls = size < 1e-9 ? "" : arrow({ x, y }, tip);
  return `${pulls}<circle class="f" cx="${px(x)}" cy="${px(y)}" r="4"/>`;
}

/** Numbers and pulls in a column beside the house, each led to its mark. */
function labels(
  some: readonly Numbered[],
  left: boolean,
  spot: (x: number, y: number) => Spot,
  { low, high }: { readonly low: number; readonly high: number },
  force: ColumnUnit,
): string {
  const sorted = some
    .map((one) => ({ ...one, at: spot(one.anchor.across, one.anchor.along) }))
    .toSorted((one, other) => one.at.y - other.at.y);
  const places = spread(
    sorted.map(({ at }) => ({ at: at.y, room: gap })),
    low,
    high,
  );
  return sorted
    .map(({ anchor, number, at }, index) => {
      const y = places[index] as number;
      const words = `${number}: ${force.cell(anchor.pull)} ${force.symbol}`;
      const edge = left ? 4 : width - 4;
      const reach = 6.6 * words.length + 6;
      const start = { x: left ? edge + reach : edge - reach, y };
      return `${line(start, at, "dim")}${label({ x: edge, y: y + 4 }, words, left ? "start" : "end", "h")}`;
    })
    .join("");
}
