import { type LadderRung, measured, speedLimit, type Words } from "@hoopstay/core";
import type { Evaluation } from "../review/evaluate.ts";
import type { HeldGust } from "./held-gusts.ts";

const asked =
  "Ask the forecast for the gust, the largest 3-second speed at 10 m; never the mean wind.";

const inSentence = (does: string): string =>
  `${does.charAt(0).toLowerCase()}${does.slice(1).replace(/\.$/, "")}`;

/** The sentence that goes with a ladder: what to do now, by when, and how to leave the house. */
export function adviceOf(
  evaluation: Evaluation,
  rungs: readonly LadderRung[],
  closed: HeldGust,
  forecast: number | null,
): Words {
  if (closed.gust === 0) {
    return [
      "As it is held now it does not hold even in calm air. Anchor and chock it before anything else; nobody below it or inside.",
    ];
  }
  const [first] = rungs;
  if (!first) {
    return [
      "These checks found no wind limit. The parts that are not checked have one all the same.",
    ];
  }
  if (forecast === null) {
    return [
      `No forecast gust was given. ${asked} The first thing to do comes at `,
      speedLimit(first.gust),
      `: ${inSentence(first.does)}.`,
    ];
  }
  const gust = measured(forecast, "speed");
  const reached = rungs.filter((rung) => rung.reached);
  if (reached.length === 0) {
    return [
      "A gust of ",
      gust,
      " reaches no rung: leave it as it is, and look again when the forecast changes. Next, at ",
      speedLimit(first.gust),
      `: ${inSentence(first.does)}.`,
    ];
  }
  return [
    "A gust of ",
    gust,
    ` reaches ${reached.length} of ${rungs.length} rungs. ${nowStands(evaluation, closed)}`,
    ...deeds(reached, closed),
  ];
}

/** The state it stands in now, where that is not the one to leave it in. */
function nowStands({ states, site }: Evaluation, closed: HeldGust): string {
  const now = states.find(({ state }) => state.id === site.now)?.state;
  return now && now.id !== closed.state.id ? `It stands now with: ${now.words}. ` : "";
}

function deeds(reached: readonly LadderRung[], closed: HeldGust): Words {
  const has = (id: LadderRung["id"]): boolean => reached.some((rung) => rung.id === id);
  const most = reached.reduce((sum, { hours }) => sum + hours.high, 0);
  const begin = `Begin ${most} h or more before the wind is due, and be done before it rises`;
  if (has("leave")) {
    const others = reached.filter(({ id }) => !["people", "animals", "leave"].includes(id));
    const list = others.map(({ does }) => inSentence(does)).join("; ");
    const rest = list ? ` Only with time left before it rises: ${list}.` : "";
    return [
      `It does not hold that gust, whatever is done from this ladder. Animals and people out first, then keep away. ${begin}.${rest} More anchors change the ladder only when it has been made again with them.`,
    ];
  }
  const list = reached.map(({ does }) => inSentence(does)).join("; ");
  const left = has("strip") ? "with the film off" : closed.state.words;
  return [
    `Now: ${list}. ${begin}. Leave it ${left}`,
    ...(has("strip") ? ["."] : [": it stands a gust of ", speedLimit(closed.gust), "."]),
  ];
}
