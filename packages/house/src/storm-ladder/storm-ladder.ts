import { type HoldReview, Refusal, type StormLadder } from "@hoopstay/core";
import { cautions } from "../review/cautions.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { forecastWords } from "./forecast-words.ts";
import { adviceOf } from "./ladder-advice.ts";
import {
  closingHelps,
  type LadderStates,
  ladderStates,
  rungsOf,
  strippingHelps,
} from "./ladder-rungs.ts";
import { hoursCitation } from "./rung-hours.ts";

/**
 * What to do at what forecast gust with the house as it is held now. Every threshold is a working
 * gust of the checks, or three quarters of one; a forecast gust is compared with gusts only.
 *
 * @param forecast largest 3-second gust at 10 m that is forecast, m/s; null where none was given
 * @throws Refusal `out-of-range` for a forecast below zero or not finite
 */
export function stormLadder(
  evaluation: Evaluation,
  hold: HoldReview,
  forecast: number | null,
): StormLadder {
  if (forecast !== null && !(forecast >= 0 && Number.isFinite(forecast))) {
    const expected = "a forecast gust of zero or more";
    const mend = "Give the gust of the forecast, such as 45 mph.";
    throw new Refusal([{ code: "out-of-range", given: String(forecast), expected, mend }]);
  }
  const states = ladderStates(evaluation, hold);
  const rungs = rungsOf(evaluation, states).map((rung) => {
    return { ...rung, reached: forecast !== null && forecast >= rung.gust };
  });
  return {
    house: evaluation.house.name,
    site: evaluation.site.name,
    forecast,
    rungs,
    landmarks: forecastWords,
    hoursCitation,
    advice: adviceOf(evaluation, rungs, states.closed, forecast),
    cautions: [...ownCautions(evaluation, hold, states), ...cautions],
  };
}

function ownCautions(
  { house }: Evaluation,
  { fitted }: HoldReview,
  states: LadderStates,
): string[] {
  const list = [
    "A gust here is a real 3-second gust at 10 m in open country: not a mean wind, not a design map speed. Hill and exposure of the place are in the limits already.",
    "These are gusts at which the whole house moves. A link of it may give way before: hoopstay first tells at which gust; where that is lower, act by it.",
  ];
  const { closed, open, filmOff } = states;
  if (filmOff && filmOff.byChecks <= closed.byChecks) {
    list.push(
      "Do not strip the cover: without it the house gives way no later. It would make it worse.",
    );
  } else if (filmOff && !strippingHelps(states) && Number.isFinite(closed.gust)) {
    list.push(
      "Do not strip the cover: the anchors, all at once, are known only in their worst state, and nothing shows that it would help.",
    );
  }
  if (open && !closingHelps(states, open)) {
    list.push("By these checks it stands no more shut than open, so closing is no rung here.");
  }
  if (house.anchors.length > 0 && fitted === null) {
    list.push("The anchors were not checked all at once: the limits may be too high.");
  }
  list.push(
    "Hours are common practice without a source: time your own crew.",
    "Words of the weather service differ from office to office; the gust counts.",
  );
  return list;
}
