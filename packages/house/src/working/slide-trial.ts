import { type Chapter, derived, formula } from "@hoopstay/core";
import {
  contactForce,
  demandOf,
  type SlidingTerms,
  type SlidingWind,
  slidingDemand,
  slidingResistance,
  slopeAgainst,
  tetherNeed,
  tetherParts,
  turnedWorst,
  utilization,
  worstSlideAt,
} from "@hoopstay/stability";
import { mustAgree } from "./must-agree.ts";

const tethersAgainst = formula({
  id: "tethers-against",
  symbol: "T_h",
  name: "tethers against the slide, less what those that lead downwind pull along with it",
  measure: "force",
  arguments: [
    ["P_a", "horizontal parts of allowable pulls against the slide", "force"],
    ["lambda_l", "share that turning about the right rail asks of the left tethers", "ratio"],
    ["P_l", "horizontal parts along the slide, left tethers", "force"],
    ["lambda_r", "share that turning about the left rail asks of the right tethers", "ratio"],
    ["P_r", "horizontal parts along the slide, right tethers", "force"],
    ["P_m", "horizontal parts along the slide, tethers in the middle", "force"],
  ],
  expression: "P_a - lambda_l * P_l - lambda_r * P_r - max(lambda_l, lambda_r) * P_m",
  citation: derived(
    "a tether that leads downwind pulls the house along as hard as turning needs it",
  ),
  evaluate: (against, needLeft, left, needRight, right, middle) =>
    against - needLeft * left - needRight * right - Math.max(needLeft, needRight) * middle,
});

type Rail = SlidingTerms["right"];

/** What turning about one rail asks of the tethers on the other. */
function needStep(chapter: Chapter, rail: Rail, factor: number, turn: number, symbol: string) {
  const inputs = [factor, turn, rail.slopeMoment] as const;
  const demand = chapter.work(demandOf, inputs, { symbol: `E_${symbol.slice(-1)}` });
  if (rail.anchorMoment > 0) {
    return chapter.work(tetherNeed, [demand, rail.weightMoment, rail.anchorMoment], { symbol });
  }
  return demand > rail.weightMoment ? 1 : 0;
}

/** Demand, contact, tethers and resistance of sliding at one pressure, step by step. */
export function slideTrial(
  chapter: Chapter,
  sliding: SlidingTerms,
  wind: SlidingWind,
  pressure: number,
  { mark = "", note }: { readonly mark?: string; readonly note: string },
): void {
  const { terms } = sliding;
  const factor = terms.combination.wind;
  const [fx, fy, fz] = [pressure * wind.fx, pressure * wind.fy, pressure * wind.fz];
  const turned = turnedWorst(sliding, wind, pressure);
  const [sx, sy] = slopeAgainst(terms, wind.fx, wind.fy, turned);
  const as = (symbol: string) => ({ symbol: `${symbol}${mark}` });
  const demand = chapter.work(slidingDemand, [factor, fx, fy, sx, sy], { ...as("E"), note });
  const contact = chapter.work(contactForce, [terms.deadNormal, factor, fz], as("N"));
  let tether = 0;
  if (terms.sideways && demand > 0) {
    const [ux, uy] = [(factor * fx + sx) / demand, (factor * fy + sy) / demand];
    const { against, left, right, middle } = tetherParts(terms, ux, uy);
    const aslant = left + right + middle !== 0;
    const { turnRight, turnLeft } = wind;
    const l = aslant
      ? needStep(chapter, sliding.right, factor, pressure * turnRight, "lambda_l")
      : 0;
    const r = aslant ? needStep(chapter, sliding.left, factor, pressure * turnLeft, "lambda_r") : 0;
    tether = chapter.work(tethersAgainst, [against, l, left, r, right, middle], as("T_h"));
  }
  const { friction } = terms.holding;
  const resistance = chapter.work(slidingResistance, [friction, contact, tether], as("R"));
  const whole = worstSlideAt(sliding, wind, pressure);
  const scale = Math.max(whole.demand, Math.abs(whole.resistance), 1);
  mustAgree("the push of sliding", demand, whole.demand, scale);
  mustAgree("what resists sliding", resistance, whole.resistance, scale);
  if (resistance > 0) chapter.work(utilization, [demand, resistance], mark ? as("E/R") : {});
}
