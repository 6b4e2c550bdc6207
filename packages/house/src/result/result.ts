import { type CaseTable, caseStride, torsionCases, type WindCase } from "@hoopstay/load";
import {
  allOutcomes,
  type CheckOutcome,
  type CombinationId,
  checkIds,
  combinations,
} from "@hoopstay/stability";
import { basisWords } from "../rating/rating.ts";
import { cautions, notChecked } from "../review/cautions.ts";
import type { Evaluation, LoadSet } from "../review/evaluate.ts";
import type { HoldId } from "../review/hold.ts";
import { leastOutcomes } from "../review/least-check.ts";
import type { ReviewMeta } from "../review/make-review.ts";
import { caseId, governingOf, gustOf, setLetters, speedOf } from "../review/summaries.ts";
import { directionCode, setOf } from "../review/words.ts";
import { jointOf, jointOfCases } from "../together/joint.ts";
import type { Result } from "./result-schema.ts";

type CheckResult = Result["load_sets"][number]["cases"][number]["held"][number]["checks"][number];
type CaseResult = Result["load_sets"][number]["cases"][number];

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

function checkResult(
  evaluation: Evaluation,
  worst: CheckOutcome,
  limit: number,
  combination: string,
): CheckResult {
  const code = speedOf(evaluation, limit);
  return {
    check: worst.check,
    weight: worst.weight,
    without_arch: worst.withoutArch,
    demand: worst.demand,
    resistance: worst.resistance,
    ratio: finite(worst.ratio),
    code_speed: finite(code),
    working_gust: combination === "ASD" ? finite(gustOf(code)) : null,
  };
}

function caseResult(
  evaluation: Evaluation,
  table: CaseTable,
  index: number,
  id: string,
  held: CaseResult["held"],
  together: CaseResult["together"],
): CaseResult {
  const windCase = table.cases[index] as WindCase;
  const [fx, fy, fz, mx, my, mz, bare] = Array.from(
    table.components.slice(index * caseStride, (index + 1) * caseStride),
    (unit) => unit * evaluation.pressure,
  ) as [number, number, number, number, number, number, number];
  return {
    id,
    load_case: windCase.number,
    direction: directionCode(windCase),
    reading: windCase.across?.set?.reading ?? null,
    coefficient_set: setOf(windCase),
    vertical: windCase.vertical,
    inside_coefficient: windCase.inside,
    twist: windCase.twist,
    components: { fx, fy, fz, mx, my, mz, fx_without_arch: bare },
    held,
    together,
  };
}

function casesOf(evaluation: Evaluation, set: LoadSet, letter: string): CaseResult[] {
  const { shell, site } = evaluation;
  const hold = set.holds.at(-1)?.id ?? "bare";
  const { combination } = site;
  const [factors, twistedFactors] = jointOfCases(evaluation, set, hold, combination);
  const together = (factor: number | undefined): CaseResult["together"] => {
    return { hold, combination, factor: finite(factor ?? Number.POSITIVE_INFINITY) };
  };
  const single = set.table.cases.map((_, index) => {
    const held = set.holds.flatMap(({ id, terms }) =>
      combinations.map((combination) => {
        const found = allOutcomes(terms[combination.id], set.table, index);
        const checks = checkIds.map((check) => {
          const mine = found.filter((one) => one.check === check);
          const worst = mine.reduce((a, b) => (b.ratio > a.ratio ? b : a));
          const limit = Math.min(...mine.map((one) => one.limit));
          return checkResult(evaluation, worst, limit, combination.id);
        });
        return { hold: id, combination: combination.id, checks };
      }),
    );
    return caseResult(
      evaluation,
      set.table,
      index,
      caseId(letter, index),
      held,
      together(factors[index]),
    );
  });
  const sizes = { across: shell.L, along: shell.b };
  const twisted = torsionCases(set.surfaces, set.insideCoefficients, sizes);
  const torsion = twisted.cases.map((_, index) =>
    caseResult(
      evaluation,
      twisted,
      index,
      `${caseId(letter, index)}T`,
      [],
      together(twistedFactors[index]),
    ),
  );
  return [...single, ...torsion];
}

/** All tethers, ground pushes and friction at once: the lowest factor of cases 1 to 4. */
function togetherResult(
  evaluation: Evaluation,
  set: LoadSet,
  letter: string,
  hold: HoldId,
  combination: CombinationId,
) {
  const result = jointOf(evaluation, set, hold, combination);
  const { factor, row, table, weight } = result;
  const code = speedOf(evaluation, factor * evaluation.pressure);
  return {
    factor: finite(factor),
    code_speed: finite(code),
    working_gust: combination === "ASD" ? finite(gustOf(code)) : null,
    weight,
    case: `${caseId(letter, row)}${table === set.table ? "" : "T"}`,
  };
}

/** What an anchor counts, and where that comes from. */
const anchorResults = ({ house, site, ratings }: Evaluation): Result["anchors"] =>
  house.anchors.map(({ name, x, y, pull, toward, kind }, index) => {
    const rating = ratings[index] ?? null;
    return {
      name,
      kind,
      x,
      y,
      toward: [...toward],
      allowable: pull,
      basis: rating ? basisWords(rating, site) : "given in the house file",
      governs: rating?.governs ?? null,
      reason: rating?.reason ?? null,
    };
  });

/** The whole result in SI, as `--json` prints it; `resultSchema` describes it. */
export function resultOf(evaluation: Evaluation, meta: ReviewMeta, holds: boolean): Result {
  const { house, site, factors, takeOff } = evaluation;
  const letters = setLetters(evaluation);
  const { kz, kzt, kd, ke } = factors;
  return {
    program: "hoopstay",
    version: meta.version,
    digest: meta.digest,
    house: house.name,
    site: site.name,
    holds,
    combination: site.combination,
    map_speed: site.mapSpeed,
    pressure: evaluation.pressure,
    factors: { kz, kzt, kd, ke },
    weights: evaluation.holds.flatMap(({ id, holdings }) =>
      holdings.map(({ weight: { name, W, x, y, z } }) => ({ hold: id, name, weight: W, x, y, z })),
    ),
    take_off: takeOff.items.map(({ what, low, high, x, y, z }) => ({ what, low, high, x, y, z })),
    anchors: anchorResults(evaluation),
    states: evaluation.states.map(({ state, enclosure, set }) => {
      const letter = letters.get(set) ?? "";
      return {
        id: state.id,
        words: state.words,
        load_set: letter,
        enclosure: enclosure?.kind ?? "film off",
        inside_coefficients: [...set.insideCoefficients],
        governing: set.governing.map(({ hold, combination }) => ({
          hold,
          combination,
          checks: governingOf(set, hold, combination).map(({ byRatio, byLimit }) => ({
            ...checkResult(evaluation, byRatio, byLimit.limit, combination),
            case: caseId(letter, byRatio.caseIndex),
            limit_case: caseId(letter, byLimit.caseIndex),
          })),
          together: togetherResult(evaluation, set, letter, hold, combination),
          least_load: leastOutcomes(set.least, hold, combination).map(
            ({ check, load, outcome }) => ({
              check,
              load: `${load.id} ${load.sense > 0 ? "+" : "-"}${load.axis === "across" ? "x" : "y"}`,
              demand: outcome.demand,
              resistance: outcome.resistance,
              ratio: finite(outcome.ratio),
            }),
          ),
        })),
      };
    }),
    load_sets: [...letters].map(([set, letter]) => ({
      id: letter,
      weights: set.holds.flatMap(({ id, holdings }) =>
        holdings.map(({ weight: { name, W, x, y, z } }) => ({
          hold: id,
          name,
          weight: W,
          x,
          y,
          z,
        })),
      ),
      cases: casesOf(evaluation, set, letter),
    })),
    doubts: [...house.doubts, ...site.doubts],
    assumptions: [...house.assumptions, ...site.assumptions].map((one) => ({ ...one })),
    cautions: [...cautions],
    not_checked: [...notChecked],
  };
}
