import type { LinkId } from "@hoopstay/core";
import { label, line, px, type Spot } from "../drawing/svg.ts";
import type { NumberedLink } from "./link-names.ts";

const groundLevel = 424;

/** How a link is drawn in the half section, where its number stands, and what that points to. */
interface Part {
  readonly drawn: string;
  readonly mark: Spot;
  readonly to?: Spot;
}

const rect = (kind: string, x: number, y: number, width: number, height: number): string =>
  `<rect class="${kind}" x="${x}" y="${y}" width="${width}" height="${height}"/>`;

const arch = "M66,352V200A104,140 0 0 1 170,60";

/** Half a house in section, foot large, so that every link of the load path can be pointed at. */
const parts: Readonly<Record<LinkId, Part>> = {
  cover: {
    drawn: `<path class="film" d="M170,46A118,154 0 0 0 52,200V216"/>${rect("f", 47, 214, 9, 7)}`,
    mark: { x: 20, y: 192 },
    to: { x: 47, y: 215 },
  },
  boards: { drawn: rect("r", 44, 222, 13, 30), mark: { x: 20, y: 246 }, to: { x: 44, y: 240 } },
  hoop: {
    drawn: `<path class="tube" d="${arch}"/><path class="bore" d="${arch}"/>`,
    mark: { x: 92, y: 107 },
  },
  ties: {
    drawn: '<path class="tube thin" d="M75,150H170"/><path class="bore thin" d="M75,150H170"/>',
    mark: { x: 132, y: 150 },
  },
  bolts: {
    drawn: [314, 338]
      .map(
        (y) =>
          `${line({ x: 55, y }, { x: 77, y }, "o")}${rect("f", 52, y - 4, 4, 8)}${rect("f", 76, y - 4, 4, 8)}`,
      )
      .join(""),
    mark: { x: 104, y: 322 },
    to: { x: 81, y: 316 },
  },
  stub: { drawn: rect("o", 61, 352, 10, 32), mark: { x: 104, y: 356 }, to: { x: 72, y: 366 } },
  weld: {
    drawn: '<path class="f" d="M61,384v-8l-7,8zM71,384v-8l7,8z"/>',
    mark: { x: 24, y: 362 },
    to: { x: 55, y: 380 },
  },
  face: {
    drawn: line({ x: 46, y: 385 }, { x: 86, y: 385 }, "o"),
    mark: { x: 114, y: 382 },
    to: { x: 86, y: 386 },
  },
  rail: {
    drawn: `${rect("o", 46, 384, 40, 40)}${rect("o", 50, 388, 32, 32)}`,
    mark: { x: 66, y: 404 },
  },
  splices: {
    drawn: rect("f", 42, 390, 4, 26),
    mark: { x: 24, y: 390 },
    to: { x: 42, y: 397 },
  },
  "cross-members": {
    drawn: `${rect("o", 86, 398, 84, 16)}`,
    mark: { x: 146, y: 406 },
  },
  "ridge-line": {
    drawn: `<path class="dash" d="M158,80L100,397"/><circle class="o" cx="158" cy="74" r="5"/>`,
    mark: { x: 134, y: 92 },
    to: { x: 154, y: 77 },
  },
  "end-wall": {
    drawn: `${line({ x: 124, y: 88 }, { x: 124, y: 397 }, "g")}${line({ x: 131, y: 84 }, { x: 131, y: 397 }, "g")}`,
    mark: { x: 127, y: 250 },
  },
  anchors: {
    drawn: `${line({ x: 46, y: 414 }, { x: 26, y: 422 }, "o")}${line({ x: 24, y: 420 }, { x: 24, y: 484 }, "o")}<path class="o" d="M12,476q12,-7 24,0q-12,7 -24,0z"/>`,
    mark: { x: 24, y: 452 },
  },
};

/** From behind to before: what is drawn first is covered by what comes later. */
const order: readonly LinkId[] = [
  "end-wall",
  "ridge-line",
  "ties",
  "cover",
  "boards",
  "stub",
  "hoop",
  "bolts",
  "cross-members",
  "rail",
  "face",
  "weld",
  "splices",
  "anchors",
];

/** The half section of a house that has these links. The hoop and the rail are always there. */
export function footSection(links: readonly NumberedLink[]): string[] {
  const known = new Map(links.map((link) => [link.id, link]));
  const seen = order.filter((id) => known.has(id) || id === "hoop" || id === "rail");
  return [
    line({ x: 0, y: groundLevel }, { x: 172, y: groundLevel }, "g"),
    ...seen.map((id) => parts[id].drawn),
    ...links.map((link) => markOf(link, parts[link.id])),
    label({ x: 170, y: 440 }, "middle of the house", "end", "s"),
    `<path class="dash dim" d="M170,40V${groundLevel}"/>`,
  ];
}

/** A number in a ring; in a full square for the first to go, in a broken ring where unchecked. */
function markOf({ number, first, summary }: NumberedLink, { mark, to }: Part): string {
  const leader = to ? line(mark, to, "dim") : "";
  const { x, y } = mark;
  const shape = first
    ? `<rect class="f" x="${px(x - 10)}" y="${px(y - 10)}" width="20" height="20"/>`
    : `<circle class="o${summary === null ? " dash" : ""}" cx="${px(x)}" cy="${px(y)}" r="9.5"/>`;
  return `${leader}${shape}${label({ x, y: y + 4.5 }, String(number), "middle", first ? "n" : "s")}`;
}
