import {
  type HoldReview,
  type LadderRung,
  type RungId,
  speedLimit,
  type Words,
} from "@hoopstay/core";
import { partsToClose } from "../move-card/closing.ts";
import type { EvaluatedState, Evaluation } from "../review/evaluate.ts";
import { checkWords } from "../review/words.ts";
import { actionGust } from "./action-gust.ts";
import { type HeldGust, heldGusts } from "./held-gusts.ts";
import { rungHours } from "./rung-hours.ts";
import { closedStateOf, hasEnds, openStatesOf, stateGust } from "./state-gusts.ts";

/** What the ladder is made from: each state as it is held now. */
export interface LadderStates {
  readonly closed: HeldGust;
  /** Lowest with something open, and with an end wall missing. */
  readonly open: HeldGust | undefined;
  readonly wallsOff: HeldGust | undefined;
  readonly filmOff: HeldGust | undefined;
}

type Rung = Omit<LadderRung, "reached">;

const lowestHeld = (gusts: readonly HeldGust[]): HeldGust | undefined =>
  gusts.length === 0 ? undefined : gusts.reduce((a, b) => (b.byChecks < a.byChecks ? b : a));

export function ladderStates(evaluation: Evaluation, hold: HoldReview): LadderStates {
  const held = heldGusts(evaluation, hold);
  const open = openStatesOf(evaluation);
  const wallOff = (one: EvaluatedState): boolean => !hasEnds(one);
  const filmOff = evaluation.states.find(({ state }) => !state.filmOn);
  return {
    closed: held(closedStateOf(evaluation)),
    open: lowestHeld(open.filter(hasEnds).map(held)),
    wallsOff: lowestHeld(open.filter(wallOff).map(held)),
    filmOff: filmOff && held(filmOff),
  };
}

/** Closing helps where the shut house stands more: by the single checks, which know every state. */
export const closingHelps = ({ closed }: LadderStates, other: HeldGust | undefined): boolean =>
  other !== undefined && other.byChecks < closed.byChecks;

/** Taking the cover off helps only where that is known: by the lowest of all that limits each. */
export const strippingHelps = ({ closed, filmOff }: LadderStates): boolean =>
  filmOff !== undefined && filmOff.gust > closed.gust;

/** Every rung of a house by rising gust. Those without a limit are left out: no forecast gets there. */
export function rungsOf(evaluation: Evaluation, states: LadderStates): Rung[] {
  const { house } = evaluation;
  const { closed, open, wallsOff, filmOff } = states;
  const rungs: Rung[] = [];
  const add = (id: RungId, gust: number, does: string, because: Words): void => {
    if (Number.isFinite(gust)) rungs.push({ id, gust, does, because, hours: rungHours[id] });
  };
  const early = (working: number): number => actionGust.evaluate(working);
  const atThreeQuarters = "; act at three quarters of it.";
  if (wallsOff && closingHelps(states, wallsOff)) {
    const does = "Put missing end walls back and fasten them.";
    add("end-walls", early(wallsOff.gust), does, [...wallsOff.givesWay, atThreeQuarters]);
  }
  if (open && closingHelps(states, open)) {
    const parts = partsToClose(house).map(({ name }) => name);
    const what = parts.length > 0 ? parts.join(", ") : "everything that opens";
    add("close", early(open.gust), `Close: ${what}.`, [...open.givesWay, atThreeQuarters]);
  }
  if (house.anchors.length > 0) {
    const loose = stateGust(evaluation, closedStateOf(evaluation), "bare");
    add(
      "tighten",
      early(loose.gust),
      "Look at every anchor, its head and its links; take the slack out of every tether.",
      [
        `By its own weight alone it ${checkWords[loose.check].begins} at a gust of `,
        speedLimit(loose.gust),
        ": from there on it hangs on its anchors; act at three quarters of it.",
      ],
    );
  }
  const more =
    house.anchors.length > 0
      ? "Set more anchors, or ballast tied to the skids."
      : "Set anchors, or ballast tied to the skids: no anchor is fitted.";
  add("add", early(closed.gust), more, [...closed.givesWay, atThreeQuarters]);
  add("people", early(closed.gust), "Nobody stays inside or downwind while it blows.", [
    ...closed.givesWay,
    "; people leave at three quarters of it.",
  ]);
  add("animals", early(closed.gust), "Animals out, to other shelter, before the wind comes.", [
    ...closed.givesWay,
    "; animals leave at three quarters of it.",
  ]);
  const stripped = filmOff && strippingHelps(states) ? filmOff : undefined;
  if (stripped) {
    add("strip", early(closed.gust), "Strip the cover while it is still calm; never in wind.", [
      "Shut it stands a gust of ",
      speedLimit(closed.gust),
      ", with the film off ",
      speedLimit(stripped.gust),
      ".",
    ]);
  }
  add("leave", (stripped ?? closed).gust, "Leave it. Nobody goes near until the wind is over.", [
    ...(stripped ?? closed).givesWay,
    ": nothing else on this ladder holds it.",
  ]);
  // Stable: rungs at the same gust stay in the order in which they are done.
  return rungs.sort((a, b) => a.gust - b.gust);
}
