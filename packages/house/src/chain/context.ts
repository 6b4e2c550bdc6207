import { hoopPlaces } from "../rail-pull/rail-shapes.ts";
import type { Evaluation } from "../review/evaluate.ts";
import { type ChainCase, chainCases } from "./chain-case.ts";
import { type HoopAnswer, hoopAnswers } from "./hoop/hoop-answers.ts";
import { type HoopDead, hoopDead } from "./hoop/hoop-dead.ts";
import { type HoopRuns, hoopRuns } from "./hoop/hoop-runs.ts";
import { type RailActions, railActions } from "./rail/rail-actions.ts";

/** What every link may ask of the house: the wind on its hoops, and what the hoops make of it. */
export interface ChainContext {
  readonly evaluation: Evaluation;
  /** Places of the hoops from the middle of the house, back to front, m. */
  readonly hoopPlaces: readonly number[];
  readonly cases: readonly ChainCase[];
  readonly runs: HoopRuns;
  /** Weight on the hoops, N per metre of hoop. */
  readonly dead: HoopDead;
  /** Every hoop in every run and case that differs. */
  readonly answers: readonly HoopAnswer[];
  /** What the rails carry in each case. */
  readonly rails: RailActions;
}

export function chainContext(evaluation: Evaluation): ChainContext {
  const { house, takeOff } = evaluation;
  const places = hoopPlaces(house.lines);
  const cases = chainCases(evaluation, places);
  const runs = hoopRuns(evaluation, places);
  const dead = hoopDead(house, takeOff, runs.outline.line.length);
  const answers = hoopAnswers(runs, cases, places.length);
  const rails = railActions(evaluation, runs, dead);
  return { evaluation, hoopPlaces: places, cases, runs, dead, answers, rails };
}
