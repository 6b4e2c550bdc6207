import type { Chapter, LinkNotChecked, Words } from "@hoopstay/core";
import { cornerRadii } from "@hoopstay/section";
import {
  amplifiedMoment,
  eulerLoad,
  filletWeldStrength,
  governing,
  interaction,
  loadLevel,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  momentAmplification,
  momentAmplifier,
  rectangleWeldForce,
  type Worksheet,
  workInteraction,
} from "@hoopstay/strength";
import type { CrossMembers } from "../../model/link-parts.ts";
import { type ChainCase, mainForm } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import type { RailedRun } from "../hoop/hoops-on-rails.ts";
import { type LinkMaker, type LinkRow, plainRow, ratioRow } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import {
  forceOverStrength,
  grownMoment,
  hasBuckled,
  lineForceOverStrength,
} from "../superposed.ts";
import { noted, wallOf } from "./bolts.ts";
import { type CrossForces, crossForces, workCross } from "./cross-forces.ts";

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
  const { tension, compression, momentX, shearX } = can;
  if (!compression.covered || !momentX.covered || !shearX.covered) {
    const bad = [compression, momentX, shearX].find((one) => !one.covered);
    const why = bad && !bad.covered ? `${bad.reason}. ${bad.mend}` : "";
    const notChecked: LinkNotChecked[] = [{ link: "cross-members", words, why, demand: null }];
    return { rows: [], notChecked, findings: [] };
  }
  const weld = weldOf(cross, context);
  const rows: LinkRow[] = [];
  const forces: CrossForces = { axial: 0, moment: 0, shear: 0 };
  const euler = eulerOf(context, cross);
  for (const run of runs.railed) {
    for (const windCase of cases) {
      if (!mainForm(windCase)) continue;
      cross.places.forEach((_, member) => {
        const read = crossForces(context, run, windCase, member);
        const place = `cross member ${member + 1} of ${cross.places.length}, from the back`;
        const about = { link: "cross-members", place, run: run.words, windCase } as const;
        const part = "bending by the rails' twist, with thrust";
        const work = crossWork(context, run, windCase, member, can, euler);
        rows.push(
          ratioRow({ ...about, part, work }, (q, one) => {
            const { axial, moment } = read(q, one, forces);
            const along = axial > 0 ? tension : compression;
            const { method } = one;
            const grown = amplifiedMoment(momentAmplifier(method, -axial, euler), moment);
            return interaction(axial, along[method], grown, momentX[method], 0, momentX[method]);
          }),
          plainRow(
            {
              ...about,
              part: "shear by the rails' twist",
              measure: "force",
              work: (sheet, q, one) => {
                crossStrengths(context, cross, sheet);
                const { shear } = workCross(sheet, context, run, windCase, member, q, one);
                sheet.work(forceOverStrength, [shear, shearX[one.method]]);
              },
            },
            (q, one) => read(q, one, forces).shear,
            shearX,
          ),
        );
        if (!weld || cross.tube.kind !== "rectangular") return;
        const { width, depth } = cross.tube;
        const { convention, wall } = cross.tube;
        const corner = cornerRadii(convention, wall).outside * wall;
        const none = { shearX: 0, momentY: 0, torque: 0 };
        rows.push(
          plainRow(
            {
              ...about,
              part: governing(weld, "ASD").name,
              measure: "force-per-length",
              work: (sheet, q, one) => {
                weldOf(cross, context, sheet);
                const worked = workCross(sheet, context, run, windCase, member, q, one);
                const { axial, moment, shear } = worked;
                const forces = { axial, momentX: moment, shearY: shear, ...none };
                const force = rectangleWeldForce(width, depth, corner, forces, sheet);
                sheet.work(lineForceOverStrength, [force, weld[one.method]]);
              },
            },
            (q, one) => {
              const { axial, moment, shear } = read(q, one, forces);
              const all = { axial, momentX: moment, shearY: shear, ...none };
              return rectangleWeldForce(width, depth, corner, all);
            },
            weld,
          ),
        );
      });
    }
  }
  const welds = "the welds of the cross members";
  const unknown = weld
    ? weld.notChecked.map(({ words }) => words)
    : ["no weld is entered (cross_members.weld)"];
  return {
    rows,
    notChecked: unknown.map((why) => ({ link: "cross-members", words: welds, why, demand: null })),
    findings: [
      ...can.findings.map((finding): Words => [`Cross members: ${finding}.`]),
      ...(weld ? noted("Cross member", [...weld.assumed, ...weld.findings]) : []),
    ],
  };
};

/** Buckling in the plane in which the rails' twist bends a cross member, its ends as hinges. */
function eulerOf({ evaluation }: ChainContext, cross: CrossMembers, sheet?: Chapter): number {
  const { secondMomentX } = memberSection(cross.tube);
  const inputs = [steelOfTube(cross).modulus, secondMomentX, evaluation.house.lines.span] as const;
  return sheet ? sheet.work(eulerLoad, inputs) : eulerLoad.evaluate(...inputs);
}

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

function crossWork(
  context: ChainContext,
  run: RailedRun,
  windCase: ChainCase,
  member: number,
  { tension, compression, momentX }: MemberStrengths,
  euler: number,
): LinkRow["work"] {
  return (sheet, q, combination) => {
    const cross = context.evaluation.house.links.crossMembers;
    if (!cross || !compression.covered || !momentX.covered) return;
    crossStrengths(context, cross, sheet);
    const { axial, moment } = workCross(sheet, context, run, windCase, member, q, combination);
    const { method } = combination;
    const along = axial > 0 ? tension : compression;
    let grown = moment;
    if (axial < 0) {
      eulerOf(context, cross, sheet);
      if (hasBuckled(sheet, method, -axial, euler)) return;
      const level = sheet.work(loadLevel[method], []);
      const growth = sheet.work(momentAmplification, [level, -axial, euler]);
      grown = sheet.work(grownMoment, [growth, moment]);
    }
    const bending = [grown, momentX[method]] as const;
    workInteraction([axial, along[method]], bending, [0, momentX[method]], sheet);
  };
}
