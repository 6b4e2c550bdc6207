import type { CombinationId } from "@hoopstay/stability";
import {
  amplifiedMoment,
  interactionEnvelope,
  momentAmplifier,
  torsionInteraction,
} from "@hoopstay/strength";
import { nearness } from "../greatest.ts";
import type { HoopAnswer } from "./hoop-answers.ts";
import type { ByMethod, Capacities } from "./hoop-strength.ts";

/** Greatest axial force, shear and moment in size anywhere along a hoop. */
interface Greatest {
  readonly axial: number;
  readonly shear: number;
  readonly moment: number;
}

const greatestIn = (all: Float64Array, from: number, to: number): number => {
  let greatest = 0;
  for (let at = from; at < to; at += 1) greatest = Math.max(greatest, Math.abs(all[at] as number));
  return greatest;
};

function greatestAlong(along: Float64Array): Greatest {
  const count = along.length / 3;
  return {
    axial: greatestIn(along, 0, count),
    shear: greatestIn(along, count, 2 * count),
    moment: greatestIn(along, 2 * count, 3 * count),
  };
}

/** The least of what any place along a hoop can take. */
export function leastCapacities(all: ByMethod<readonly Capacities[]>): ByMethod<Capacities> {
  const of = (method: CombinationId): Capacities => {
    const least = (name: keyof Capacities): number =>
      all[method].reduce((so, one) => Math.min(so, one[name]), Number.POSITIVE_INFINITY);
    const axial = Math.min(least("tension"), least("compression"));
    return { tension: axial, compression: axial, moment: least("moment"), shear: least("shear") };
  };
  return { ASD: of("ASD"), LRFD: of("LRFD") };
}

/** What comes on top where a hoop is bent out of its plane, factored: moment and torque over strength. */
export interface AcrossHoop {
  readonly eulerAcross: number;
  readonly bending: number;
  readonly torsion: number;
}

/** At most what a hoop is asked anywhere: its greatest forces met at one place that takes the least. */
export class HoopBounds {
  private dead: Greatest | undefined;
  private wind: Greatest | undefined;

  constructor(
    private readonly answer: HoopAnswer,
    private readonly least: ByMethod<Capacities>,
    private readonly euler: number,
  ) {}

  shear(deadFactor: number, windFactor: number, method: CombinationId): number {
    return (
      (1 + nearness) * (this.force("shear", deadFactor, windFactor) / this.least[method].shear)
    );
  }

  bending(
    deadFactor: number,
    windFactor: number,
    method: CombinationId,
    across?: AcrossHoop,
  ): number {
    const least = this.least[method];
    const axial = this.force("axial", deadFactor, windFactor);
    const grown = momentAmplifier(method, axial, this.euler);
    const inPlane = amplifiedMoment(grown, this.force("moment", deadFactor, windFactor));
    const out = across
      ? amplifiedMoment(momentAmplifier(method, axial, across.eulerAcross), across.bending)
      : 0;
    const p = axial / least.compression;
    const m = Math.sqrt(inPlane * inPlane + out * out) / least.moment;
    const plain = interactionEnvelope.evaluate(p, m, 0);
    if (!across) return (1 + nearness) * plain;
    const v = this.force("shear", deadFactor, windFactor) / least.shear;
    const twisted = torsionInteraction.evaluate(p, m, 0, v, across.torsion);
    return (1 + nearness) * Math.max(plain, twisted);
  }

  private force(name: keyof Greatest, deadFactor: number, windFactor: number): number {
    this.dead ??= greatestAlong(this.answer.dead.along);
    this.wind ??= greatestAlong(this.answer.wind.along);
    return deadFactor * this.dead[name] + windFactor * this.wind[name];
  }
}
