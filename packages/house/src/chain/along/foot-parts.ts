import { type Chapter, derived, formula } from "@hoopstay/core";
import type { CombinationId } from "@hoopstay/stability";
import {
  boltResultant,
  circleWeldForce,
  contactForce,
  coupleShear,
  interactionEnvelope,
  interactionWithTorsion,
  sleeveBoltForce,
  sleeveContactForce,
  smallTorsion,
  torsionInteraction,
  type Worksheet,
} from "@hoopstay/strength";
import type { ChainContext } from "../context.ts";
import { type FootForces, type FootReading, footAtRail } from "../hoop/foot-forces.ts";
import { anyPlane } from "../hoop/holed-tube.ts";
import { cantileverFactor } from "../hoop/stub-length.ts";
import { boltForces, footSleeve, weakerShear } from "../links/bolts.ts";
import { stubStrengths } from "../links/stub.ts";
import { footWeld } from "../links/weld.ts";
import { forceOverStrength, lineForceOverStrength, momentOverStrength } from "../superposed.ts";
import { type AlongSheet, forceResultant, momentResultant } from "./along-work.ts";

/** Push along the house on one foot, factored, N and N m. */
interface AlongForces {
  readonly shear: number;
  readonly tipping: number;
  readonly torque: number;
  readonly atBolts: number;
}

/** What one part of a foot makes of the push along the house with the forces in the hoop's plane. */
export interface AlongPart {
  readonly part: string;
  readonly reading: FootReading;
  readonly ratio: (forces: FootForces, along: AlongForces, method: CombinationId) => number;
  readonly work: (
    sheet: Chapter,
    forces: FootForces,
    along: AlongSheet,
    method: CombinationId,
  ) => void;
}

/** The parts of a foot whose strength is known; what is not known is told by its own link. */
export function footParts(context: ChainContext): AlongPart[] {
  return [...stubPart(context), ...boltParts(context), ...weldPart(context)];
}

function stubPart({ evaluation, runs }: ChainContext): AlongPart[] {
  const { stub } = evaluation.house.links;
  const free = cantileverFactor.value * runs.outline.hinge;
  const strengthsOn = (sheet?: Worksheet) => stubStrengths(stub, free, anyPlane, sheet);
  const { tension, compression, momentX, shearX, torsion } = strengthsOn();
  if (!compression.covered || !momentX.covered || !shearX.covered || !torsion.covered) return [];
  return [
    {
      part: "stub bent along the house",
      reading: footAtRail,
      ratio: ({ uplift, thrust, couple }, along, method) =>
        interactionWithTorsion(
          uplift / (uplift > 0 ? tension : compression)[method],
          Math.hypot(couple, along.tipping) / momentX[method],
          0,
          Math.hypot(thrust, along.shear) / shearX[method],
          along.torque / torsion[method],
        ),
      work: (sheet, { uplift, thrust, couple }, along, method) => {
        strengthsOn(sheet);
        const moment = sheet.work(momentResultant, [couple, along.tipping]);
        const shear = sheet.work(forceResultant, [thrust, along.shear]);
        const strength = (uplift > 0 ? tension : compression)[method];
        const p = sheet.work(forceOverStrength, [Math.abs(uplift), strength], { symbol: "p" });
        const m = sheet.work(momentOverStrength, [moment, momentX[method]], { symbol: "m_x" });
        const v = sheet.work(forceOverStrength, [shear, shearX[method]], { symbol: "v" });
        const t = sheet.work(momentOverStrength, [along.torque, torsion[method]], { symbol: "t" });
        if (t <= smallTorsion) sheet.work(interactionEnvelope, [p, m, 0]);
        else sheet.work(torsionInteraction, [p, m, 0, v, t]);
      },
    },
  ];
}

const boltWithTorque = formula({
  id: "bolt-with-torque",
  symbol: "F_b",
  name: "force on the worst bolt, twisting of the foot with it",
  measure: "force",
  arguments: [
    ["F", "force of uplift, thrust and moment", "force"],
    ["T", "twisting of the foot", "moment"],
    ["n", "bolts", "ratio"],
    ["d", "inner tube", "length"],
  ],
  expression: "F + 2 * T / (n * d)",
  citation: derived("a couple between the two walls of the inner tube, added to the rest"),
  evaluate: (force, torque, count, diameter) => force + (2 * torque) / (count * diameter),
});

function boltParts(context: ChainContext): AlongPart[] {
  const { house } = context.evaluation;
  const { hoop, stub } = house.links;
  const sleeve = footSleeve(house);
  if (!sleeve?.covered || hoop.tube.kind !== "round" || stub.tube.kind !== "round") return [];
  const inner = Math.min(hoop.tube.outside, stub.tube.outside);
  const tubeShear = weakerShear(house, sleeve.overlap);
  const reading = boltForces(context);
  const { count, spacing, overlap } = sleeve;
  return [
    {
      part: "bolts of the foot, pushed along the house",
      reading,
      ratio: ({ uplift, thrust, couple }, along, method) => {
        const shear = Math.hypot(thrust, along.shear);
        const moment = Math.hypot(couple, along.atBolts);
        const force = sleeveBoltForce(uplift, shear, moment, sleeve);
        return boltWithTorque.evaluate(force, along.torque, count, inner) / sleeve.perBolt[method];
      },
      work: (sheet, { uplift, thrust, couple }, along, method) => {
        footSleeve(house, sheet);
        const shear = sheet.work(forceResultant, [thrust, along.shear]);
        const moment = sheet.work(momentResultant, [couple, along.atBolts]);
        const by = spacing === null ? 0 : sheet.work(coupleShear, [moment, count, spacing]);
        const force = sheet.work(boltResultant, [uplift, shear, count, by]);
        const worst = sheet.work(boltWithTorque, [force, along.torque, count, inner]);
        sheet.work(forceOverStrength, [worst, sleeve.perBolt[method]]);
      },
    },
    {
      part: "hoop on stub by contact, pushed along the house",
      reading,
      ratio: ({ thrust, couple }, along, method) => {
        const shear = Math.hypot(thrust, along.shear);
        const moment = Math.hypot(couple, along.atBolts);
        return sleeveContactForce(shear, moment, overlap) / tubeShear[method];
      },
      work: (sheet, { thrust, couple }, along, method) => {
        const shear = sheet.work(forceResultant, [thrust, along.shear]);
        const moment = sheet.work(momentResultant, [couple, along.atBolts]);
        const force =
          6 * moment > shear * overlap ? sheet.work(contactForce, [moment, shear, overlap]) : shear;
        sheet.work(forceOverStrength, [force, tubeShear[method]]);
      },
    },
  ];
}

function weldPart({ evaluation }: ChainContext): AlongPart[] {
  const { house } = evaluation;
  const { stub } = house.links;
  const weld = footWeld(house);
  if (!weld || stub.tube.kind !== "round") return [];
  const { outside } = stub.tube;
  return [
    {
      part: "weld of the stub, pushed along the house",
      reading: footAtRail,
      ratio: ({ uplift, thrust, couple }, along, method) =>
        circleWeldForce(
          outside,
          Math.abs(uplift),
          Math.hypot(thrust, along.shear),
          Math.hypot(couple, along.tipping),
          along.torque,
        ) / weld[method],
      work: (sheet, { uplift, thrust, couple }, along, method) => {
        footWeld(house, sheet);
        const shear = sheet.work(forceResultant, [thrust, along.shear]);
        const moment = sheet.work(momentResultant, [couple, along.tipping]);
        const { torque } = along;
        const force = circleWeldForce(outside, Math.abs(uplift), shear, moment, torque, sheet);
        sheet.work(lineForceOverStrength, [force, weld[method]]);
      },
    },
  ];
}
