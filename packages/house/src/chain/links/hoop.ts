import type { LinkNotChecked, Words } from "@hoopstay/core";
import {
  amplifiedMoment,
  interaction,
  loadLevel,
  momentAmplification,
  momentAmplifier,
  workInteraction,
} from "@hoopstay/strength";
import type { ChainCase } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { factoredDead, type HoopAnswer, hoopWords } from "../hoop/hoop-answers.ts";
import { HoopBounds, leastCapacities } from "../hoop/hoop-bounds.ts";
import type { HoopPlace } from "../hoop/hoop-stations.ts";
import {
  type ByMethod,
  type Capacities,
  type HoopStrength,
  hoopStrength,
} from "../hoop/hoop-strength.ts";
import type { LinkMaker, LinkRow } from "../link.ts";
import { ratioRow } from "../link.ts";
import { forceOverStrength, grownMoment, hasBuckled, Superposed } from "../superposed.ts";
import { whileTied } from "./ties.ts";

/** Where along a hoop the ratio is greatest. */
interface HoopWorst {
  readonly ratio: number;
  readonly place: number;
  /** Greatest compression anywhere along the hoop, and where. */
  readonly compression: number;
  readonly compressedAt: number;
}

/** What every place looked at along the hoop can take. */
export function capacitiesOf(
  { tube, holed, joints }: HoopStrength,
  { evaluation, runs }: ChainContext,
): ByMethod<Capacities[]> {
  const all = evaluation.house.links.joints;
  const at = ({ kind, joint }: HoopPlace, method: "ASD" | "LRFD"): Capacities => {
    if (kind === "bolts" && holed) return holed[method];
    if (kind === "joint" && joint) return (joints[all.indexOf(joint)] ?? tube)[method];
    return tube[method];
  };
  const of = (method: "ASD" | "LRFD") => runs.places.map((place) => at(place, method));
  return { ASD: of("ASD"), LRFD: of("LRFD") };
}

/** Bending with thrust by H1-1 along one hoop, second order by the amplified moment. */
export function worstAlong(
  { dead, wind }: HoopAnswer,
  capacities: readonly Capacities[],
  euler: number,
  deadFactor: number,
  windFactor: number,
  method: "ASD" | "LRFD",
): HoopWorst {
  const count = capacities.length;
  const moments = 2 * count;
  const [still, blown] = [dead.along, wind.along];
  let compression = 0;
  let compressedAt = 0;
  for (let at = 0; at < count; at += 1) {
    const axial = deadFactor * (still[at] as number) + windFactor * (blown[at] as number);
    if (-axial > compression) {
      compression = -axial;
      compressedAt = at;
    }
  }
  const amplifier = momentAmplifier(method, compression, euler);
  let worst = -1;
  let place = 0;
  for (let at = 0; at < count; at += 1) {
    const axial = deadFactor * (still[at] as number) + windFactor * (blown[at] as number);
    const moment =
      deadFactor * (still[moments + at] as number) + windFactor * (blown[moments + at] as number);
    const can = capacities[at] as Capacities;
    const along = axial > 0 ? can.tension : can.compression;
    const ratio = interaction(
      axial,
      along,
      amplifiedMoment(amplifier, moment),
      can.moment,
      0,
      can.moment,
    );
    if (!(ratio <= worst)) {
      worst = ratio;
      place = at;
    }
  }
  return { ratio: worst, place, compression, compressedAt };
}

/** The greatest shear over what the tube takes in shear. */
function shearRatio(
  { dead, wind }: HoopAnswer,
  capacities: readonly Capacities[],
  deadFactor: number,
  windFactor: number,
): number {
  const count = capacities.length;
  let worst = 0;
  for (let at = 0; at < count; at += 1) {
    const shear =
      deadFactor * (dead.along[count + at] as number) +
      windFactor * (wind.along[count + at] as number);
    worst = Math.max(worst, Math.abs(shear) / (capacities[at] as Capacities).shear);
  }
  return worst;
}

/** The hoop itself: bending with thrust and shear, wherever along it they ask most. */
export const hoopLink: LinkMaker = (context) => {
  const { evaluation, runs, dead, answers, hoopPlaces } = context;
  const { house } = evaluation;
  const strength = hoopStrength(house, runs.outline);
  if ("covered" in strength) {
    const why = `${strength.reason}. ${strength.mend}`;
    return {
      rows: [],
      notChecked: [{ link: "hoop", words: "the hoops", why, demand: null }],
      findings: [],
    };
  }
  const capacities = capacitiesOf(strength, context);
  const least = leastCapacities(capacities);
  const rows: LinkRow[] = [];
  for (const answer of answers) {
    if (answer.run.bound) continue;
    const { windCase, run } = answer;
    const { railed } = run;
    const place = hoopWords(answer, hoopPlaces.length, railed);
    const about = { link: "hoop", place, run: run.words, windCase } as const;
    const workBending = bendingWork(context, answer, strength, capacities);
    const workShear = shearWork(context, answer, capacities);
    const bounds = new HoopBounds(answer, least, strength.euler);
    const bendingAtMost: LinkRow["ratio"] = (q, combination) => {
      const d = factoredDead(dead, windCase, combination);
      return bounds.bending(d, combination.wind * q, combination.method);
    };
    const shearAtMost: LinkRow["ratio"] = (q, combination) => {
      const d = factoredDead(dead, windCase, combination);
      return bounds.shear(d, combination.wind * q, combination.method);
    };
    const bending = ratioRow(
      { ...about, part: "bending with thrust", work: workBending, atMost: bendingAtMost },
      (q, combination) => {
        const { method } = combination;
        const d = factoredDead(dead, windCase, combination);
        const w = combination.wind * q;
        return worstAlong(answer, capacities[method], strength.euler, d, w, method).ratio;
      },
    );
    const aboutShear = { ...about, part: "shear", work: workShear, atMost: shearAtMost };
    const shear = ratioRow(aboutShear, (q, combination) => {
      const d = factoredDead(dead, windCase, combination);
      return shearRatio(answer, capacities[combination.method], d, combination.wind * q);
    });
    rows.push(whileTied(context, answer, bending), whileTied(context, answer, shear));
  }
  const findings = strength.findings.map((finding): Words => [`Hoops: ${finding}`]);
  return { rows, notChecked: [...jointsUnknown(strength, context), ...leftOut], findings };
};

const leftOut: readonly LinkNotChecked[] = [
  {
    link: "hoop",
    words: "the hoops against swaying in their plane",
    why: "by the round arch between hinged feet, legs counted as arc: a pointed top, long legs and rails that yield let it sway more easily",
    demand: null,
  },
  {
    link: "hoop",
    words: "hoops pulled in where lifted film hangs from boards on them",
    why: "the film's pull counts on the cover's edge and the boards; on hoops the wind counts as pressure only",
    demand: null,
  },
];

function jointsUnknown(strength: HoopStrength, { evaluation }: ChainContext): LinkNotChecked[] {
  return evaluation.house.links.joints.flatMap(({ how }, index): LinkNotChecked[] =>
    strength.joints[index]
      ? []
      : [
          {
            link: "hoop",
            words: `joint ${index + 1} in the hoop tube (${how})`,
            why: "its section is not entered (hoops.joints.tube); the hoop is checked as if whole there",
            demand: null,
          },
        ],
  );
}

/** Weight on the hoops that a combination takes, N/m, unfactored. */
export const weightTaken = (
  { dead }: ChainContext,
  windCase: ChainCase,
  combination: LinkCombination,
): number => factoredDead(dead, windCase, { ...combination, dead: 1 });

function bendingWork(
  context: ChainContext,
  answer: HoopAnswer,
  strength: HoopStrength,
  capacities: ByMethod<Capacities[]>,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const { evaluation, runs } = context;
    const { method } = combination;
    const { dead, wind, windCase } = answer;
    hoopStrength(evaluation.house, runs.outline, sheet);
    const weight = weightTaken(context, windCase, combination);
    const sum = new Superposed(sheet, weight, q, combination);
    const d = combination.dead * weight;
    const all = capacities[method];
    const w = combination.wind * q;
    const worst = worstAlong(answer, all, strength.euler, d, w, method);
    const count = all.length;
    const s = runs.places[worst.place]?.s ?? 0;
    const along = `${s.toFixed(3)} m along the hoop from its left foot`;
    const at = (block: number, place: number, of: Float64Array) =>
      of[block * count + place] as number;
    const axial = sum.force(
      "N",
      along,
      at(0, worst.place, dead.along),
      at(0, worst.place, wind.along),
    );
    const moment = sum.moment(
      "M",
      along,
      at(2, worst.place, dead.along),
      at(2, worst.place, wind.along),
    );
    let grown = moment;
    if (worst.compression > 0) {
      const place = worst.compressedAt;
      const where = `greatest compression, ${(runs.places[place]?.s ?? 0).toFixed(3)} m along`;
      const thrust = sum.force("N_min", where, at(0, place, dead.along), at(0, place, wind.along));
      if (hasBuckled(sheet, method, -thrust, strength.euler)) return;
      const level = sheet.work(loadLevel[method], []);
      const growth = sheet.work(momentAmplification, [level, -thrust, strength.euler]);
      grown = sheet.work(grownMoment, [growth, moment]);
    }
    const can = all[worst.place] as Capacities;
    const alongStrength = axial > 0 ? can.tension : can.compression;
    workInteraction([axial, alongStrength], [grown, can.moment], [0, can.moment], sheet);
  };
}

function shearWork(
  context: ChainContext,
  answer: HoopAnswer,
  capacities: ByMethod<Capacities[]>,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const { dead, wind, windCase } = answer;
    const weight = weightTaken(context, windCase, combination);
    const sum = new Superposed(sheet, weight, q, combination);
    const [d, w] = [combination.dead * weight, combination.wind * q];
    const all = capacities[combination.method];
    const count = all.length;
    const share = (place: number): number =>
      Math.abs(
        d * (dead.along[count + place] as number) + w * (wind.along[count + place] as number),
      ) / (all[place] as Capacities).shear;
    const place = all.reduce((worst, _, at) => (share(at) > share(worst) ? at : worst), 0);
    const force = sum.force(
      "V",
      `${(context.runs.places[place]?.s ?? 0).toFixed(3)} m along the hoop from its left foot`,
      dead.along[count + place] as number,
      wind.along[count + place] as number,
    );
    sheet.work(forceOverStrength, [Math.abs(force), (all[place] as Capacities).shear]);
  };
}
