import { type DrawnHoop, windFrom } from "@hoopstay/core";
import { pointOnLine } from "@hoopstay/frame";
import type { Evaluation } from "../../review/evaluate.ts";
import { designCombinations, type LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { factoredDead, type HoopAnswer, hoopWords } from "../hoop/hoop-answers.ts";
import { hoopStrength } from "../hoop/hoop-strength.ts";
import { capacitiesOf, worstAlong } from "../links/hoop.ts";

interface Worst {
  readonly answer: HoopAnswer;
  readonly combination: LinkCombination;
  readonly ratio: number;
}

/** The hoop that is asked most at the design wind, and the combination that asks it. */
function worstHoop(context: ChainContext): Worst | null {
  const { evaluation, runs, answers, dead } = context;
  const { house, site, pressure } = evaluation;
  const strength = hoopStrength(house, runs.outline);
  if ("covered" in strength) return null;
  const capacities = capacitiesOf(strength, context);
  let worst: Worst | null = null;
  for (const combination of designCombinations(site.combination)) {
    const { method, wind } = combination;
    for (const answer of answers) {
      // Runs with ties count only while the ties stand: the drawing shows what always counts.
      if (answer.run.bound || answer.run.tied) continue;
      const d = factoredDead(dead, answer.windCase, combination);
      const w = wind * pressure;
      const { ratio } = worstAlong(answer, capacities[method], strength.euler, d, w, method);
      if (!worst || ratio > worst.ratio) worst = { answer, combination, ratio };
    }
  }
  return worst;
}

/** The first state in which the case of an answer stands. */
function stateOf({ windCase }: HoopAnswer, { states }: Evaluation): string {
  return states.find(({ set }) => windCase.sets.has(set))?.state.words ?? "";
}

/** The governing hoop at the design wind: moment, thrust and deflected shape, factored. */
export function drawnHoop(context: ChainContext): DrawnHoop {
  const worst = worstHoop(context);
  if (!worst) return { title: "The hoop is not computed", points: [], bars: [] };
  const { evaluation, runs, dead, hoopPlaces } = context;
  const { answer, combination } = worst;
  const { stations, framed, words } = answer.run;
  const count = stations.count;
  const d = factoredDead(dead, answer.windCase, combination);
  const w = combination.wind * evaluation.pressure;
  const still = new Float64Array(3 * count);
  const blown = new Float64Array(3 * count);
  stations.shape(answer.dead.response, still);
  stations.shape(answer.wind.response, blown);
  const sum = (of: Float64Array, by: Float64Array, at: number): number =>
    d * (of[at] as number) + w * (by[at] as number);
  const forces = (block: number, at: number): number =>
    sum(answer.dead.along, answer.wind.along, block * count + at);
  const points = runs.places.map(({ s }, at) => ({
    ...pointOnLine(runs.outline.line, s),
    moment: forces(2, at),
    thrust: forces(0, at),
    dx: sum(still, blown, 3 * at),
    dz: sum(still, blown, 3 * at + 1),
  }));
  const bars = framed.bars.map(({ from, to }, bar) => ({
    from,
    to,
    force: sum(answer.dead.bars, answer.wind.bars, 2 * bar),
  }));
  const { railed } = answer.run;
  const which = hoopWords(answer, hoopPlaces.length, railed);
  return {
    title: `Most bent at the design wind: ${which}, ${stateOf(answer, evaluation)}, wind ${windFrom(answer.windCase.direction)}, ${words}, ${combination.words}`,
    points,
    bars,
  };
}
