import type { Chapter, LinkNotChecked } from "@hoopstay/core";
import { cornerRadii } from "@hoopstay/section";
import {
  filletWeldStrength,
  governing,
  interaction,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  rectangleWeldForce,
  type Worksheet,
  workInteraction,
} from "@hoopstay/strength";
import type { CrossMembers } from "../../model/link-parts.ts";
import { type ChainCase, mainForm } from "../chain-case.ts";
import type { LinkCombination } from "../combination.ts";
import type { ChainContext } from "../context.ts";
import { factoredDead } from "../hoop/hoop-answers.ts";
import type { RailedRun } from "../hoop/hoops-on-rails.ts";
import { type LinkMaker, type LinkRow, plainRow, ratioRow } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { lineForceOverStrength, Superposed } from "../superposed.ts";
import { noted, wallOf } from "./bolts.ts";

/** Thrust and end moment of one cross member, factored. */
interface CrossForces {
  axial: number;
  moment: number;
}

/** What ties the rails: thrust or pull of the hoops' feet, and the rails' torque as end moments. */
function crossForces(
  { dead }: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
): (q: number, combination: LinkCombination, into: CrossForces) => CrossForces {
  const still = run.planDead();
  const blown = run.planWind(windCase);
  return (q, combination, into) => {
    const d = factoredDead(dead, windCase, combination);
    const w = combination.wind * q;
    const sum = (of: Float64Array, by: Float64Array, at: number): number =>
      d * (of[at] as number) + w * (by[at] as number);
    into.axial = sum(still.crossAxial, blown.crossAxial, member);
    into.moment = Math.max(
      Math.abs(sum(still.crossEndMoment, blown.crossEndMoment, 2 * member)),
      Math.abs(sum(still.crossEndMoment, blown.crossEndMoment, 2 * member + 1)),
    );
    return into;
  };
}

function weldOf(cross: CrossMembers, context: ChainContext, sheet?: Worksheet) {
  const { tube, weld } = cross;
  if (!weld || tube.kind !== "rectangular") return null;
  return filletWeldStrength(
    { leg: weld.leg, electrode: weld.electrode, length: 2 * (tube.width + tube.depth) },
    [
      { id: "cross", name: "the cross member", ...wallOf(cross) },
      { id: "rail", name: "the rail", ...wallOf(context.evaluation.house.links.rail) },
    ],
    sheet,
  );
}

/** Cross members between the rails, and their welds. */
export const crossMembersLink: LinkMaker = (context) => {
  const { evaluation, cases, runs } = context;
  const cross = evaluation.house.links.crossMembers;
  if (!cross) return { rows: [], notChecked: [], findings: [] };
  const words = "the cross members";
  const can = crossStrengths(context, cross);
  const { tension, compression, momentX } = can;
  if (!compression.covered || !momentX.covered) {
    const bad = [compression, momentX].find((one) => !one.covered);
    const why = bad && !bad.covered ? `${bad.reason}. ${bad.mend}` : "";
    const notChecked: LinkNotChecked[] = [{ link: "cross-members", words, why, demand: null }];
    return { rows: [], notChecked, findings: [] };
  }
  const weld = weldOf(cross, context);
  const rows: LinkRow[] = [];
  const forces: CrossForces = { axial: 0, moment: 0 };
  for (const run of runs.railed) {
    for (const windCase of cases) {
      if (!mainForm(windCase)) continue;
      cross.places.forEach((_, member) => {
        const read = crossForces(context, run, windCase, member);
        const place = `cross member ${member + 1} of ${cross.places.length}, from the back`;
        const about = { link: "cross-members", place, run: run.words, windCase } as const;
        const part = "bending by the rails' twist, with thrust";
        const work = crossWork(context, run, windCase, member, can);
        rows.push(
          ratioRow({ ...about, part, work }, (q, one) => {
            const { axial, moment } = read(q, one, forces);
            const along = axial > 0 ? tension : compression;
            const { method } = one;
            return interaction(axial, along[method], moment, momentX[method], 0, momentX[method]);
          }),
        );
        if (!weld || cross.tube.kind !== "rectangular") return;
        const { width, depth } = cross.tube;
        const { convention, wall } = cross.tube;
        const corner = cornerRadii(convention, wall).outside * wall;
        const none = { shearX: 0, shearY: 0, momentY: 0, torque: 0 };
        rows.push(
          plainRow(
            {
              ...about,
              part: governing(weld, "ASD").name,
              measure: "force-per-length",
              work: (sheet, q, one) => {
                weldOf(cross, context, sheet);
                const { axial, moment } = workCross(sheet, context, run, windCase, member, q, one);
                const forces = { axial, momentX: moment, ...none };
                const force = rectangleWeldForce(width, depth, corner, forces, sheet);
                sheet.work(lineForceOverStrength, [force, weld[one.method]]);
              },
            },
            (q, one) => {
              const { axial, moment } = read(q, one, forces);
              return rectangleWeldForce(width, depth, corner, { axial, momentX: moment, ...none });
            },
            weld,
          ),
        );
      });
    }
  }
  const unknown: LinkNotChecked[] = weld
    ? []
    : [
        {
          link: "cross-members",
          words: "the welds of the cross members",
          why: "no weld is entered (cross_members.weld)",
          demand: null,
        },
      ];
  return { rows, notChecked: unknown, findings: weld ? noted("Cross member", weld.findings) : [] };
};

function crossStrengths(
  { evaluation }: ChainContext,
  cross: CrossMembers,
  sheet?: Worksheet,
): MemberStrengths {
  const { span } = evaluation.house.lines;
  return memberStrengths(
    memberSection(cross.tube),
    steelOfTube(cross),
    { bucklingX: span, bucklingY: span, lateral: span, shear: span, torsion: span },
    null,
    sheet,
  );
}

/** Thrust and the greater end moment of a cross member, each out of weight and wind. */
function workCross(
  sheet: Chapter,
  context: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
  q: number,
  combination: LinkCombination,
): CrossForces {
  const weight = factoredDead(context.dead, windCase, { ...combination, dead: 1 });
  const sum = new Superposed(sheet, weight, q, combination);
  const still = run.planDead();
  const blown = run.planWind(windCase);
  const pair = (of: "crossAxial" | "crossEndMoment", at: number) =>
    [still[of][at] as number, blown[of][at] as number] as const;
  const axial = sum.force("N", "along the cross member", ...pair("crossAxial", member));
  const ends = [0, 1].map((end) =>
    sum.moment(
      "M",
      `at its ${end === 0 ? "left" : "right"} end`,
      ...pair("crossEndMoment", 2 * member + end),
    ),
  );
  return { axial, moment: Math.max(...ends.map(Math.abs)) };
}

function crossWork(
  context: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
  { tension, compression, momentX }: MemberStrengths,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const cross = context.evaluation.house.links.crossMembers;
    if (!cross || !compression.covered || !momentX.covered) return;
    crossStrengths(context, cross, sheet);
    const { axial, moment } = workCross(sheet, context, run, windCase, member, q, combination);
    const { method } = combination;
    const along = axial > 0 ? tension : compression;
    const bending = [moment, momentX[method]] as const;
    workInteraction([axial, along[method]], bending, [0, momentX[method]], sheet);
  };
}
