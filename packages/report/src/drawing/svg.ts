import { flat } from "../html/escape.ts";

/** A point of a drawing, in its own pixels. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A coordinate to a tenth of a pixel. */
export const px = (value: number): string => String(Math.round(value * 10) / 10);

export const at = ({ x, y }: Spot): string => `${px(x)},${px(y)}`;

/** A line of the class that gives its weight. */
export const line = (from: Spot, to: Spot, kind = ""): string =>
  `<path${kind && ` class="${kind}"`} d="M${at(from)}L${at(to)}"/>`;

/** A line through many points. */
export const polyline = (spots: readonly Spot[], kind: string): string =>
  `<polyline class="${kind}" points="${spots.map(at).join(" ")}"/>`;

/** Words at a spot; `anchor` tells which end of them stands there. */
export function label(
  { x, y }: Spot,
  words: string,
  anchor: "start" | "middle" | "end" = "start",
  kind = "",
): string {
  const classes = [anchor === "start" ? "" : anchor[0], kind].filter(Boolean).join(" ");
  return `<text${classes && ` class="${classes}"`} x="${px(x)}" y="${px(y)}">${flat(words)}</text>`;
}

/** An arrow whose tip is at `to`. */
export function arrow(from: Spot, to: Spot): string {
  const size = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const along = { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
  const barb = (side: number): Spot => ({
    x: to.x - 7 * along.x - side * 3.2 * along.y,
    y: to.y - 7 * along.y + side * 3.2 * along.x,
  });
  return `${line(from, to, "a")}<path class="f" d="M${at(to)}L${at(barb(1))}L${at(barb(-1))}z"/>`;
}

/** A drawing with its title, a description for those who do not see it, and its caption. */
export function figure(
  id: string,
  title: string,
  description: string,
  size: { readonly width: number; readonly height: number },
  content: readonly string[],
  kind = "",
): string {
  const { width, height } = size;
  return `<figure${kind && ` class="${kind}"`}><figcaption>${flat(title)}</figcaption>
<div class="box" role="region" tabindex="0" aria-label="Drawing: ${flat(title)}">
<svg viewBox="0 0 ${px(width)} ${px(height)}" width="${px(width)}" height="${px(height)}" \
role="img" aria-labelledby="${id}-t ${id}-d"><title id="${id}-t">${flat(title)}</title>\
<desc id="${id}-d">${flat(description)}</desc>
${content.join("\n")}
</svg></div></figure>`;
}
