import { type Chapter, cite, formula } from "@hoopstay/core";
import { properties } from "@hoopstay/section";
import {
  availableRailStress,
  type FaceLimits,
  faceLimits,
  faceRatio,
  faceStrength,
  faceUtilization,
  type NotCovered,
  type StubOnFace,
} from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import { mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { atRail, type FootForces, type FootSide, footAtRail } from "../hoop/foot-forces.ts";
import { footWords, loadedHoops, workForces } from "../hoop/foot-rows.ts";
import { governingFeet } from "../hoop/governing-feet.ts";
import { factoredDead, type HoopAnswer, standsFor } from "../hoop/hoop-answers.ts";
import { type LinkMaker, type LinkRow, ratioRow } from "../link.ts";
import { nearestPlace } from "../rail/nearest-place.ts";
import { atMost, notHeld, type RailAt } from "../rail/rail-actions.ts";
import { noted, wallOf } from "./bolts.ts";
import { whileTied } from "./ties.ts";

/** The joint of a stub on the rail's top wall, `toEnd` from the rail's end, m. */
export function stubOnFace(house: House, toEnd: number | null): StubOnFace | null {
  const { rail, links } = house;
  const { stub } = links;
  if (rail.tube.kind !== "rectangular" || stub.tube.kind !== "round") return null;
  return {
    rail: {
      ...wallOf(links.rail),
      width: rail.tube.width,
      depth: rail.tube.depth,
      gradeC: links.rail.steel.grade === "A500 C",
    },
    stubOutside: stub.tube.outside,
    openEnd: toEnd,
  };
}

/** From the near side of the stub to the end of the rail tube, noses included, m. */
function toRailEnd({ rail, links }: House, y: number): number {
  const radius = links.stub.tube.kind === "round" ? links.stub.tube.outside / 2 : 0;
  const front = rail.front + rail.noseFront - y;
  const back = y + rail.back + rail.noseBack;
  return Math.max(0, Math.min(front, back) - radius);
}

/** Stresses of a rail beside a stub, without signs, Pa. */
export interface RailStress {
  vertical: number;
  plan: number;
}

type StressAt = (
  rail: RailAt,
  hoops: readonly number[],
  side: FootSide,
  q: number,
  combination: LinkCombination,
) => RailStress;

const unbent: RailStress = { vertical: 0, plan: 0 };
const unheld: RailStress = { vertical: notHeld, plan: 0 };

/** What both bendings of the rail make of its top wall, beside the worst of some stubs. */
export function railStress({ evaluation, rails, hoopPlaces }: ChainContext): StressAt {
  const { elasticModulusX, elasticModulusY } = properties(evaluation.house.rail.tube);
  const stationsOf = (side: FootSide): number[] =>
    hoopPlaces.map((y) => nearestPlace(rails.places[side], y));
  const stations = { left: stationsOf("left"), right: stationsOf("right") };
  return (rail, hoops, side, q, combination) => {
    const action = rail(q, combination);
    // Without places the rails are not looked at: see the quick form.
    if (!action) return rails.places[side].length === 0 ? unbent : unheld;
    const own = stations[side];
    let vertical = 0;
    let plan = 0;
    for (let hoop = 0; hoop < hoops.length; hoop += 1) {
      const place = own[hoops[hoop] as number] as number;
      const up = (action.vertical[place] as number) / elasticModulusX;
      const across = (action.plan[place] as number) / elasticModulusY;
      if (up + across > vertical + plan) {
        vertical = up;
        plan = across;
      }
    }
    return { vertical, plan };
  };
}

export interface FaceAt {
  readonly input: StubOnFace;
  readonly limits: FaceLimits;
}

/** Face strengths by hoop: the end hoops may stand near an open end of the tube. */
export function faces({ evaluation, hoopPlaces }: ChainContext): FaceAt[] | NotCovered | null {
  const found: FaceAt[] = [];
  for (const y of hoopPlaces) {
    const input = stubOnFace(evaluation.house, toRailEnd(evaluation.house, y));
    if (!input) return null;
    const limits = faceLimits(input);
    if (!limits.covered) return limits;
    found.push({ input, limits });
  }
  return found;
}

/** Of some hoops the one nearest to an open end: its face is the weakest. */
export const weakestFace = (made: readonly FaceAt[], hoops: readonly number[]): FaceAt =>
  hoops
    .map((hoop) => made[hoop] as FaceAt)
    .reduce((a, b) => ((b.input.openEnd ?? 0) < (a.input.openEnd ?? 0) ? b : a));

/** The hoops whose rail and face a foot's answer is to be held against. */
export const hoopsOf = ({ hoopPlaces }: ChainContext, answer: HoopAnswer) =>
  standsFor(answer, hoopPlaces.length, answer.run.railed);

/** The rail's top wall under each stub, with what bends the rail there. */
export const faceLink: LinkMaker = (context) => {
  const { hoopPlaces } = context;
  const made = faces(context);
  if (!made || "covered" in made) {
    const why = made
      ? `${made.reason}. ${made.mend}`
      : "computed for a round stub on a square or rectangular rail only";
    const words = "the rail's wall under the stubs";
    return { rows: [], notChecked: [{ link: "face", words, why, demand: null }], findings: [] };
  }
  const stressAt = railStress(context);
  const forces: FootForces = { uplift: 0, thrust: 0, couple: 0 };
  const rows: LinkRow[] = [];
  const main = loadedHoops(context).filter(({ answer }) => mainForm(answer.windCase));
  // The rail's own stress goes with the case, the hoops and the side: only runs are compared.
  const alike = (answer: HoopAnswer, side: FootSide): string =>
    `${context.cases.indexOf(answer.windCase)} ${hoopsOf(context, answer)} ${side}`;
  for (const { pushed, side, sets } of governingFeet(context, main, footAtRail, alike)) {
    const { answer } = pushed;
    const { run, windCase, hoop } = answer;
    const { railed } = run;
    const hoops = hoopsOf(context, answer);
    const { input, limits } = weakestFace(made, hoops);
    const foot = { answer, side, y: hoopPlaces[hoop] as number };
    for (const [set, index] of sets) {
      const rail = context.rails.in(windCase, set, side);
      const ratio = (at: RailAt) => (q: number, combination: LinkCombination) => {
        const d = factoredDead(context.dead, answer.windCase, combination);
        const w = combination.wind * q;
        const { uplift, couple } = atRail(answer, side, d, w, forces);
        const { vertical, plan } = stressAt(at, hoops, side, q, combination);
        return faceRatio(limits, combination.method, uplift, 0, couple, vertical, plan);
      };
      const about = {
        link: "face",
        part: "the face bends in under the stub",
        place: footWords(foot, hoopPlaces.length, railed),
        run: run.words,
        windCase: { ...windCase, sets: new Map([[set, index]]) },
        touches: true,
        atMost: atMost(ratio(rail.nearly)),
        work: (sheet: Chapter, q: number, combination: LinkCombination) => {
          const at = workForces(sheet, context, foot, footAtRail, q, combination);
          const stress = stressAt(rail.exactly, hoops, side, q, combination);
          faceWork(sheet, input, combination.method, at, stress);
        },
      } as const;
      rows.push(whileTied(context, answer, ratioRow(about, ratio(rail.exactly))));
    }
  }
  const notes = made.map(({ input }) => faceStrength(input, 0)).filter((one) => one.covered);
  const worst = notes.reduce((a, b) => (b.uplift.ASD < a.uplift.ASD ? b : a));
  return {
    rows,
    notChecked: worst.notChecked.map(({ words }) => ({
      link: "face",
      words: "the rail's wall under the stubs",
      why: words,
      demand: null,
    })),
    findings: noted("Rail face", worst.findings),
  };
};

/** The face under its stress, and the shares of uplift and of the couple across the rail. */
function faceWork(
  sheet: Chapter,
  input: StubOnFace,
  method: "ASD" | "LRFD",
  { uplift, couple }: FootForces,
  { vertical, plan }: RailStress,
): void {
  const available = availableRailStress(input.rail.yieldStrength, method);
  const utilization = sheet.work(faceUtilization, [vertical, plan, available]);
  if (utilization > 1) return;
  const strength = faceStrength(input, utilization, sheet);
  if (!strength.covered) return;
  const axial = uplift > 0 ? strength.uplift : strength.push;
  const across = strength.outOfPlane;
  sheet.work(faceShare, [Math.abs(uplift), axial[method], couple, across[method]]);
}

const faceShare = formula({
  id: "face-share",
  symbol: "u",
  name: "share of the face's strength used by uplift and by the couple across the rail",
  measure: "ratio",
  arguments: [
    ["P", "uplift or push", "force"],
    ["P_c", "strength of the face against it", "force"],
    ["M", "couple across the rail", "moment"],
    ["M_c", "strength of the face against it", "moment"],
  ],
  expression: "P / P_c + M / M_c",
  citation: cite("aisc-360-22", "section K4, interaction", "read"),
  evaluate: (P, Pc, M, Mc) => P / Pc + M / Mc,
});
