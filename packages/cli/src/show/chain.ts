import {
  type ChainReview,
  firstToGo,
  type LinkCheck,
  type LinkNotChecked,
  type LinkSummary,
  type System,
  showGustLimit,
  showMeasured,
  showWords,
  speedLimit,
  windFrom,
} from "@hoopstay/core";
import { bullet, bullets, column, leadOf, notSealed, wrap } from "./lines.ts";
import { visible } from "./visible.ts";

/** How the answer is shown, and what stands beside it. */
export interface ShownChain {
  readonly system: System;
  readonly combination: "ASD" | "LRFD";
  /** What is checked nowhere. */
  readonly beside: readonly string[];
  readonly report?: string | undefined;
}

const stateWidth = 36;
const linkWidth = 30;
/** Of the lines that go on about a link. */
const hanging = " ".repeat(10);

/** What goes first: the answer, then every link, weakest first. */
export function showChain(
  chain: ChainReview,
  names: readonly [house: string, site: string],
  shown: ShownChain,
): string {
  const { links, states, notChecked, findings, holds } = chain;
  const { system, beside, report } = shown;
  const named = new Map(links.map(({ id, words }) => [id, words]));
  const lines = [
    leadOf(verdictOf(chain), names.map(visible)),
    ...(holds && notChecked.length > 0
      ? ["  What could be checked holds the design wind; not everything could be."]
      : []),
    wrap(showWords(chain.answer, system), "  "),
    "  Weakest first, with the gust each link is good for:",
    ...linkLines(chain, shown),
    `  ${column("As it is left", stateWidth)}${column("first to go", linkWidth)}at a gust`,
    ...states.map(({ words, now, first }) => {
      const link = named.get(first.link) ?? first.part;
      const gust = showGustLimit(first.workingGust, system);
      return `  ${column(now ? `${words} (now)` : words, stateWidth)}${column(link, linkWidth)}${gust}`;
    }),
    ...(notChecked.length === 0
      ? []
      : [
          "  Not checked, with what it would have to carry at the design wind:",
          ...notChecked.map((one) => bullet(uncheckedWords(one, system))),
        ]),
    "  Not checked at all:",
    ...beside.map((one) => bullet(one)),
    ...(findings.length === 0 ? [] : ["  Findings:", ...bullets(findings, system)]),
    wrap(
      "Gusts are real gusts, at which allowable values are reached: act well before, at three quarters of them. Whether the whole house lifts, tips or slides: hoopstay check.",
      "  ",
    ),
    notSealed,
    ...(report === undefined ? [] : [`  Report: ${visible(report)}`]),
  ];
  return `${lines.join("\n")}\n`;
}

const verdictOf = ({ holds, notChecked }: ChainReview): string => {
  if (!holds) return "A LINK FAILS";
  return notChecked.length === 0 ? "LINKS HOLD" : "NOT ALL KNOWN";
};

function linkLines(chain: ChainReview, { system, combination }: ShownChain): string[] {
  const weakest = firstToGo(chain);
  const before = chain.links.findIndex(({ id }) => id === weakest);
  return chain.links.map((link, place) => {
    const gust = showGustLimit(link.worst.check.workingGust, system);
    const mark = `  ${String(place + 1).padStart(2)} ${gust.padStart(8)}  `;
    const apart = place < before ? "; the house is rated without" : "";
    const said = wrap(`${placeWords(link)}${apart}`, mark, hanging);
    return `${said}\n${wrap(numberWords(link.worst.check, combination, system), hanging)}`;
  });
}

const placeWords = ({ words, worst: { state, check } }: LinkSummary): string =>
  `${words}: ${check.part}; ${check.place}; ${state}, wind ${windFrom(check.governs.direction)}`;

/** Demand against resistance, where each is one force; their ratio; the code speed. */
function numberWords(
  { demand, resistance, ratio, codeSpeed }: LinkCheck,
  combination: "ASD" | "LRFD",
  system: System,
): string {
  const forces =
    demand.measure === "ratio"
      ? []
      : [`${showMeasured(demand, system)} asked of ${showMeasured(resistance, system)}`];
  const speed = showMeasured(speedLimit(codeSpeed[combination]), system);
  return [...forces, ratioWords(ratio[combination]), `code speed ${speed}`].join(", ");
}

function ratioWords(ratio: number): string {
  if (!Number.isFinite(ratio)) return "beyond any strength";
  return `ratio ${ratio >= 100 ? ">100" : ratio.toFixed(2)}`;
}

function uncheckedWords({ words, why, demand }: LinkNotChecked, system: System): string {
  const carries = demand === null ? "" : `; ${showMeasured(demand, system)}`;
  return `${words}: ${why.replace(/\.$/, "")}${carries}`;
}
