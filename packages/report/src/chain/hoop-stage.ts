import type { Drawings, DrawnHoop } from "@hoopstay/core";
import { at, figure, label, line, px, type Spot } from "../drawing/svg.ts";

export const stageWidth = 340;
const top = 56;

/** A point of the hoop on paper, and which way is out of the house there. */
export interface Station {
  readonly spot: Spot;
  readonly out: Spot;
}

/** The hoop to scale on its rails, ready to have something drawn along it. */
export interface Stage {
  /** Pixels a metre. */
  readonly scale: number;
  readonly height: number;
  readonly stations: readonly Station[];
  readonly spotOf: (point: { readonly x: number; readonly z: number }) => Spot;
  readonly behind: readonly string[];
}

/** Both ways to one scale, narrow enough for a phone. */
export function hoopStage({ points }: DrawnHoop, drawings: Drawings): Stage {
  const { span, railDepth, railWidth } = drawings;
  const crown = Math.max(railDepth, ...points.map(({ z }) => z));
  const reach = Math.max(span / 2, ...points.map(({ x }) => Math.abs(x)));
  const scale = Math.min(101 / reach, 230 / crown);
  const ground = top + crown * scale;
  const spotOf = ({ x, z }: { readonly x: number; readonly z: number }): Spot => ({
    x: stageWidth / 2 + x * scale,
    y: ground - z * scale,
  });
  const spots = points.map(spotOf);
  const rails = [-span / 2, span / 2].map((x) => {
    const corner = spotOf({ x: x - railWidth / 2, z: railDepth });
    return `<rect class="r" x="${px(corner.x)}" y="${px(corner.y)}" width="${px(railWidth * scale)}" height="${px(railDepth * scale)}"/>`;
  });
  return {
    scale,
    height: ground + 40,
    stations: spots.map((spot, place) => ({
      spot,
      out: outward(spots, place, { x: stageWidth / 2, y: ground - crown * scale * 0.45 }),
    })),
    spotOf,
    behind: [
      line({ x: 8, y: ground }, { x: stageWidth - 8, y: ground }, "g"),
      ...rails,
      label({ x: 8, y: ground + 33 }, "left", "start", "s"),
      label({ x: stageWidth - 8, y: ground + 33 }, "right", "end", "s"),
    ],
  };
}

/** Unit normal of the line of spots, away from a spot within the house. */
function outward(spots: readonly Spot[], place: number, inside: Spot): Spot {
  const here = spots[place] as Spot;
  const before = spots[place - 1] ?? here;
  const after = spots[place + 1] ?? here;
  const size = Math.hypot(after.x - before.x, after.y - before.y) || 1;
  const normal = { x: (after.y - before.y) / size, y: (before.x - after.x) / size };
  const away = normal.x * (here.x - inside.x) + normal.y * (here.y - inside.y) >= 0;
  return away ? normal : { x: -normal.x, y: -normal.y };
}

/** A figure on the stage. */
export const staged = (
  id: string,
  title: string,
  description: string,
  stage: Stage,
  content: readonly string[],
): string =>
  figure(
    id,
    title,
    description,
    { width: stageWidth, height: stage.height },
    [...stage.behind, ...content],
    "slim",
  );

/** A bar of the frame: a slack one is dashed. */
export function barLine({ from, to, force }: DrawnHoop["bars"][number], stage: Stage): string {
  return `<path class="${force === 0 ? "dash" : "tie"}" d="M${at(stage.spotOf(from))}L${at(stage.spotOf(to))}"/>`;
}
