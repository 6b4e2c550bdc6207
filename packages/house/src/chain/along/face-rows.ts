import { type Chapter, cite, formula } from "@hoopstay/core";
import {
  availableRailStress,
  faceRatio,
  faceStrength,
  faceUtilization,
  type Worksheet,
} from "@hoopstay/strength";
import type { LoadSet } from "../../review/evaluate.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { type FootForces, footAtRail } from "../hoop/foot-forces.ts";
import { footWords, workForces } from "../hoop/foot-rows.ts";
import { type GoverningFoot, governingFeet } from "../hoop/governing-feet.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import {
  type FaceAt,
  faces,
  hoopsOf,
  type RailStress,
  railStress,
  weakestFace,
} from "../links/face.ts";
import { whileTied } from "../links/ties.ts";
import { atMost, type RailAt } from "../rail/rail-actions.ts";
import { factoredPressure } from "../superposed.ts";
import { AlongSheet } from "./along-work.ts";
import type { PushedHoop } from "./pushed-hoops.ts";

const faceShareAlong = formula({
  id: "face-share-along",
  symbol: "u",
  name: "share of the face's strength used by uplift and the couples along and across the rail",
  measure: "ratio",
  arguments: [
    ["P", "uplift or push", "force"],
    ["P_c", "strength of the face against it", "force"],
    ["M_i", "couple along the rail", "moment"],
    ["M_ic", "strength of the face against it", "moment"],
    ["M", "couple across the rail", "moment"],
    ["M_c", "strength of the face against it", "moment"],
  ],
  expression: "P / P_c + M_i / M_ic + M / M_c",
  citation: cite("aisc-360-22", "section K4, interaction", "read"),
  evaluate: (P, Pc, Mi, Mic, M, Mc) => P / Pc + Mi / Mic + M / Mc,
});

/** The rail's face under the feet of hoops that are pushed along the house. */
export function alongFaceRows(context: ChainContext, pushed: readonly PushedHoop[]): LinkRow[] {
  const made = faces(context);
  if (!made || "covered" in made) return [];
  const main = pushed.filter(({ answer }) => mainForm(answer.windCase));
  // The rail's own stress goes with the case, the hoops and the side: only runs are compared.
  const feet = governingFeet(
    context,
    main,
    footAtRail,
    (answer, side) =>
      `${context.cases.indexOf(answer.windCase)} ${hoopsOf(context, answer)} ${side}`,
  );
  const stress = railStress(context);
  return feet.flatMap((foot) =>
    [...foot.sets].map(([set, index]) => {
      const own = weakestFace(made, hoopsOf(context, foot.pushed.answer));
      return rowOf(context, { ...foot, sets: new Map([[set, index]]) }, set, own, stress);
    }),
  );
}

function rowOf(
  context: ChainContext,
  { pushed, side, sets }: GoverningFoot<PushedHoop>,
  set: LoadSet,
  own: FaceAt,
  stress: ReturnType<typeof railStress>,
): LinkRow {
  const { hoopPlaces, evaluation } = context;
  const { answer, demand, sharing } = pushed;
  const { run, windCase, hoop } = answer;
  const hoops = hoopsOf(context, answer);
  const { railed } = run;
  const foot = { answer, side, y: hoopPlaces[hoop] as number };
  const forces: FootForces = { uplift: 0, thrust: 0, couple: 0 };
  const rail = context.rails.in(windCase, set, side);
  const ratio = (at: RailAt) => (q: number, combination: LinkCombination) => {
    const d = factoredDead(context.dead, answer.windCase, combination);
    const w = combination.wind * q;
    const { uplift, couple } = footAtRail.at(answer, side, d, w, forces);
    const { vertical, plan } = stress(at, hoops, side, q, combination);
    const { method } = combination;
    return faceRatio(own.limits, method, uplift, w * demand.tipping, couple, vertical, plan);
  };
  const row = ratioRow(
    {
      link: "ridge-line",
      part: "rail's face under a stub, pushed along the house",
      place: footWords(foot, hoopPlaces.length, railed),
      run: `${sharing.words}; ${run.words}`,
      windCase: { ...windCase, sets },
      touches: true,
      atMost: atMost(ratio(rail.nearly)),
      work: (sheet, q, combination) => {
        const at = workForces(sheet, context, foot, footAtRail, q, combination);
        const factored = sheet.work(factoredPressure, [combination.wind, q]);
        const { endArea } = evaluation.shell;
        const along = new AlongSheet(sheet, factored, demand, sharing.hoops, endArea);
        const { tipping } = along;
        const beside = stress(rail.exactly, hoops, side, q, combination);
        faceWork(sheet, own, combination.method, at, tipping, beside);
      },
    },
    ratio(rail.exactly),
  );
  return whileTied(context, answer, row);
}

function faceWork(
  sheet: Chapter,
  { input }: FaceAt,
  method: "ASD" | "LRFD",
  { uplift, couple }: FootForces,
  tipping: number,
  { vertical, plan }: RailStress,
): void {
  const available = availableRailStress(input.rail.yieldStrength, method);
  const utilization = sheet.work(faceUtilization, [vertical, plan, available]);
  if (utilization > 1) return;
  const strength = faceStrength(input, utilization, sheet as Worksheet);
  if (!strength.covered) return;
  const axial = uplift > 0 ? strength.uplift : strength.push;
  sheet.work(faceShareAlong, [
    Math.abs(uplift),
    axial[method],
    tipping,
    strength.inPlane[method],
    couple,
    strength.outOfPlane[method],
  ]);
}
