import {
  type DrawingPoint,
  type Drawings,
  type System,
  show,
  type ZonePressure,
} from "@hoopstay/core";
import { straight } from "./axis.ts";
import { across, upright } from "./dimension.ts";
import { along, lengthOf } from "./path.ts";
import { arrow, figure, label, line, polyline, px, type Spot } from "./svg.ts";

const width = 720;

/** The cross section with its sizes and, zone by zone, what the wind does in the case drawn. */
export function crossSection(drawings: Drawings, system: System): string {
  const { sectionLine, span, rise, springing, railDepth, railWidth, pressures } = drawings;
  const top = springing + rise;
  const scale = Math.min(380 / span, 240 / top);
  const ground = 72 + top * scale;
  const spot = ({ x, z }: DrawingPoint): Spot => ({
    x: width / 2 + x * scale,
    y: ground - z * scale,
  });
  const length = (value: number) => show(value, "length", system);
  const half = span / 2;
  const [west, east] = [spot({ x: -half, z: 0 }).x, spot({ x: half, z: 0 }).x];
  const [spring, crown] = [spot({ x: 0, z: springing }).y, spot({ x: 0, z: top }).y];
  const rails = [-half, half].map((x) => {
    const corner = spot({ x: x - railWidth / 2, z: railDepth });
    const size = `width="${px(railWidth * scale)}" height="${px(railDepth * scale)}"`;
    return `<rect class="r" x="${px(corner.x)}" y="${px(corner.y)}" ${size}/>`;
  });
  const largest = Math.max(...pressures.zones.map(({ pressure }) => Math.abs(pressure)), 1e-9);
  const reach = straight([0, largest], [10, 44]);
  const middle = { x: width / 2, y: ground - (top * scale) / 3 };
  return figure(
    "section",
    `Cross section, seen from the back. ${pressures.title}`,
    `Span ${length(span)}, rise ${length(rise)}, springing at ${length(springing)}, crown at ` +
      `${length(top)}. ${zoneWords(pressures.zones, system)}`,
    { width, height: ground + 52 },
    [
      line({ x: 30, y: ground }, { x: width - 30, y: ground }, "g"),
      ...rails,
      polyline(sectionLine.map(spot), "o"),
      ...pressures.zones.map((zone) =>
        zoneArrows(zone, zone.line.map(spot), middle, reach, system),
      ),
      across(west, east, ground + 36, `span ${length(span)}`),
      upright(width / 2, ground, spring, `springing ${length(springing)}`, "right"),
      upright(width / 2, spring, crown, `rise ${length(rise)}`, "right"),
      upright(40, ground, crown, `crown ${length(top)}`, "right", 0.94),
      label({ x: 34, y: ground + 16 }, "left", "start", "h"),
      label({ x: width - 34, y: ground + 16 }, "right", "end", "h"),
    ],
  );
}

const pressureWords = (pressure: number, system: System): string =>
  `${show(Math.abs(pressure), "pressure", system)} ${pressure < 0 ? "pull" : "push"}`;

const zoneWords = (zones: readonly ZonePressure[], system: System): string =>
  zones.map(({ name, pressure }) => `${name}: ${pressureWords(pressure, system)}.`).join(" ");

function zoneArrows(
  zone: ZonePressure,
  spots: readonly Spot[],
  middle: Spot,
  reach: (pressure: number) => number,
  system: System,
): string {
  const size = reach(Math.abs(zone.pressure));
  const count = Math.max(1, Math.round(lengthOf(spots) / 42));
  const outside = ({ x, y }: Spot, normal: Spot, distance: number): Spot => ({
    x: x + normal.x * distance,
    y: y + normal.y * distance,
  });
  const arrows = Array.from({ length: count }, (_, place) => {
    const { spot, normal } = along(spots, (place + 0.5) / count, middle);
    const far = outside(spot, normal, size + 3);
    const near = outside(spot, normal, 3);
    return zone.pressure < 0 ? arrow(near, far) : arrow(far, near);
  });
  const ends = [0, 1].map((share) => {
    const { spot, normal } = along(spots, share, middle);
    return line(outside(spot, normal, -5), outside(spot, normal, 5));
  });
  const { spot, normal } = along(spots, 0.5, middle);
  const place = outside(spot, normal, size + 12);
  const side = Math.abs(normal.x) < 0.35 ? "middle" : normal.x < 0 ? "end" : "start";
  return arrows
    .concat(ends, label(place, pressureWords(zone.pressure, system), side, "h"))
    .join("");
}
