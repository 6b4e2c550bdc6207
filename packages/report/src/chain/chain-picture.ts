import { type ChainReview, type System, showGustLimit } from "@hoopstay/core";
import { figure, label, line, px } from "../drawing/svg.ts";
import { footSection } from "./foot-section.ts";
import { type NumberedLink, numberedLinks } from "./link-names.ts";

const width = 340;
const pitch = 36;
const top = 34;
const middle = 196;
const words = 212;
const sectionHeight = 500;

/** The house's half section with its links numbered, and beside it the chain they make. */
export function chainPicture(
  chain: ChainReview,
  combination: "ASD" | "LRFD",
  system: System,
): string {
  const links = numberedLinks(chain);
  const tops = links.map(
    (_, place) => top + links.slice(0, place).reduce((sum, link) => sum + roomOf(link), 0),
  );
  const bottom = top + links.reduce((sum, link) => sum + roomOf(link), 0);
  const height = Math.max(sectionHeight, bottom + 34);
  const said = links.map(
    (link) =>
      `${link.number} ${link.name}: ${standing(link, combination, system)}${link.first ? ", first to go" : ""}.`,
  );
  return figure(
    "chain-picture",
    "The links from the cover\u2019s edge to the ground (to explain, not to scale). \u2717: fails at the design wind. ?: not all of it is checked",
    said.join(" "),
    { width, height },
    [
      ...footSection(links),
      label({ x: middle, y: 16 }, "wind", "middle", "s"),
      line({ x: middle, y: 20 }, { x: middle, y: top + 1 }, "a"),
      ...links.map((link, place) =>
        linkMarkup(link, tops[place] ?? top, place % 2 === 0, combination, system),
      ),
      ground(bottom),
    ],
    "slim chain",
  );
}

/** The first to go has a line more beside it. */
const roomOf = ({ first }: NumberedLink): number => (first ? pitch + 18 : pitch);

/** What is said of a link beside it: its gust, and whether it is too weak or not checked. */
function standing(
  { summary, unchecked }: NumberedLink,
  combination: "ASD" | "LRFD",
  system: System,
): string {
  if (summary === null) return "? not checked";
  const { check } = summary.worst;
  const gust = showGustLimit(check.workingGust, system);
  const weak = check.ratio[combination] > 1 ? " \u2717" : "";
  return `${gust}${weak}${unchecked ? " ?" : ""}`;
}

function linkMarkup(
  link: NumberedLink,
  y: number,
  face: boolean,
  combination: "ASD" | "LRFD",
  system: System,
): string {
  const { number, name, first, summary } = link;
  const lines = [
    `${number} ${name}`,
    standing(link, combination, system),
    ...(first ? ["\u25c0 FIRST TO GO"] : []),
  ];
  const said = lines.map((one, row) =>
    label({ x: words, y: y + 15 * (row + 1) }, one, "start", first ? "w" : ""),
  );
  return (first ? torn(y, roomOf(link)) : ring(y, face, summary === null)) + said.join("");
}

/** A link seen from its face or from its edge, as every other link of a chain is. */
function ring(y: number, face: boolean, unknown: boolean): string {
  const half = face ? 8 : 2.5;
  const kind = unknown ? "o dash" : "o";
  return `<rect class="${kind}" x="${px(middle - half)}" y="${px(y - 3)}" width="${px(2 * half)}" height="${pitch + 6}" rx="${half}"/>`;
}

/** The link that goes first: torn apart in its middle. */
function torn(y: number, room: number): string {
  const head = y + room / 2 - 7;
  const foot = y + room / 2 + 7;
  return [
    `<path class="torn" d="M${middle - 8},${head - 3}V${y + 5}a8,8 0 0 1 16,0V${head + 3}"/>`,
    `<path class="torn" d="M${middle - 8},${foot - 3}V${y + room - 5}a8,8 0 0 0 16,0V${foot + 3}"/>`,
  ].join("");
}

/** What the chain ends in. */
const ground = (y: number): string =>
  `${line({ x: middle - 16, y: y + 6 }, { x: middle + 16, y: y + 6 }, "o")}${[-12, -4, 4, 12]
    .map((dx) => line({ x: middle + dx, y: y + 6 }, { x: middle + dx - 6, y: y + 14 }))
    .join("")}${label({ x: words, y: y + 12 }, "ground", "start", "s")}`;
