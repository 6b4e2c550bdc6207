import type { LinkNotChecked, Words } from "@hoopstay/core";
import {
  interaction,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  workInteraction,
} from "@hoopstay/strength";
import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { grouped } from "../grouped.ts";
import { factoredDead, type HoopAnswer, hoopWords } from "../hoop/hoop-answers.ts";
import type { FramedBar } from "../hoop/hoop-frame.ts";
import type { HoopRun } from "../hoop/hoop-run.ts";
import { inMap } from "../in-map.ts";
import { firstAbove } from "../limit.ts";
import { type LinkMaker, type LinkRow, ratioRow } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { Superposed } from "../superposed.ts";

/** Ratio of one bar of a tied hoop: thrust or pull with its own bending. */
function barRatio(
  { dead, wind }: HoopAnswer,
  bar: number,
  strength: MemberStrengths,
  deadFactor: number,
  windFactor: number,
  method: "ASD" | "LRFD",
): number {
  const force = (of: Float64Array, at: number): number => of[at] as number;
  const axial = deadFactor * force(dead.bars, 2 * bar) + windFactor * force(wind.bars, 2 * bar);
  const moment =
    Math.abs(deadFactor * force(dead.bars, 2 * bar + 1)) +
    Math.abs(windFactor * force(wind.bars, 2 * bar + 1));
  const { tension, compression, momentX } = strength;
  const along = axial > 0 ? tension : compression;
  if (!along.covered || !momentX.covered) return Number.POSITIVE_INFINITY;
  return interaction(axial, along[method], moment, momentX[method], 0, momentX[method]);
}

const strengthsOf = (bars: readonly FramedBar[]): MemberStrengths[] =>
  bars.map(({ piece, length }) =>
    memberStrengths(memberSection(piece.tube), steelOfTube(piece), {
      bucklingX: length,
      bucklingY: length,
      lateral: length,
      shear: length,
      torsion: length,
    }),
  );

type TieLimit = (run: HoopRun, windCase: ChainCase) => LinkRow["lasts"];

const known = new WeakMap<ChainContext, TieLimit>();

/**
 * A tie pushed or pulled beyond what it takes is as good as gone. A run with ties counts until those
 * of the last hoop are gone; runs without them count always.
 *
 * @returns the same row, counted while the ties of its run stand
 */
export function whileTied(context: ChainContext, answer: HoopAnswer, row: LinkRow): LinkRow {
  const { run, windCase } = answer;
  if (!run.tied) return row;
  let limit = known.get(context);
  if (!limit) {
    limit = tieLimit(context);
    known.set(context, limit);
  }
  const lasts = limit(run, windCase);
  return {
    ...row,
    lasts,
    ratio: (q, combination) => (q > lasts(combination) ? 0 : row.ratio(q, combination)),
  };
}

/** K_d q_h up to which the ties of some hoop of a run stand, Pa; each worked once. */
function tieLimit({ answers, dead }: ChainContext): TieLimit {
  const byRun = new Map<HoopRun, Map<ChainCase, HoopAnswer[]>>();
  for (const [run, own] of grouped(answers, (answer) => answer.run)) {
    if (run.tied)
      byRun.set(
        run,
        grouped(own, ({ windCase }) => windCase),
      );
  }
  const strengths = new Map<HoopRun, MemberStrengths[]>();
  const limitIn = (run: HoopRun, windCase: ChainCase): LinkRow["lasts"] => {
    const known = new Map<LinkCombination, number>();
    return (combination) => {
      const found = known.get(combination);
      if (found !== undefined) return found;
      const bars = inMap(strengths, run, () => strengthsOf(run.framed.bars));
      const { wind, method } = combination;
      const d = factoredDead(dead, windCase, combination);
      const hoops = byRun.get(run)?.get(windCase) ?? [];
      const ofHoop = (answer: HoopAnswer): number =>
        firstAbove((q) =>
          Math.max(...bars.map((can, bar) => barRatio(answer, bar, can, d, wind * q, method))),
        );
      const limit = Math.max(0, ...hoops.map(ofHoop));
      known.set(combination, limit);
      return limit;
    };
  };
  const limits = new Map<HoopRun, Map<ChainCase, LinkRow["lasts"]>>();
  return (run, windCase) =>
    inMap(
      inMap(limits, run, () => new Map<ChainCase, LinkRow["lasts"]>()),
      windCase,
      () => limitIn(run, windCase),
    );
}

/** Collar ties, truss bars and knee braces of the hoops that have them. */
export const tiesLink: LinkMaker = (context) => {
  const { answers, dead, hoopPlaces } = context;
  const rows: LinkRow[] = [];
  const strengths = new Map<HoopRun, MemberStrengths[]>();
  for (const answer of answers) {
    const { run, windCase } = answer;
    if (!run.tied || run.bound) continue;
    const own = strengths.get(run) ?? strengthsOf(run.framed.bars);
    strengths.set(run, own);
    const { railed } = run;
    run.framed.bars.forEach(({ what }, bar) => {
      const about = {
        link: "ties",
        part: `${what} in thrust or pull`,
        place: hoopWords(answer, hoopPlaces.length, railed),
        run: run.words,
        windCase,
        work: tieWork(context, answer, bar, own[bar] as MemberStrengths),
      } as const;
      rows.push(
        ratioRow(about, (q, combination) =>
          barRatio(
            answer,
            bar,
            own[bar] as MemberStrengths,
            factoredDead(dead, windCase, combination),
            combination.wind * q,
            combination.method,
          ),
        ),
      );
    });
  }
  return { rows, notChecked: unframed(context), findings: tieFindings([...strengths]) };
};

/** Bars of the file that no hoop is computed with. */
function unframed({ answers, evaluation }: ChainContext): LinkNotChecked[] {
  const { ties, trussBars, kneeBraces } = evaluation.house.links;
  const framed = new Set(answers.flatMap(({ run }) => run.framed.bars.map(({ what }) => what)));
  const kinds = [
    { what: "truss bar", words: "the truss bars", bars: trussBars },
    { what: "knee brace", words: "the knee braces", bars: kneeBraces },
  ] as const;
  return kinds.flatMap(({ what, words, bars }): LinkNotChecked[] => {
    if (!bars || framed.has(what)) return [];
    const reasons = [
      ...(bars.from && bars.to
        ? []
        : ["their ends are not entered (across and up, of from and to)"]),
      ...(ties ? [] : ["no collar tie is entered"]),
    ];
    const why = reasons.join("; ") || "they do not meet the collar tie";
    return [{ link: "ties", words, why, demand: null }];
  });
}

/** What a reviewer has to know of the bars, once for each kind of bar. */
function tieFindings(strengths: readonly (readonly [HoopRun, MemberStrengths[]])[]): Words[] {
  const told = strengths.flatMap(([run, own]) =>
    run.framed.bars.flatMap(({ what }, bar) =>
      (own[bar]?.findings ?? []).map((finding) => `Ties, ${what}: ${finding}.`),
    ),
  );
  return [...new Set(told)].map((words): Words => [words]);
}

function tieWork(
  context: ChainContext,
  { dead, wind, windCase, run }: HoopAnswer,
  bar: number,
  strength: MemberStrengths,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const { piece, length } = run.framed.bars[bar] as FramedBar;
    const lengths = { bucklingX: length, bucklingY: length, lateral: length };
    memberStrengths(
      memberSection(piece.tube),
      steelOfTube(piece),
      { ...lengths, shear: length, torsion: length },
      null,
      sheet,
    );
    const weight = factoredDead(context.dead, windCase, { ...combination, dead: 1 });
    const sum = new Superposed(sheet, weight, q, combination);
    const at = (of: Float64Array, place: number): number => of[2 * bar + place] as number;
    const axial = sum.force("N", "in the bar", at(dead.bars, 0), at(wind.bars, 0));
    const moment = sum.moment(
      "M",
      "greater of its ends, weight and wind without signs",
      Math.abs(at(dead.bars, 1)),
      Math.abs(at(wind.bars, 1)),
    );
    const { tension, compression, momentX } = strength;
    const along = axial > 0 ? tension : compression;
    if (!along.covered || !momentX.covered) return;
    const { method } = combination;
    const bending = [moment, momentX[method]] as const;
    workInteraction([axial, along[method]], bending, [0, momentX[method]], sheet);
  };
}
