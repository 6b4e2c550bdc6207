import { Chapter, derived, formula, inMeasure, taken } from "@hoopstay/core";
import {
  caseComponent,
  caseStride,
  codeSpeed,
  diagonalShare,
  directionality,
  insideUplift,
  type WindCase,
  workingGust,
} from "@hoopstay/load";
import {
  type CheckOutcome,
  type Combination,
  demandOf,
  type HoldingTerms,
  linearLimit,
  lineTerms,
  overturning,
  resistanceOf,
  slidingLimit,
  slopeAgainst,
  utilization,
} from "@hoopstay/stability";
import type { Evaluation, LoadSet } from "../review/evaluate.ts";
import type { Hold } from "../review/hold.ts";
import { anchorSteps, factoredWeight, weightAbout } from "./holding-steps.ts";
import { mustAgree } from "./must-agree.ts";
import type { ParentWork } from "./parent-chapter.ts";
import { openingsId } from "./shared-chapters.ts";
import { slideTrial } from "./slide-trial.ts";
import { slopeMomentStep } from "./slope-steps.ts";

/** What a check chapter is about: the governing outcome and where it stands. */
export interface CheckSubject {
  readonly id: string;
  readonly title: string;
  /** Id of the state it stands in. */
  readonly state: string;
  readonly outcome: CheckOutcome;
  readonly set: LoadSet;
  readonly hold: Hold;
  readonly combination: Combination;
  readonly across: ParentWork | null;
  readonly along: ParentWork | null;
}

interface Components {
  readonly fx: number;
  readonly fy: number;
  readonly fz: number;
  readonly mx: number;
  readonly my: number;
  readonly fxNoArch: number;
}

const none: ParentWork = {
  id: "",
  drag: 0,
  archDrag: 0,
  side: 0,
  uplift: 0,
  dragMoment: 0,
  upliftMoment: 0,
};

const perPressure = formula({
  id: "wind-per-pressure",
  symbol: "w",
  name: "wind effect per unit of K_d q_h",
  measure: "first-moment",
  arguments: [
    ["W", "wind effect", "moment"],
    ["q", "K_d q_h", "pressure"],
  ],
  expression: "W / q",
  citation: derived("wind goes with the pressure"),
  evaluate: (wind, pressure) => wind / pressure,
});

const momentComponent = inMeasure(caseComponent, "moment");

/** The six components of a case put together from its parents, step by step. */
function components(evaluation: Evaluation, subject: CheckSubject, chapter: Chapter): Components {
  const { shell, pressure } = evaluation;
  const { set, outcome } = subject;
  const windCase = set.table.cases[outcome.caseIndex] as WindCase;
  const a = subject.across ?? none;
  const l = subject.along ?? none;
  const sa = windCase.across?.sense ?? 1;
  const sl = windCase.along?.sense ?? 1;
  const share = windCase.number === 3 ? diagonalShare.value : 1;
  const acrossLifts = windCase.vertical === "across";
  const lifting = acrossLifts ? a : l;
  const inside = windCase.inside;
  const { fy: insideY, mx: insideX } = set.surfaces.inside;
  if (windCase.number === 3) {
    chapter.work(diagonalShare, [], {
      note: "on horizontal forces only: uplift is kept whole in case 3, a judgement on the safe side",
    });
  }
  const work = (symbol: string, inputs: readonly [number, number, number, number, number]) =>
    chapter.work(symbol.startsWith("M") ? momentComponent : caseComponent, inputs, { symbol });
  const lift = chapter.work(insideUplift, [
    inside,
    pressure,
    shell.b,
    set.covering === "bare" ? 0 : shell.L,
  ]);
  const fx = work("F_x", [share, sa * a.drag, 0, 0, 0]);
  const fxNoArch = outcome.withoutArch
    ? work("F_x,walls", [share, sa * (a.drag - a.archDrag), 0, 0, 0])
    : fx;
  const fy = work("F_y", [share, a.side, sl * l.drag, 0, inside * pressure * insideY]);
  const fz = work("F_z", [0, 0, 0, lifting.uplift, lift]);
  const mx = work("M_x", [
    share,
    -shell.endCentroid * a.side,
    -sl * l.dragMoment,
    acrossLifts ? 0 : -sl * l.upliftMoment,
    inside * pressure * insideX,
  ]);
  const my = work("M_y", [share, sa * a.dragMoment, 0, acrossLifts ? sa * a.upliftMoment : 0, 0]);
  const found = { fx, fy, fz, mx, my, fxNoArch };
  agree(evaluation, subject, found);
  return found;
}

/** The working and the numbers of the check must be one and the same; a difference is our fault. */
function agree(evaluation: Evaluation, { set, outcome }: CheckSubject, found: Components): void {
  const at = outcome.caseIndex * caseStride;
  const row = set.table.components.slice(at, at + caseStride);
  const scale = evaluation.pressure * Math.max(...Array.from(row, Math.abs), 1e-9);
  const pairs = [
    [found.fx, row[0]],
    [found.fy, row[1]],
    [found.fz, row[2]],
    [found.mx, row[3]],
    [found.my, row[4]],
  ] as const;
  for (const [worked, unit] of pairs) {
    mustAgree(
      `a load case of ${outcome.check}`,
      worked,
      evaluation.pressure * (unit as number),
      scale,
    );
  }
}

/** The chapter of one check: its load case put together, demand, resistance, ratio and limits. */
export function checkChapter(evaluation: Evaluation, subject: CheckSubject): Chapter {
  const { across, along } = subject;
  const parents = [across, along].flatMap((work) => (work ? [work.id] : []));
  const restsOn = [...parents, openingsId(subject.state), "B", "Q", "G"];
  const chapter = new Chapter(subject.id, subject.title, restsOn);
  const found = components(evaluation, subject, chapter);
  const { outcome, hold, combination } = subject;
  const held = hold.terms[combination.id].holdings.find(
    ({ terms }) => terms.holding.weight.name === outcome.weight,
  );
  if (!held) throw new Error(`no holding with the ${outcome.weight} weight`);
  const { terms } = held;
  weightSteps(chapter, terms);
  if (outcome.check === "slide") slideSteps(evaluation, subject, chapter, held, found);
  else leverSteps(evaluation, subject, chapter, terms, found);
  return chapter;
}

function weightSteps(chapter: Chapter, terms: HoldingTerms): void {
  const { weight, slope } = terms.holding;
  const note = `${weight.name} weight of the take-off, with fixed ballast, without what is missing in this state; ${terms.combination.id}: ${terms.combination.words}`;
  chapter.work(factoredWeight, [terms.combination.dead, weight.W, slope?.angle ?? 0], { note });
}

function leverSteps(
  evaluation: Evaluation,
  { outcome, combination }: CheckSubject,
  chapter: Chapter,
  terms: HoldingTerms,
  found: Components,
): void {
  const lift = outcome.line === null;
  const measure = lift ? ("force" as const) : ("moment" as const);
  let wind = found.fz;
  let about = { weightMoment: terms.deadNormal, anchorMoment: terms.anchorDown, slopeMoment: 0 };
  if (outcome.line) {
    const { nx, ny, distance } = outcome.line;
    const inputs: [number, number, number, number, number, number] = [
      nx,
      ny,
      found.mx,
      found.my,
      found.fz,
      distance,
    ];
    wind = chapter.work({ ...overturning, name: "wind moment about the base line" }, inputs, {
      symbol: "M",
    });
    about = lineTerms(terms, outcome.line);
    weightAbout(chapter, terms, outcome.line);
    slopeMomentStep(chapter, terms, outcome.line);
  }
  anchorSteps(
    chapter,
    terms,
    outcome.line,
    lift ? terms.anchorDown : about.anchorMoment,
    evaluation.house.anchors.map(({ name }) => name),
  );
  const demand = chapter.work(inMeasure(demandOf, measure), [
    combination.wind,
    wind,
    about.slopeMoment,
  ]);
  const resistance = chapter.work(inMeasure(resistanceOf, measure), [
    about.weightMoment,
    about.anchorMoment,
  ]);
  if (resistance > 0) chapter.work(inMeasure(utilization, measure), [demand, resistance]);
  if (wind > 0 && resistance - about.slopeMoment >= 0) {
    const perUnit = chapter.work(inMeasure(perPressure, measure), [wind, evaluation.pressure]);
    const limit = chapter.work(inMeasure(linearLimit, measure), [
      resistance,
      about.slopeMoment,
      combination.wind,
      perUnit,
    ]);
    speedSteps(evaluation, chapter, combination, limit);
  }
}

function slideSteps(
  evaluation: Evaluation,
  { outcome, combination }: CheckSubject,
  chapter: Chapter,
  held: Hold["terms"]["ASD"]["holdings"][number],
  found: Components,
): void {
  const { terms } = held;
  const q = evaluation.pressure;
  const unit = {
    fx: found.fxNoArch / q,
    fy: found.fy / q,
    fz: found.fz / q,
    turnRight: (found.my + (held.lines[0]?.line.distance ?? 0) * found.fz) / q,
    turnLeft: (-found.my + (held.lines[1]?.line.distance ?? 0) * found.fz) / q,
  };
  const { fxNoArch: fx, fy, fz, mx, my } = found;
  const names = evaluation.house.anchors.map(({ name }) => name);
  const subject = { held, wind: { fx, fy, fz, mx, my }, unit, design: q, names };
  slideTrial(chapter, subject, q, {
    note: outcome.withoutArch
      ? "walls and ends only: roof suction may not relieve drag"
      : "all surfaces",
  });
  const [sx, sy] = slopeAgainst(terms, unit.fx, unit.fy);
  const { friction } = terms.holding;
  const h = Math.hypot(unit.fx, unit.fy);
  if (terms.sideways || sx * unit.fy !== sy * unit.fx || h + friction * unit.fz <= 0) {
    if (!Number.isFinite(outcome.limit)) return;
    const name = "K_d q_h at which it begins to slide";
    const bySearch = "found by search; the trial below shows demand and resistance at it";
    const first = derived("first pressure at which demand exceeds resistance");
    const searched = taken(bySearch, "searched", "q_c", name, outcome.limit, "pressure", first);
    const limit = chapter.work(searched, []);
    if (limit > 0) slideTrial(chapter, subject, limit, { mark: ",c", note: "trial at q_c" });
    speedSteps(evaluation, chapter, combination, limit);
    return;
  }
  const slope = Math.hypot(sx, sy);
  chapter.work(inMeasure(perPressure, "force"), [h * q, q], { symbol: "h", note: "horizontal" });
  chapter.work(inMeasure(perPressure, "force"), [fz, q], { symbol: "v", note: "uplift" });
  const inputs = [friction, terms.deadNormal, slope, combination.wind, h, unit.fz] as const;
  speedSteps(evaluation, chapter, combination, Math.max(0, chapter.work(slidingLimit, inputs)));
}

function speedSteps(
  { factors }: Evaluation,
  chapter: Chapter,
  combination: Combination,
  limit: number,
): void {
  const speed = chapter.work(codeSpeed, [limit, factors.perSpeedSquared]);
  if (combination.id === "ASD") chapter.work(workingGust, [speed, directionality.value]);
}
