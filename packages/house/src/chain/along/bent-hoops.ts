import { derived, formula } from "@hoopstay/core";
import type { CombinationId } from "@hoopstay/stability";
import {
  amplifiedMoment,
  interactionEnvelope,
  loadLevel,
  memberSection,
  memberStrengths,
  momentAmplification,
  momentAmplifier,
  smallTorsion,
  torsionInteraction,
} from "@hoopstay/strength";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { anyPlane } from "../hoop/holed-tube.ts";
import { factoredDead, type HoopAnswer } from "../hoop/hoop-answers.ts";
import { HoopBounds, leastCapacities } from "../hoop/hoop-bounds.ts";
import { type ByMethod, type Capacities, hoopStrength } from "../hoop/hoop-strength.ts";
import type { LinkRow } from "../link.ts";
import { capacitiesOf, weightTaken } from "../links/hoop.ts";
import { steelOfTube } from "../steel.ts";
import {
  forceOverStrength,
  grownMoment,
  hasBuckled,
  momentOverStrength,
  Superposed,
} from "../superposed.ts";
import type { AlongDemand } from "./along-demand.ts";
import { AlongSheet, momentResultant } from "./along-work.ts";

/** What the hoops can take, bent both ways and twisted; null where the standard does not cover them. */
export interface BentHoopStrength {
  readonly capacities: ByMethod<Capacities[]>;
  /** Of all places. */
  readonly least: ByMethod<Capacities>;
  readonly torsion: ByMethod<number>;
  /** In the hoop's plane and out of it, N. */
  readonly euler: number;
  readonly eulerAcross: number;
}

export function bentHoopStrength(context: ChainContext): BentHoopStrength | null {
  const { house } = context.evaluation;
  const { hoop } = house.links;
  const strength = hoopStrength(house, context.runs.outline, undefined, anyPlane);
  if ("covered" in strength) return null;
  const length = context.runs.outline.line.length;
  const { torsion } = memberStrengths(memberSection(hoop.tube), steelOfTube(hoop), {
    bucklingX: length,
    bucklingY: length,
    lateral: length,
    shear: length,
    torsion: length,
  });
  if (!torsion.covered) return null;
  const capacities = capacitiesOf(strength, context);
  return {
    capacities,
    least: leastCapacities(capacities),
    torsion,
    euler: strength.euler,
    eulerAcross: strength.eulerAcross,
  };
}

/** Bending of a hoop out of its plane: by all of it, and between two purlins, per unit of K_d q_h. */
export interface OutOfPlaneLoad {
  readonly demand: AlongDemand | null;
  readonly hoops: number;
  /** Further moment, the same at every place, m3. */
  readonly local: number;
  /** Puts the further moment on a sheet, N m, for a factored K_d q_h. */
  readonly workLocal: ((sheet: Parameters<LinkRow["work"]>[0], q: number) => number) | null;
}

interface Worst {
  readonly ratio: number;
  readonly at: number;
  readonly compression: number;
  readonly compressedAt: number;
}

/**
 * Where along a hoop that is bent in its plane and out of it at once it is asked most. A round tube
 * takes both as one resultant moment, at bolt holes as if they lay in its plane; both grow by thrust.
 */
export function worstBent(
  { dead, wind }: HoopAnswer,
  strength: BentHoopStrength,
  [deadFactor, windFactor]: readonly [number, number],
  method: CombinationId,
  { demand, local }: OutOfPlaneLoad,
): Worst {
  const capacities = strength.capacities[method];
  const torsion = strength.torsion[method];
  const count = capacities.length;
  const sum = (at: number): number =>
    deadFactor * (dead.along[at] as number) + windFactor * (wind.along[at] as number);
  let compression = 0;
  let compressedAt = 0;
  for (let at = 0; at < count; at += 1) {
    const axial = sum(at);
    if (-axial > compression) {
      compression = -axial;
      compressedAt = at;
    }
  }
  const amplifier = momentAmplifier(method, compression, strength.euler);
  const across = momentAmplifier(method, compression, strength.eulerAcross);
  let ratio = 0;
  let worst = 0;
  for (let at = 0; at < count; at += 1) {
    const can = capacities[at] as Capacities;
    const axial = sum(at);
    const inPlane = amplifiedMoment(amplifier, sum(2 * count + at));
    const bending = (demand ? (demand.bending[at] as number) : 0) + local;
    const out = amplifiedMoment(across, windFactor * bending);
    const p = Math.abs(axial) / (axial > 0 ? can.tension : can.compression);
    const m = Math.sqrt(inPlane * inPlane + out * out) / can.moment;
    const t = demand ? (windFactor * (demand.torsion[at] as number)) / torsion : 0;
    const own =
      t <= smallTorsion
        ? interactionEnvelope.evaluate(p, m, 0)
        : torsionInteraction.evaluate(p, m, 0, Math.abs(sum(count + at)) / can.shear, t);
    if (!(own <= ratio)) {
      ratio = own;
      worst = at;
    }
  }
  return { ratio, at: worst, compression, compressedAt };
}

/** At most what a hoop bent both ways is asked anywhere. */
export function bentAtMost(
  context: ChainContext,
  answer: HoopAnswer,
  { least, euler, eulerAcross, torsion }: BentHoopStrength,
  { demand, local }: OutOfPlaneLoad,
): LinkRow["ratio"] {
  const bounds = new HoopBounds(answer, least, euler);
  const greatest = (all: Float64Array | undefined): number =>
    all?.reduce((most, one) => Math.max(most, Math.abs(one)), 0) ?? 0;
  let known: { readonly bending: number; readonly twisting: number } | undefined;
  return (q, combination) => {
    known ??= {
      bending: greatest(demand?.bending) + Math.abs(local),
      twisting: greatest(demand?.torsion),
    };
    const { method } = combination;
    const w = combination.wind * q;
    return bounds.bending(factoredDead(context.dead, answer.windCase, combination), w, method, {
      eulerAcross,
      bending: w * known.bending,
      torsion: (w * known.twisting) / torsion[method],
    });
  };
}

const sumOfMoments = formula({
  id: "moments-along",
  symbol: "M_y",
  name: "moment out of the hoop's plane, all of it",
  measure: "moment",
  arguments: [
    ["M_1", "of the hoop as a whole", "moment"],
    ["M_2", "between two purlins", "moment"],
  ],
  expression: "M_1 + M_2",
  citation: derived("both at one place; safe side"),
  evaluate: (whole, local) => whole + local,
});

/** Works a hoop bent both ways where it is asked most. */
export function bentWork(
  context: ChainContext,
  answer: HoopAnswer,
  strength: BentHoopStrength,
  load: OutOfPlaneLoad,
): LinkRow["work"] {
  const { evaluation, runs, dead } = context;
  return (sheet, q, combination: LinkCombination) => {
    const { method } = combination;
    const { windCase } = answer;
    hoopStrength(evaluation.house, runs.outline, sheet, anyPlane);
    const factors = [factoredDead(dead, windCase, combination), combination.wind * q] as const;
    const worst = worstBent(answer, strength, factors, method, load);
    const sum = new Superposed(sheet, weightTaken(context, windCase, combination), q, combination);
    const capacities = strength.capacities[method];
    const count = capacities.length;
    const note = (place: number): string =>
      `${(runs.places[place]?.s ?? 0).toFixed(3)} m along the hoop from its left foot`;
    const read = (block: number, place: number) =>
      [
        answer.dead.along[block * count + place] as number,
        answer.wind.along[block * count + place] as number,
      ] as const;
    const axial = sum.force("N", note(worst.at), ...read(0, worst.at));
    const shear = sum.force("V", note(worst.at), ...read(1, worst.at));
    let inPlane = sum.moment("M", note(worst.at), ...read(2, worst.at));
    let across = 1;
    if (worst.compression > 0) {
      const thrust = sum.force("N_min", note(worst.compressedAt), ...read(0, worst.compressedAt));
      const { euler, eulerAcross } = strength;
      if (hasBuckled(sheet, method, -thrust, Math.min(euler, eulerAcross))) return;
      const level = sheet.work(loadLevel[method], []);
      const growth = sheet.work(momentAmplification, [level, -thrust, euler]);
      inPlane = sheet.work(grownMoment, [growth, inPlane]);
      const plane = { note: "out of the hoop's plane" };
      across = sheet.work(momentAmplification, [level, -thrust, eulerAcross], plane);
    }
    let [out, twist] = [0, 0];
    if (load.demand) {
      const { endArea } = evaluation.shell;
      const along = new AlongSheet(sheet, factors[1], load.demand, load.hoops, endArea);
      out = along.bending(worst.at, note(worst.at));
      twist = along.torsion(worst.at, note(worst.at));
    }
    if (load.workLocal) {
      const between = load.workLocal(sheet, factors[1]);
      out = sheet.work(sumOfMoments, [out, between]);
    }
    if (across > 1) out = sheet.work(grownMoment, [across, out]);
    const can = capacities[worst.at] as Capacities;
    const moment = sheet.work(momentResultant, [inPlane, out]);
    const alongStrength = axial > 0 ? can.tension : can.compression;
    const p = sheet.work(forceOverStrength, [Math.abs(axial), alongStrength], { symbol: "p" });
    const m = sheet.work(momentOverStrength, [moment, can.moment], { symbol: "m_x" });
    const v = sheet.work(forceOverStrength, [Math.abs(shear), can.shear], { symbol: "v" });
    const t = sheet.work(momentOverStrength, [twist, strength.torsion[method]], { symbol: "t" });
    if (t <= smallTorsion) sheet.work(interactionEnvelope, [p, m, 0]);
    else sheet.work(torsionInteraction, [p, m, 0, v, t]);
  };
}
