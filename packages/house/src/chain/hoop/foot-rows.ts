import type { Chapter, LinkId } from "@hoopstay/core";
import type { CombinationId } from "@hoopstay/stability";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { type LinkRow, plainRow } from "../link.ts";
import { whileTied } from "../links/ties.ts";
import { Superposed } from "../superposed.ts";
import type { FootForces, FootReading, FootSide } from "./foot-forces.ts";
import { governingFeet, type LoadedHoop } from "./governing-feet.ts";
import { factoredDead, type HoopAnswer, hoopWords } from "./hoop-answers.ts";

/** The foot a row is about. */
export interface Foot {
  readonly answer: HoopAnswer;
  readonly side: FootSide;
  /** Place along the house, m. */
  readonly y: number;
}

/** What one part of a link makes of the forces on a foot. */
export interface FootPart {
  readonly part: string;
  readonly measure: LinkRow["measure"];
  readonly demand: (forces: FootForces, method: CombinationId) => number;
  readonly resistance: { readonly ASD: number; readonly LRFD: number };
  /** Works strength and demand on a sheet once the forces stand on it. */
  readonly work: (sheet: Chapter, forces: FootForces, method: CombinationId) => void;
}

/** Which foot in words: windward or lee where the wind blows across, the rail's side otherwise. */
export function footWords({ answer, side }: Foot, count: number, railed: boolean): string {
  const { direction } = answer.windCase;
  const windward = direction === "+x" ? "left" : direction === "-x" ? "right" : null;
  const hoop = hoopWords(answer, count, railed);
  if (windward === null) return `${side} foot of ${hoop}`;
  return `${side === windward ? "windward" : "lee"} foot of ${hoop}`;
}

/** Hoops under every case, runs that are bounds only left out. */
export const loadedHoops = ({ answers }: ChainContext): LoadedHoop[] =>
  answers
    .filter(({ run }) => !run.bound)
    .map((answer) => ({ answer, sets: answer.windCase.sets, demand: null }));

/** One row for every part of every foot that may govern, by direction of the wind. */
export function footRows(
  context: ChainContext,
  link: LinkId,
  reading: FootReading,
  parts: readonly FootPart[],
): LinkRow[] {
  const { hoopPlaces } = context;
  const forces: FootForces = { uplift: 0, thrust: 0, couple: 0 };
  const alike = ({ windCase }: HoopAnswer): string => windCase.direction;
  return governingFeet(context, loadedHoops(context), reading, alike).flatMap(
    ({ pushed: { answer }, side, sets }) => {
      const { run, hoop } = answer;
      const { railed } = run;
      const foot: Foot = { answer, side, y: hoopPlaces[hoop] as number };
      const place = footWords(foot, hoopPlaces.length, railed);
      const windCase = { ...answer.windCase, sets };
      return parts.map(({ part, measure, demand, resistance, work }) => {
        const asked = (q: number, combination: LinkCombination): number => {
          const d = factoredDead(context.dead, answer.windCase, combination);
          const w = combination.wind * q;
          return demand(reading.at(answer, side, d, w, forces), combination.method);
        };
        const row = plainRow(
          {
            ...{ link, part, place, run: run.words, windCase, measure },
            work: (sheet, q, combination) => {
              const worked = workForces(sheet, context, foot, reading, q, combination);
              work(sheet, worked, combination.method);
            },
          },
          asked,
          resistance,
        );
        return whileTied(context, answer, row);
      });
    },
  );
}

/** Uplift, thrust and couple of a foot, each out of weight and wind, on a sheet. */
export function workForces(
  sheet: Chapter,
  { dead }: ChainContext,
  { answer, side }: Foot,
  { words, at }: FootReading,
  q: number,
  combination: LinkCombination,
): FootForces {
  const weight = factoredDead(dead, answer.windCase, { ...combination, dead: 1 });
  const sum = new Superposed(sheet, weight, q, combination);
  const none = (): FootForces => ({ uplift: 0, thrust: 0, couple: 0 });
  const still = at(answer, side, 1, 0, none());
  const blown = at(answer, side, 0, 1, none());
  const both = at(answer, side, 1, 1, none());
  // Thrust and couple are read without sign: where weight and wind oppose, so do they here.
  const signed = (name: "thrust" | "couple"): number =>
    both[name] < Math.max(still[name], blown[name]) - 1e-12 ? -still[name] : still[name];
  return {
    uplift: sum.force("P", `uplift ${words}`, still.uplift, blown.uplift),
    thrust: Math.abs(sum.force("V", `thrust ${words}`, signed("thrust"), blown.thrust)),
    couple: Math.abs(sum.moment("M", `couple ${words}`, signed("couple"), blown.couple)),
  };
}
