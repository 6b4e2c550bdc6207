import { type Drawings, type PlanMark, type System, show } from "@hoopstay/core";
import { compass } from "./compass.ts";
import { across, upright } from "./dimension.ts";
import { arrow, figure, label, line, px, type Spot } from "./svg.ts";

const width = 720;
const north = 80;

/** The house from above, its front on the right: rails, hoops and everything that holds it. */
export function plan(drawings: Drawings, system: System): string {
  const { span, railWidth, railFront, railBack, noseFront, noseBack, marks } = drawings;
  const widest = Math.max(span, ...marks.map((mark) => 2 * Math.abs(mark.x)));
  const ends = marks.map(({ y }) => y);
  const front = Math.max(railFront + noseFront, ...ends);
  const back = Math.max(railBack + noseBack, ...ends.map((y) => -y));
  const scale = Math.min(480 / (front + back), 320 / widest);
  const axis = north + (widest / 2) * scale;
  const spot = (x: number, y: number): Spot => ({
    x: width / 2 + (y - (front - back) / 2) * scale,
    y: axis + x * scale,
  });
  const bottom = axis + (widest / 2) * scale;
  const words = (value: number) => show(value, "length", system);
  const rail = (x: number): string => {
    const corner = spot(x - railWidth / 2, -railBack);
    const size = `width="${px((railFront + railBack) * scale)}" height="${px(railWidth * scale)}"`;
    return `<rect class="r" x="${px(corner.x)}" y="${px(corner.y)}" ${size}/>`;
  };
  const half = span / 2;
  return figure(
    "plan",
    "Plan, from above",
    `Rails ${words(span)} apart, front on the right of the drawing. ${marks.length} marks are ` +
      "numbered as in the table that follows.",
    { width, height: bottom + 90 },
    [
      ...drawings.hoopStations.map((y) => line(spot(-half, y), spot(half, y), "g")),
      rail(-half),
      rail(half),
      ...marks.map((mark, place) => markShape(mark, spot(mark.x, mark.y), place + 1)),
      label({ x: width / 2, y: 30 }, "left", "middle", "h"),
      label({ x: width / 2, y: bottom + 50 }, "right", "middle", "h"),
      label({ x: 34, y: axis + 4 }, "back", "start", "h"),
      label({ x: width - 34, y: axis + 4 }, "front", "end", "h"),
      across(spot(0, -railBack).x, spot(0, railFront).x, bottom + 78, words(railFront + railBack)),
      upright(spot(0, -back).x - 26, spot(half, 0).y, spot(-half, 0).y, "", "left"),
      label({ x: spot(0, -back).x - 34, y: axis + 24 }, words(span), "end"),
      drawings.frontBearing === null
        ? label({ x: width - 34, y: 30 }, "compass not known", "end")
        : compass({ x: width - 60, y: 40 }, drawings.frontBearing - Math.PI / 2),
    ],
  );
}

function markShape({ kind, toward }: PlanMark, { x, y }: Spot, number: number): string {
  const [right, front] = toward;
  const size = Math.hypot(right, front);
  const along = size < 1e-9 ? { x: 0, y: -1 } : { x: front / size, y: right / size };
  const beside = { x: x - 14 * along.y, y: y + 14 * along.x + 4 };
  const words = label(beside, String(number), "middle", "h");
  const [cx, cy] = [px(x), px(y)];
  if (kind === "ballast") {
    return `<rect class="b" x="${px(x - 6)}" y="${px(y - 6)}" width="12" height="12"/>${words}`;
  }
  if (kind === "weight") {
    const cross =
      line({ x: x - 10, y }, { x: x + 10, y }) + line({ x, y: y - 10 }, { x, y: y + 10 });
    return `<circle class="o" cx="${cx}" cy="${cy}" r="7"/>${cross}${words}`;
  }
  const tip = { x: x + 28 * along.x, y: y + 28 * along.y };
  const pulls = size < 1e-9 ? "" : arrow({ x, y }, tip);
  return `${pulls}<circle class="f" cx="${cx}" cy="${cy}" r="4.5"/>${words}`;
}
